namespace Ohmstead.Electronics.Parts;

/// <summary>The forward drop of a healthy junction as the diode test of a meter shows it, at about 1 mA.</summary>
/// <param name="Material">What the junction is of, in the words of records.</param>
/// <param name="LowVolts">The lowest usual drop, in volt.</param>
/// <param name="HighVolts">The highest usual drop, in volt.</param>
/// <param name="LowVoltsOfLarge">The lowest usual drop of a rectifier for much current, in volt: the same milliampere spreads over more
/// silicon.</param>
/// <param name="Source">Where the figures come from.</param>
public sealed record JunctionDrop(string Material, decimal LowVolts, decimal HighVolts, decimal LowVoltsOfLarge, Source Source)
{
    /// <summary>The rated current, in ampere, from which a rectifier is a large one. Common practice.</summary>
    public const decimal LargeAmperes = 3m;

    /// <summary>
    /// How far a drop moves, in volt, where nobody wrote the current down: meters test with half a milliampere to two, and 26 mV x ln 2 =
    /// 18 mV is what twice the current adds (the law of the ideal diode at room temperature).
    /// </summary>
    public const decimal VoltsOfUnknownCurrent = 0.02m;

    private static readonly Source Meters = Source.Published(
        "testmultimeter.com 2021-11, measured on 1N5402 (0.528 V) and 1N5820 (0.123 V)",
        "silicon 0.5 to 0.8 V, Schottky 0.1 to 0.45 V"
    );
    private static readonly Source GermaniumSource = Source.Published(
        "gvda-instrument.com and en.eeworld.com eic524106",
        "germanium 0.15 to 0.30 V; to 0.4 V common practice"
    );

    /// <summary>Silicon.</summary>
    public static JunctionDrop Silicon { get; } = new("silicon", 0.5m, 0.8m, 0.4m, Meters);

    /// <summary>Germanium; it leaks by its type.</summary>
    public static JunctionDrop Germanium { get; } = new("germanium", 0.15m, 0.4m, 0.1m, GermaniumSource);

    /// <summary>A metal on silicon.</summary>
    public static JunctionDrop Schottky { get; } = new("Schottky", 0.1m, 0.45m, 0.05m, Meters);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<JunctionDrop> All { get; } = [Silicon, Germanium, Schottky];

    /// <summary>The lowest usual drop of a part of a rated current, or of one whose current is not known.</summary>
    public decimal LowFor(decimal? ratedAmperes) => ratedAmperes >= LargeAmperes ? LowVoltsOfLarge : LowVolts;
}
