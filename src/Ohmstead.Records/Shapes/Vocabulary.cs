using Ohmstead.Electronics.Parts;
using Ohmstead.Electronics.Supplies;
using Ohmstead.Records.Model;

namespace Ohmstead.Records.Shapes;

/// <summary>The closed lists of words that records use. The words are the trade's. Where the program tells words apart, each stands beside what it means.</summary>
public static class Vocabulary
{
    /// <summary>Kinds of part.</summary>
    public static WordList<PartKind> PartKinds => Model.PartKinds.All;

    /// <summary>What a part does in its place.</summary>
    public static IReadOnlyList<string> Roles { get; } =
    [
        "reservoir", "decoupling", "coupling", "timing", "filter", "tuning", "snubber", "mains suppression", "feedback", "bias", "load", "bleeder", "other",
    ];

    /// <summary>Whether a part has a right way round.</summary>
    public static IReadOnlyList<string> Polarities { get; } = ["polarised", "bipolar", "none"];

    /// <summary>Safety classes of suppression capacitors, IEC 60384-14.</summary>
    public static IReadOnlyList<string> SafetyClasses { get; } = ["X1", "X2", "X3", "Y1", "Y2", "Y3", "Y4"];

    /// <summary>Speeds of fuses, IEC 60127.</summary>
    public static IReadOnlyList<string> FuseSpeeds => FuseLetters.Speeds;

    /// <summary>Breaking capacities of fuses, IEC 60127.</summary>
    public static IReadOnlyList<string> FuseBreakings => FuseLetters.Breakings;

    /// <summary>Sizes of fuses: the cartridges of IEC 60127-2, older ones of the trade, and those that are soldered in (IEC 60127-3 and -4).</summary>
    public static IReadOnlyList<string> FuseSizes { get; } = ["5 x 20 mm", "6.3 x 32 mm", "6.3 x 25 mm", "5 x 25 mm", "5 x 30 mm", "sub-miniature", "chip", "other"];

    /// <summary>Bodies and lead styles.</summary>
    public static IReadOnlyList<string> Forms { get; } = ["axial", "radial", "snap-in", "can", "screw", "chip", "disc", "bead", "other"];

    /// <summary>What can hurt.</summary>
    public static WordList<HazardKind> Hazards { get; } = new(
        (HazardKind.Mains, "mains"),
        (HazardKind.ChargedCapacitor, "charged capacitor"),
        (HazardKind.PictureTube, "picture tube"),
        (HazardKind.LeakingCell, "leaking cell"),
        (HazardKind.LithiumCell, "lithium cell"),
        (HazardKind.OilFilledPart, "oil-filled part"),
        (HazardKind.Asbestos, "asbestos"),
        (HazardKind.SeleniumRectifier, "selenium rectifier"),
        (HazardKind.Beryllia, "beryllia"),
        (HazardKind.Mercury, "mercury"),
        (HazardKind.Radium, "radium"),
        (HazardKind.HotParts, "hot parts"),
        (HazardKind.CrazedSuppressor, "crazed suppressor"),
        (HazardKind.LeadAndFlux, "lead and flux"),
        (HazardKind.SwitchingSupply, "switching supply"),
        (HazardKind.CellPack, "cell pack"),
        (HazardKind.LeakedElectrolyte, "leaked electrolyte"));

    /// <summary>What is measured at a test point.</summary>
    public static WordList<PointMeasure> PointMeasures { get; } = new(
        (PointMeasure.Voltage, "voltage"),
        (PointMeasure.Current, "current"),
        (PointMeasure.Frequency, "frequency"),
        (PointMeasure.Temperature, "temperature"),
        (PointMeasure.Hours, "hours"),
        (PointMeasure.Result, "result"));

    /// <summary>What an instrument measures.</summary>
    public static WordList<Measured> InstrumentMeasures { get; } = new(
        (Measured.Capacitance, "capacitance"),
        (Measured.Esr, "esr"),
        (Measured.LossFactor, "loss_factor"),
        (Measured.Leakage, "leakage"),
        (Measured.Insulation, "insulation"),
        (Measured.VoltageLoss, "voltage_loss"),
        (Measured.Resistance, "resistance"),
        (Measured.Inductance, "inductance"),
        (Measured.Voltage, "voltage"),
        (Measured.Ripple, "ripple"),
        (Measured.Current, "current"),
        (Measured.Frequency, "frequency"),
        (Measured.Temperature, "temperature"));

    /// <summary>How much a finding matters.</summary>
    public static WordList<ObservedSeverity> Severities { get; } = new(
        (ObservedSeverity.Note, "note"),
        (ObservedSeverity.Minor, "minor"),
        (ObservedSeverity.Major, "major"),
        (ObservedSeverity.Safety, "safety"));

    /// <summary>When in the life of a part a reading was taken.</summary>
    public static WordList<ReadingState> ReadingStates { get; } = new(
        (ReadingState.AsFound, "as found"),
        (ReadingState.New, "new"),
        (ReadingState.AsLeft, "as left"),
        (ReadingState.Again, "again"));

    /// <summary>Whether the part was in the circuit when it was measured.</summary>
    public static WordList<Circuit> Circuits { get; } = new(
        (Circuit.In, "in"),
        (Circuit.Out, "out"));

    /// <summary>Results of a functional test.</summary>
    public static WordList<TestResult> Results { get; } = new(
        (TestResult.Pass, "pass"),
        (TestResult.Fail, "fail"));

    /// <summary>Verdicts that may be written beside a reading.</summary>
    public static IReadOnlyList<string> Verdicts { get; } = ["in", "out", "undecided"];

    /// <summary>What was done.</summary>
    public static WordList<WorkKind> Works { get; } = new(
        (WorkKind.Replaced, "replaced"),
        (WorkKind.Removed, "removed"),
        (WorkKind.Fitted, "fitted"),
        (WorkKind.PutBack, "put back"),
        (WorkKind.Reformed, "re-formed"),
        (WorkKind.Cleaned, "cleaned"),
        (WorkKind.Washed, "washed"),
        (WorkKind.Resoldered, "re-soldered"),
        (WorkKind.Repaired, "repaired"),
        (WorkKind.Adjusted, "adjusted"),
        (WorkKind.Modified, "modified"),
        (WorkKind.MadeSafe, "made safe"),
        (WorkKind.LeftAlone, "left alone"));

    /// <summary>How the right way round was established. The print alone does not establish it.</summary>
    public static WordList<PolarityEvidence> PolarityWays { get; } = new(
        (PolarityEvidence.Schematic, "schematic"),
        (PolarityEvidence.ContinuityToGroundPlane, "continuity to ground plane"),
        (PolarityEvidence.MeasuredInCircuit, "measured in circuit"),
        (PolarityEvidence.PhotographBeforeRemoval, "photograph before removal"),
        (PolarityEvidence.Print, "print"),
        (PolarityEvidence.OtherUnit, "other unit"));

    /// <summary>What a person may decide.</summary>
    public static WordList<DecisionKind> Decisions { get; } = new(
        (DecisionKind.Keep, "keep"),
        (DecisionKind.Watch, "watch"),
        (DecisionKind.Replace, "replace"),
        (DecisionKind.FormAgain, "form again"),
        (DecisionKind.MeasureOutOfCircuit, "measure out of circuit"),
        (DecisionKind.LeaveAlone, "leave alone"));

    /// <summary>Yes or no.</summary>
    public static IReadOnlyList<string> YesNo { get; } = ["yes", "no"];

    /// <summary>How a reading near its limit is judged.</summary>
    public static IReadOnlyList<string> DecisionRules { get; } = ["guarded", "simple", "guarded to five per cent", "three sigma", "six sigma", "uncritical"];

    /// <summary>What a part is made of: the junction of a semiconductor, the dielectric of a ceramic, the chemistry of a cell.</summary>
    public static IReadOnlyList<string> Materials { get; } =
    [
        "silicon", "germanium", "Schottky", "C0G", "X7R", "Z5U", "Y5V", "lithium", "nickel-cadmium", "nickel-metal hydride", "alkaline", "zinc-carbon",
        "silver oxide", "lead-acid",
    ];

    /// <summary>What a supply rail is or feeds.</summary>
    public static IReadOnlyList<string> Rails => UsualRail.Words;
}
