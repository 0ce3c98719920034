namespace Ohmstead.Electronics.Capacitors;

/// <summary>How much the impedance at 120 Hz may rise in the cold: an ESR taken in a cold shed reads high.</summary>
public static class LowTemperatureImpedance
{
    /// <summary>The temperature in degrees Celsius that limits hold at, and how far from it a reading may be taken.</summary>
    public const decimal ReferenceCelsius = 20m;

    /// <summary>How many degrees from the reference a reading is still comparable.</summary>
    public const decimal ComparableWithin = 5m;

    /// <summary>Where the ratios come from.</summary>
    public static Source Source { get; } =
        Source.Published("Lelon RGA data sheet", "low temperature impedance ratio, column alignment reconstructed");

    /// <summary>The ratios by rated voltage, for cans under 16 mm.</summary>
    public static IReadOnlyList<ImpedanceRatio> Ratios { get; } =
    [
        new(6.3m, 4m, 8m),
        new(10m, 3m, 6m),
        new(16m, 3m, 6m),
        new(25m, 2m, 4m),
        new(35m, 2m, 4m),
        new(50m, 2m, 3m),
        new(63m, 2m, 3m),
        new(100m, 2m, 3m),
        new(160m, 3m, 4m),
        new(200m, 6m, 8m),
        new(250m, 8m, 10m),
        new(350m, 12m, 16m),
        new(400m, 14m, 18m),
        new(450m, 16m, 20m),
    ];

    /// <summary>True when a reading at this temperature may be compared with a limit at 20 degrees.</summary>
    public static bool IsComparable(decimal celsius) => Math.Abs(celsius - ReferenceCelsius) <= ComparableWithin;
}

/// <summary>The impedance ratio limits of one rated voltage.</summary>
/// <param name="RatedVolts">The rated voltage in volt.</param>
/// <param name="AtMinus25">Impedance at -25 degrees over that at 20.</param>
/// <param name="AtMinus40">Impedance at -40 degrees over that at 20.</param>
public sealed record ImpedanceRatio(decimal RatedVolts, decimal AtMinus25, decimal AtMinus40);
