namespace Ohmstead.Electronics.Supplies;

/// <summary>How much ripple a rail may usually carry, peak to peak.</summary>
/// <param name="Rail">What kind of rail.</param>
/// <param name="UsualVolts">The usual limit in volt, or null when it goes with the rail.</param>
/// <param name="HardVolts">The limit not to pass in volt, or null.</param>
/// <param name="UsualFraction">The usual limit as a fraction of the rail, or null when it is in volt.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record RippleLimit(string Rail, decimal? UsualVolts, decimal? HardVolts, decimal? UsualFraction, Source Source)
{
    private static readonly Source Atx = Source.Published("Intel ATX12V Power Supply Design Guide 2.0", "output ripple and noise");

    /// <summary>How to measure: a ripple figure without its bandwidth means little.</summary>
    public const string Conditions = "20 MHz bandwidth; for switching supplies 100 nF and 10 µF at the probe";

    /// <summary>Logic at 5 V.</summary>
    public static RippleLimit Logic { get; } = new("logic 5 V", 0.050m, 0.100m, null, Source.CommonPractice);

    /// <summary>A regulated rail of amplifiers.</summary>
    public static RippleLimit RegulatedAnalogue { get; } = new("regulated analogue", 0.010m, null, null, Source.CommonPractice);

    /// <summary>A reservoir before any regulator.</summary>
    public static RippleLimit UnregulatedReservoir { get; } = new("unregulated reservoir", null, null, 0.10m, Source.CommonPractice);

    /// <summary>A valve supply after its filter.</summary>
    public static RippleLimit FilteredHighTension { get; } =
        new("valve high tension, after the filter", null, null, 0.01m, Source.CommonPractice);

    /// <summary>A desktop computer, 5 V and 3.3 V.</summary>
    public static RippleLimit AtxFive { get; } = new("ATX 5 V and 3.3 V", 0.050m, null, null, Atx);

    /// <summary>A desktop computer, 12 V.</summary>
    public static RippleLimit AtxTwelve { get; } = new("ATX 12 V", 0.120m, null, null, Atx);

    /// <summary>The limits known here.</summary>
    public static IReadOnlyList<RippleLimit> All { get; } =
    [
        Logic,
        RegulatedAnalogue,
        UnregulatedReservoir,
        new("valve high tension, first capacitor", null, null, 0.10m, Source.CommonPractice),
        FilteredHighTension,
        AtxFive,
        AtxTwelve,
        new("ATX -12 V", 0.120m, null, null, Atx),
        new("ATX -5 V", 0.100m, null, null, Atx),
        new("ATX 5 V standby", 0.050m, null, null, Atx),
    ];

    /// <summary>The usual limit for a rail of so many volts.</summary>
    public decimal UsualFor(decimal railVolts) => UsualVolts ?? Math.Abs(railVolts) * (UsualFraction ?? 0m);
}
