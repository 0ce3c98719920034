namespace Ohmstead.Electronics.Supplies;

/// <summary>The usual range and ripple of a rail by what it feeds, or where that is not known by its nominal voltage. A manual's figure
/// always comes first.</summary>
public static class UsualRail
{
    /// <summary>A reservoir before any regulator: its ripple goes with the voltage.</summary>
    public const string Unregulated = "unregulated";

    /// <summary>A valve supply after its filter.</summary>
    public const string HighTension = "high tension";

    private static readonly (string Word, string Family)[] Named =
    [
        ("TTL", "TTL 74"), ("TTL 54", "TTL 54"), ("DTL", "DTL 930"), ("RTL", "RTL"), ("CMOS 4000A", "CMOS 4000A"), ("CMOS 4000B", "CMOS 4000B"),
        ("CMOS 74C", "CMOS 74C"), ("CMOS 74HC", "CMOS 74HC"), ("CMOS 74HCT", "CMOS 74HCT"), ("CMOS 74AC", "CMOS 74AC"),
        ("CMOS 74ACT", "CMOS 74ACT"), ("ECL", "ECL 10K"), ("NMOS", "NMOS 8080A"), ("dynamic memory", "DRAM 4116"), ("EPROM", "EPROM 2708"),
        ("line driver", "EIA-232 driver"), ("op-amp", "op-amp"), ("heater", "valve heater 6.3 V, absolute"), ("mains", "mains"),
    ];

    // Where nothing says what a rail feeds: the usual range of that voltage, the narrow one where there are several.
    private static readonly string[] ByVoltage =
    [
        "TTL 74, 74LS, 74S", "NMOS 8080A, -5 V", "NMOS 8080A, +12 V", "ATX, -12 V", "op-amp, +15 V", "op-amp, -15 V", "RTL", "ECL 10K",
        "ATX, +3.3 V", "valve heater 6.3 V, absolute", "mains 230 V", "mains 120 V",
    ];

    /// <summary>What a rail may be said to be or to feed.</summary>
    public static IReadOnlyList<string> Words { get; } = [.. Named.Select(known => known.Word), Unregulated, HighTension];

    /// <summary>The usual range, or null when none is known.</summary>
    /// <param name="rail">A word of <see cref="Words"/>, or null when it is not known.</param>
    /// <param name="nominalVolts">The nominal voltage, signed.</param>
    public static RailLimit? Range(string? rail, decimal nominalVolts)
    {
        if (rail is null)
        {
            return ByVoltage.Select(family => RailLimits.All.First(limit => limit.Family == family)).FirstOrDefault(limit => limit.NominalVolts == nominalVolts);
        }

        string? family = Named.FirstOrDefault(known => known.Word == rail).Family;
        return family is null ? null : RailLimits.All.FirstOrDefault(limit => IsOf(limit, family) && (limit.NominalVolts == nominalVolts || (IsWide(family) && limit.Holds(nominalVolts))));
    }

    /// <summary>The usual ripple, or null when none is known.</summary>
    /// <param name="rail">A word of <see cref="Words"/>, or null when it is not known.</param>
    /// <param name="nominalVolts">The nominal voltage, signed.</param>
    public static RippleLimit? Ripple(string? rail, decimal nominalVolts)
    {
        string? name = (rail, Math.Abs(nominalVolts)) switch
        {
            (Unregulated, _) => "unregulated reservoir",
            (HighTension, _) => "valve high tension, after the filter",
            ("op-amp", _) or (null, 15m) => "regulated analogue",
            (null or "TTL" or "TTL 54" or "DTL" or "NMOS" or "dynamic memory" or "EPROM" or "CMOS 74HC" or "CMOS 74HCT" or "CMOS 74AC" or "CMOS 74ACT", 5m) => "logic 5 V",
            (null, 3.3m) => "ATX 5 V and 3.3 V",
            (null or "NMOS" or "dynamic memory" or "EPROM", 12m) => "ATX 12 V",
            _ => null,
        };
        return name is null ? null : RippleLimit.All.First(limit => limit.Rail == name);
    }

    private static bool IsOf(RailLimit limit, string family) =>
        limit.Family == family || limit.Family.StartsWith(family + ",", StringComparison.Ordinal) || limit.Family.StartsWith(family + " ", StringComparison.Ordinal);

    // These run from any voltage of their range; of the others each has its own.
    private static bool IsWide(string family) => family.StartsWith("CMOS 4000", StringComparison.Ordinal) || family is "CMOS 74C" or "CMOS 74HC" or "CMOS 74AC" or "EIA-232 driver";
}
