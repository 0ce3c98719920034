namespace Ohmstead.Records.Model;

/// <summary>The families that kinds of part belong to.</summary>
public enum PartFamily
{
    /// <summary>Marked in farad.</summary>
    Capacitor,

    /// <summary>Marked in ohm.</summary>
    Resistor,

    /// <summary>Marked in henry, transformers included.</summary>
    Inductor,

    /// <summary>Marked in hertz.</summary>
    Crystal,

    /// <summary>Marked in ampere.</summary>
    Fuse,

    /// <summary>A winding with an armature, marked in ohm: relays and motors.</summary>
    Coil,

    /// <summary>Judged by its current gain.</summary>
    Transistor,

    /// <summary>Everything that is judged by pass or fail, by a voltage, or not at all.</summary>
    Other,
}

/// <summary>What follows from the word for the kind of a part.</summary>
public static class PartKind
{
    /// <summary>The family of a kind.</summary>
    public static PartFamily Family(string kind) => kind switch
    {
        "aluminium electrolytic" or "bipolar electrolytic" or "polymer electrolytic" or "tantalum" or "wet tantalum" or "polyester film"
            or "polypropylene film" or "polystyrene film" or "polycarbonate film" or "paper" or "metallised paper" or "ceramic class 1"
            or "ceramic class 2" or "mica" or "suppression capacitor" or "trimmer capacitor" => PartFamily.Capacitor,
        "carbon composition resistor" or "carbon film resistor" or "metal film resistor" or "wire-wound resistor" or "resistor network"
            or "potentiometer" or "thermistor" => PartFamily.Resistor,
        "inductor" or "transformer" => PartFamily.Inductor,
        "crystal" => PartFamily.Crystal,
        "fuse" => PartFamily.Fuse,
        "relay" or "motor" => PartFamily.Coil,
        "transistor" or "germanium transistor" => PartFamily.Transistor,
        _ => PartFamily.Other,
    };

    /// <summary>Whether a kind is an electrolytic: judged by ESR, dissipation factor and leakage too, and ageing on the shelf.</summary>
    public static bool IsElectrolytic(string kind) => kind is "aluminium electrolytic" or "bipolar electrolytic" or "polymer electrolytic" or "tantalum" or "wet tantalum";

    /// <summary>Whether a kind is of paper, which breaks down at its working voltage when it is old.</summary>
    public static bool IsPaper(string kind) => kind is "paper" or "metallised paper";

    /// <summary>Whether the type number of a kind tells its voltage.</summary>
    public static bool HasTellingType(string kind) => kind is "zener diode" or "regulator";

    /// <summary>
    /// Whether people rely on a part not to be shocked or burned: a suppression capacitor, anything with a safety class or across the mains, a fuse.
    /// Common practice; no list can name all of them, and local codes and licensed practice come first.
    /// </summary>
    public static bool IsSafetyRelevant(PartValues values) =>
        values.SafetyClass is not null || values.Kind.Value is "suppression capacitor" or "fuse" || values.Role is { Value: "mains suppression" };

    /// <summary>Whether a part is a capacitor that stands on the mains: by its kind, its safety class or what it does there.</summary>
    public static bool IsSuppressor(PartValues values) =>
        values.Kind.Value == "suppression capacitor"
        || ((values.SafetyClass is not null || values.Role is { Value: "mains suppression" }) && Family(values.Kind.Value) == PartFamily.Capacitor);

    /// <summary>Whether every part of a kind has a right way round.</summary>
    public static bool HasRightWayRound(string kind) => kind is "aluminium electrolytic" or "polymer electrolytic" or "tantalum" or "wet tantalum" or "diode" or "zener diode"
        or "bridge rectifier" or "selenium rectifier" or "cell";

    /// <summary>Whether a part of these values has a right way round.</summary>
    public static bool IsPolarised(PartValues values) => values.Polarity?.Value switch
    {
        "polarised" => true,
        "bipolar" or "none" => false,
        _ => HasRightWayRound(values.Kind.Value),
    };
}
