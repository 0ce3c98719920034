namespace Ohmstead.Electronics.Hazards;

/// <summary>
/// A limit as a standard puts it. Not a permission: limits differ in kind (voltage, current, charge, energy, time), and each belongs to
/// its standard, edition and kind of equipment. See <see cref="SafetyNotice.Defer"/>.
/// </summary>
/// <param name="Kind">What is limited.</param>
/// <param name="Value">The limit in the unit.</param>
/// <param name="Unit">The unit.</param>
/// <param name="Condition">When it applies.</param>
/// <param name="Source">Standard, edition and clause.</param>
public sealed record LimitInStandard(LimitKind Kind, decimal Value, string Unit, string Condition, Source Source)
{
    private static readonly Source AudioVideo = Source.FromMemory("IEC 62368-1:2018", "table 4");
    private static readonly Source AudioVideoDischarge = Source.Published("IEC 62368-1:2018", "5.5.2.2");
    private static readonly Source OldAudio = Source.Published("IEC 60065, as quoted in an equipment manual", "hazardous live");
    private static readonly Source Household = Source.Published("IEC 60335-1, as quoted in a forum thread", "8.1.4");
    private static readonly Source OldIt = Source.FromMemory("IEC 60950-1 (withdrawn)", "hazardous energy; SELV");
    private static readonly Source Laboratory = Source.FromMemory("IEC 61010-1:2010", "6.3.1, 6.10.3");

    /// <summary>The limits known here, with the words of their standards.</summary>
    public static IReadOnlyList<LimitInStandard> All { get; } =
    [
        new(LimitKind.Voltage, 60m, "V d.c.", "ES1", AudioVideo),
        new(LimitKind.Voltage, 42.4m, "V peak", "ES1, to 1 kHz", AudioVideo),
        new(LimitKind.Voltage, 30m, "V r.m.s.", "ES1, to 1 kHz", AudioVideo),
        new(LimitKind.Voltage, 120m, "V d.c.", "ES2", AudioVideo),
        new(LimitKind.Voltage, 70.7m, "V peak", "ES2, to 1 kHz", AudioVideo),
        new(LimitKind.Voltage, 50m, "V r.m.s.", "ES2, to 1 kHz", AudioVideo),
        new(LimitKind.Current, 2m, "mA d.c.", "ES1", AudioVideo),
        new(LimitKind.Current, 0.5m, "mA r.m.s.", "ES1", AudioVideo),
        new(LimitKind.Current, 25m, "mA d.c.", "ES2", AudioVideo),
        new(LimitKind.Current, 5m, "mA r.m.s.", "ES2", AudioVideo),
        new(LimitKind.Time, 2m, "s", "capacitor discharge after the plug is pulled", AudioVideoDischarge),
        new(LimitKind.Voltage, 35m, "V peak a.c.", "hazardous live above", OldAudio),
        new(LimitKind.Voltage, 60m, "V d.c.", "hazardous live above", OldAudio),
        new(LimitKind.Current, 0.7m, "mA peak a.c.", "touch current", OldAudio),
        new(LimitKind.Current, 2.0m, "mA d.c.", "touch current", OldAudio),
        new(LimitKind.Current, 2m, "mA d.c.", "through a protective impedance", Household),
        new(LimitKind.Current, 0.7m, "mA peak a.c.", "through a protective impedance", Household),
        new(LimitKind.Capacitance, 0.1m, "µF", "above 42.4 V to 450 V peak", Household),
        new(LimitKind.Charge, 45m, "µC", "above 450 V to 15 kV peak", Household),
        new(LimitKind.Energy, 0.350m, "J", "above 15 kV peak", Household),
        new(LimitKind.Energy, 20m, "J", "hazardous energy, at 2 V or more", OldIt),
        new(LimitKind.Power, 240m, "VA", "hazardous energy, at 2 V or more", OldIt),
        new(LimitKind.Voltage, 42.4m, "V peak", "SELV", OldIt),
        new(LimitKind.Voltage, 60m, "V d.c.", "SELV", OldIt),
        new(LimitKind.Voltage, 30m, "V r.m.s.", "normal condition", Laboratory),
        new(LimitKind.Voltage, 42.4m, "V peak", "normal condition", Laboratory),
        new(LimitKind.Voltage, 60m, "V d.c.", "normal condition", Laboratory),
        new(LimitKind.Voltage, 35m, "V d.c.", "wet locations", Laboratory),
        new(LimitKind.Charge, 45m, "µC", "to 15 kV", Laboratory),
        new(LimitKind.Energy, 0.350m, "J", "above 15 kV", Laboratory),
        new(LimitKind.Time, 5m, "s", "pins after the plug is pulled", Laboratory),
        new(LimitKind.Time, 10m, "s", "internal parts after the plug is pulled", Laboratory),
    ];
}

/// <summary>What a standard limits.</summary>
public enum LimitKind
{
    /// <summary>A voltage.</summary>
    Voltage,

    /// <summary>A current.</summary>
    Current,

    /// <summary>A capacitance.</summary>
    Capacitance,

    /// <summary>A charge.</summary>
    Charge,

    /// <summary>An energy.</summary>
    Energy,

    /// <summary>An apparent power.</summary>
    Power,

    /// <summary>A time.</summary>
    Time,
}
