using System.Collections.Immutable;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Electronics.Supplies;
using Ohmstead.Electronics.Uncertainty;
using Ohmstead.Records.Text;

namespace Ohmstead.Records.Model;

/// <summary>How much and how warm a board runs.</summary>
/// <param name="HoursPerYear">Hours of running a year.</param>
/// <param name="Temperature">Temperature of the air around its parts.</param>
public sealed record Duty(Written<int>? HoursPerYear, Written<Quantity>? Temperature)
{
    /// <summary>Hours of the year at other temperatures; they are part of <see cref="HoursPerYear"/>.</summary>
    public ImmutableArray<DutyPart> AtTimes { get; init; } = [];
}

/// <summary>Some hours of the year at a temperature of their own.</summary>
/// <param name="HoursPerYear">How many hours a year.</param>
/// <param name="Temperature">Temperature of the air around the parts then.</param>
public sealed record DutyPart(Written<int> HoursPerYear, Written<Quantity> Temperature);

/// <summary>The collection file.</summary>
/// <param name="Path">The path of the file.</param>
/// <param name="Name">The name of the collection.</param>
public sealed record CollectionFile(string Path, string Name)
{
    /// <summary>Who keeps it.</summary>
    public Written<string>? Keeper { get; init; }

    /// <summary>Where it is.</summary>
    public Written<string>? Place { get; init; }

    /// <summary>The time zone of the bench, by its name in the IANA time zone database.</summary>
    public Written<string>? TimeZone { get; init; }

    /// <summary>The address at which its pages are found, as a folder; null where it has none.</summary>
    public Written<Uri>? Site { get; init; }

    /// <summary>Where its records are seen on the web as they were at a commit; null where they are not.</summary>
    public Written<RecordAddress>? Repository { get; init; }

    /// <summary>True when everything in it is invented, as in an example.</summary>
    public bool IsInvented { get; init; }

    /// <summary>How a reading near its limit is judged, a word of the vocabulary; guarded when not said.</summary>
    public Written<DecisionRule>? Decision { get; init; }

    /// <summary>How often a board is looked at again, in whole days; null when not said.</summary>
    public Written<Quantity>? LookEvery { get; init; }

    /// <summary>The day before which what was done is taken as it was told; null when not said.</summary>
    public Written<DateOnly>? ToldBefore { get; init; }

    /// <summary>Usual duty.</summary>
    public Duty? Duty { get; init; }

    /// <summary>A remark.</summary>
    public Written<string>? Note { get; init; }

    /// <summary>What is used when a board lies alone, without a collection file.</summary>
    public static CollectionFile Nameless { get; } = new(string.Empty, "Boards");
}

/// <summary>A hazard.</summary>
/// <param name="Kind">What kind.</param>
/// <param name="Spot">Where it is written.</param>
public sealed record RecordedHazard(Written<HazardKind> Kind, Spot Spot)
{
    /// <summary>Where it is.</summary>
    public Written<string>? At { get; init; }

    /// <summary>The voltage it can hold.</summary>
    public Written<Quantity>? Voltage { get; init; }

    /// <summary>The capacitance that stores the energy.</summary>
    public Written<Quantity>? Capacitance { get; init; }

    /// <summary>The resistance that bleeds it.</summary>
    public Written<Quantity>? Bleed { get; init; }

    /// <summary>A remark.</summary>
    public Written<string>? Note { get; init; }
}

/// <summary>A point or test that proves a board.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Measures">What is measured: voltage, current, frequency, temperature, hours or result.</param>
/// <param name="Spot">Where it is written.</param>
/// <param name="FromDesign">The path of the design that says so, or null when the board itself does.</param>
public sealed record TestPoint(Written<string> Name, PointMeasure Measures, Spot Spot, string? FromDesign)
{
    /// <summary>The value it should have.</summary>
    public Written<Quantity>? Nominal { get; init; }

    /// <summary>How far from it is allowed.</summary>
    public Written<Tolerance>? Tolerance { get; init; }

    /// <summary>The lowest value allowed.</summary>
    public Written<Quantity>? Low { get; init; }

    /// <summary>The highest value allowed.</summary>
    public Written<Quantity>? High { get; init; }

    /// <summary>The highest ripple allowed.</summary>
    public Written<Quantity>? RippleLimit { get; init; }

    /// <summary>What the rail is or feeds.</summary>
    public Written<Rail>? Rail { get; init; }

    /// <summary>The current the rail is rated for.</summary>
    public Written<Quantity>? RatedCurrent { get; init; }

    /// <summary>The reservoir capacitor whose ripple shows here.</summary>
    public Written<string>? Reservoir { get; init; }

    /// <summary>The voltage r.m.s. of the winding that feeds it, at full load.</summary>
    public Written<Quantity>? Winding { get; init; }

    /// <summary>The point before the regulator of this rail.</summary>
    public Written<string>? Input { get; init; }

    /// <summary>The resistance that a meter sees here.</summary>
    public Written<Quantity>? SourceResistance { get; init; }

    /// <summary>The least hours of soak.</summary>
    public Written<decimal>? Hours { get; init; }

    /// <summary>Whether it must be passed.</summary>
    public bool IsRequired { get; init; } = true;

    /// <summary>Where the limit comes from.</summary>
    public Written<string>? Source { get; init; }

    /// <summary>A remark.</summary>
    public Written<string>? Note { get; init; }
}

/// <summary>A fault that a design is known for.</summary>
/// <param name="At">Where.</param>
/// <param name="What">What happens.</param>
/// <param name="Advice">What to do.</param>
public sealed record KnownFault(Written<string>? At, Written<string> What, Written<string>? Advice);

/// <summary>A board design.</summary>
/// <param name="Path">The path of the file.</param>
/// <param name="Id">Its name in the records.</param>
/// <param name="Title">What it is.</param>
public sealed record DesignFile(string Path, Written<string> Id, Written<string> Title)
{
    /// <summary>Maker.</summary>
    public Written<string>? Maker { get; init; }

    /// <summary>Revision.</summary>
    public Written<string>? Revision { get; init; }

    /// <summary>When it was made.</summary>
    public Written<RoughDate>? Made { get; init; }

    /// <summary>Its parts.</summary>
    public ImmutableArray<Part> Parts { get; init; } = [];

    /// <summary>Its test points.</summary>
    public ImmutableArray<TestPoint> Points { get; init; } = [];

    /// <summary>Parts that stand in its list and could not be read.</summary>
    public UnreadNames UnreadParts { get; init; } = UnreadNames.None;

    /// <summary>Points that stand in its list and could not be read.</summary>
    public UnreadNames UnreadPoints { get; init; } = UnreadNames.None;

    /// <summary>What can hurt.</summary>
    public ImmutableArray<RecordedHazard> Hazards { get; init; } = [];

    /// <summary>Known faults.</summary>
    public ImmutableArray<KnownFault> KnownFaults { get; init; } = [];

    /// <summary>A remark.</summary>
    public Written<string>? Note { get; init; }

    /// <summary>The Markdown text.</summary>
    public string Body { get; init; } = string.Empty;

    /// <summary>The line of the file on which the text begins.</summary>
    public int BodyLine { get; init; } = 1;
}

/// <summary>How a board came.</summary>
/// <param name="Date">When.</param>
/// <param name="From">From where.</param>
/// <param name="Complaint">What was said to be wrong.</param>
/// <param name="Note">A remark.</param>
public sealed record Arrival(Written<RoughDate>? Date, Written<string>? From, Written<string>? Complaint, Written<string>? Note);

/// <summary>A number that a board had before.</summary>
/// <param name="Number">The number.</param>
/// <param name="Until">When it got the next one.</param>
public sealed record FormerNumber(Written<string> Number, Written<DateOnly>? Until);

/// <summary>Work that cannot go on.</summary>
/// <param name="Since">Since when.</param>
/// <param name="For">For what.</param>
/// <param name="Spot">Where it is written.</param>
public sealed record Wait(Written<DateOnly> Since, Written<string> For, Spot Spot)
{
    /// <summary>The order.</summary>
    public Written<string>? Order { get; init; }

    /// <summary>The line of that order.</summary>
    public Written<string>? Line { get; init; }

    /// <summary>What cannot go on.</summary>
    public Written<string>? Blocks { get; init; }

    /// <summary>When it ended.</summary>
    public Written<DateOnly>? Until { get; init; }
}

/// <summary>One physical board.</summary>
/// <param name="Path">The path of the file.</param>
/// <param name="Id">Its number.</param>
/// <param name="Title">What it is.</param>
public sealed record BoardFile(string Path, Written<string> Id, Written<string> Title)
{
    /// <summary>Its design.</summary>
    public Written<string>? Design { get; init; }

    /// <summary>Serial number.</summary>
    public Written<string>? Serial { get; init; }

    /// <summary>Revision.</summary>
    public Written<string>? Revision { get; init; }

    /// <summary>Maker.</summary>
    public Written<string>? Maker { get; init; }

    /// <summary>When it was made.</summary>
    public Written<RoughDate>? Made { get; init; }

    /// <summary>How it came.</summary>
    public Arrival? Arrived { get; init; }

    /// <summary>The day before which what was done is taken as it was told, where it is another than the collection's.</summary>
    public Written<DateOnly>? ToldBefore { get; init; }

    /// <summary>Its duty.</summary>
    public Duty? Duty { get; init; }

    /// <summary>Parts that differ from the design, or all.</summary>
    public ImmutableArray<Part> Parts { get; init; } = [];

    /// <summary>Points that differ from the design, or all.</summary>
    public ImmutableArray<TestPoint> Points { get; init; } = [];

    /// <summary>Parts that stand in its list and could not be read.</summary>
    public UnreadNames UnreadParts { get; init; } = UnreadNames.None;

    /// <summary>Points that stand in its list and could not be read.</summary>
    public UnreadNames UnreadPoints { get; init; } = UnreadNames.None;

    /// <summary>Hazards beside those of the design.</summary>
    public ImmutableArray<RecordedHazard> Hazards { get; init; } = [];

    /// <summary>Visits to the bench, as written.</summary>
    public ImmutableArray<BenchVisit> Bench { get; init; } = [];

    /// <summary>Waits.</summary>
    public ImmutableArray<Wait> Waiting { get; init; } = [];

    /// <summary>Where it went and whose it is, as written.</summary>
    public ImmutableArray<WhereaboutsEntry> Whereabouts { get; init; } = [];

    /// <summary>The numbers that it had before, as written.</summary>
    public ImmutableArray<FormerNumber> Formerly { get; init; } = [];

    /// <summary>A remark.</summary>
    public Written<string>? Note { get; init; }

    /// <summary>The story, in Markdown.</summary>
    public string Body { get; init; } = string.Empty;

    /// <summary>The line on which the story begins.</summary>
    public int BodyLine { get; init; } = 1;
}
