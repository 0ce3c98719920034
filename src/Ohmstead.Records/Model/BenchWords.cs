namespace Ohmstead.Records.Model;

/// <summary>What was done.</summary>
public enum WorkKind
{
    /// <summary>Another part was put in.</summary>
    Replaced,

    /// <summary>The part was taken out.</summary>
    Removed,

    /// <summary>A part was put into an empty place.</summary>
    Fitted,

    /// <summary>The very piece that had been taken out was put in again.</summary>
    PutBack,

    /// <summary>An electrolytic was brought up to its voltage slowly.</summary>
    Reformed,

    /// <summary>Cleaned without water.</summary>
    Cleaned,

    /// <summary>Washed, so that it must dry.</summary>
    Washed,

    /// <summary>A joint was made again.</summary>
    Resoldered,

    /// <summary>Mended in its place.</summary>
    Repaired,

    /// <summary>Set to its value.</summary>
    Adjusted,

    /// <summary>Changed from what the maker built.</summary>
    Modified,

    /// <summary>A hazard was taken away.</summary>
    MadeSafe,

    /// <summary>Nothing was done, on purpose.</summary>
    LeftAlone,
}

/// <summary>What a person may decide.</summary>
public enum DecisionKind
{
    /// <summary>It stays.</summary>
    Keep,

    /// <summary>It stays and is looked at again.</summary>
    Watch,

    /// <summary>It shall be replaced.</summary>
    Replace,

    /// <summary>It shall be formed again.</summary>
    FormAgain,

    /// <summary>It shall be measured with a leg lifted.</summary>
    MeasureOutOfCircuit,

    /// <summary>Nothing shall be done.</summary>
    LeaveAlone,
}

/// <summary>What follows from a decision.</summary>
public static class DecisionKinds
{
    /// <summary>Whether a decision lets stay what it is about.</summary>
    public static bool LetsStay(this DecisionKind decision) =>
        decision is DecisionKind.Keep or DecisionKind.Watch or DecisionKind.LeaveAlone;
}

/// <summary>How much something seen at the bench matters.</summary>
public enum ObservedSeverity
{
    /// <summary>For the record.</summary>
    Note,

    /// <summary>It can stay.</summary>
    Minor,

    /// <summary>It must be answered before the board is fit to run.</summary>
    Major,

    /// <summary>It can hurt.</summary>
    Safety,
}

/// <summary>Whether the part was in the circuit when it was measured.</summary>
public enum Circuit
{
    /// <summary>In the circuit.</summary>
    In,

    /// <summary>Out of it, or with a leg lifted.</summary>
    Out,
}

/// <summary>When in the life of a part a reading was taken.</summary>
public enum ReadingState
{
    /// <summary>Before any work.</summary>
    AsFound,

    /// <summary>Of a new part, before it was fitted.</summary>
    New,

    /// <summary>After the work of the visit.</summary>
    AsLeft,

    /// <summary>Once more.</summary>
    Again,
}

/// <summary>The result of a functional test.</summary>
public enum TestResult
{
    /// <summary>It works as it should.</summary>
    Pass,

    /// <summary>It does not.</summary>
    Fail,
}

/// <summary>How the right way round was established.</summary>
public enum PolarityEvidence
{
    /// <summary>By the schematic.</summary>
    Schematic,

    /// <summary>By continuity to the ground plane.</summary>
    ContinuityToGroundPlane,

    /// <summary>Measured in the circuit.</summary>
    MeasuredInCircuit,

    /// <summary>By a photograph taken before removal.</summary>
    PhotographBeforeRemoval,

    /// <summary>By the print on the board, which does not establish it alone.</summary>
    Print,

    /// <summary>By another unit of the same design.</summary>
    OtherUnit,
}

/// <summary>What is measured at a test point.</summary>
public enum PointMeasure
{
    /// <summary>A voltage, with its ripple.</summary>
    Voltage,

    /// <summary>A current.</summary>
    Current,

    /// <summary>A frequency.</summary>
    Frequency,

    /// <summary>A temperature.</summary>
    Temperature,

    /// <summary>Hours of soak.</summary>
    Hours,

    /// <summary>Pass or fail.</summary>
    Result,
}
