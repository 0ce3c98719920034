using Ohmstead.Electronics.Supplies;

namespace Ohmstead.Records.Shapes;

/// <summary>The closed lists of words that records use. The words are the trade's.</summary>
public static class Vocabulary
{
    /// <summary>Kinds of part.</summary>
    public static IReadOnlyList<string> PartKinds { get; } =
    [
        "aluminium electrolytic", "bipolar electrolytic", "polymer electrolytic", "tantalum", "wet tantalum", "polyester film", "polypropylene film",
        "polystyrene film", "polycarbonate film", "paper", "metallised paper", "ceramic class 1", "ceramic class 2", "mica", "suppression capacitor",
        "trimmer capacitor", "carbon composition resistor", "carbon film resistor", "metal film resistor", "wire-wound resistor", "resistor network",
        "potentiometer", "thermistor", "inductor", "transformer", "diode", "zener diode", "bridge rectifier", "selenium rectifier",
        "germanium transistor", "transistor", "regulator", "integrated circuit", "memory", "valve", "crystal", "fuse", "relay", "switch", "lamp",
        "display", "cell", "motor", "connector", "other",
    ];

    /// <summary>What a part does in its place.</summary>
    public static IReadOnlyList<string> Roles { get; } =
    [
        "reservoir", "decoupling", "coupling", "timing", "filter", "tuning", "snubber", "mains suppression", "feedback", "bias", "load", "other",
    ];

    /// <summary>Whether a part has a right way round.</summary>
    public static IReadOnlyList<string> Polarities { get; } = ["polarised", "bipolar", "none"];

    /// <summary>Safety classes of suppression capacitors, IEC 60384-14.</summary>
    public static IReadOnlyList<string> SafetyClasses { get; } = ["X1", "X2", "X3", "Y1", "Y2", "Y3", "Y4"];

    /// <summary>Bodies and lead styles.</summary>
    public static IReadOnlyList<string> Forms { get; } = ["axial", "radial", "snap-in", "can", "screw", "chip", "disc", "bead", "other"];

    /// <summary>What can hurt.</summary>
    public static IReadOnlyList<string> Hazards { get; } =
    [
        "mains", "charged capacitor", "picture tube", "leaking cell", "lithium cell", "oil-filled part", "asbestos", "selenium rectifier", "beryllia",
        "mercury", "radium", "hot parts", "crazed suppressor", "lead and flux", "switching supply", "cell pack", "leaked electrolyte",
    ];

    /// <summary>What is measured at a test point.</summary>
    public static IReadOnlyList<string> PointMeasures { get; } = ["voltage", "current", "frequency", "temperature", "hours", "result"];

    /// <summary>What an instrument measures.</summary>
    public static IReadOnlyList<string> InstrumentMeasures { get; } =
    [
        "capacitance", "esr", "loss_factor", "leakage", "insulation", "voltage_loss", "resistance", "inductance", "voltage", "ripple", "current", "frequency", "temperature",
    ];

    /// <summary>How much a finding matters.</summary>
    public static IReadOnlyList<string> Severities { get; } = ["note", "minor", "major", "safety"];

    /// <summary>When in the life of a part a reading was taken.</summary>
    public static IReadOnlyList<string> ReadingStates { get; } = ["as found", "new", "as left", "again"];

    /// <summary>Whether the part was in the circuit when it was measured.</summary>
    public static IReadOnlyList<string> Circuits { get; } = ["in", "out"];

    /// <summary>Results of a functional test.</summary>
    public static IReadOnlyList<string> Results { get; } = ["pass", "fail"];

    /// <summary>Verdicts that may be written beside a reading.</summary>
    public static IReadOnlyList<string> Verdicts { get; } = ["in", "out", "undecided"];

    /// <summary>What was done.</summary>
    public static IReadOnlyList<string> Works { get; } =
    [
        "replaced", "removed", "fitted", "re-formed", "cleaned", "washed", "re-soldered", "repaired", "adjusted", "modified", "made safe", "left alone",
    ];

    /// <summary>How the right way round was established. The print alone does not establish it.</summary>
    public static IReadOnlyList<string> PolarityEvidence { get; } =
    [
        "schematic", "continuity to ground plane", "measured in circuit", "photograph before removal", "print", "other unit",
    ];

    /// <summary>What a person may decide.</summary>
    public static IReadOnlyList<string> Decisions { get; } = ["keep", "watch", "replace", "form again", "measure out of circuit", "leave alone"];

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
