namespace Ohmstead.Electronics.Capacitors;

/// <summary>How a kind of capacitor is measured, and whether a reading may be held against a limit taken at another frequency.</summary>
/// <param name="Kind">What is measured.</param>
/// <param name="Hertz">The usual frequency.</param>
/// <param name="LargestAlternatingVolts">The largest a.c. voltage of the meter, in volt r.m.s.</param>
/// <param name="LargestBiasVolts">The largest d.c. bias, in volt.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record MeasuringConditions(
    string Kind,
    decimal Hertz,
    decimal LargestAlternatingVolts,
    decimal LargestBiasVolts,
    Source Source
)
{
    // Mains-derived 100 Hz and 120 Hz are used for the same limits; from tan delta the ESR differs by 1.2 and no more.
    private const decimal Near = 1.25m;

    /// <summary>Wet aluminium electrolytics: 100 Hz (120 Hz where the mains have 60 Hz), 20 degrees.</summary>
    public static MeasuringConditions Aluminium { get; } =
        new(
            "aluminium electrolytic",
            100m,
            0.5m,
            1.0m,
            Source.FromMemory("IEC 60384-4, 4.3; MIL-C-62F, 4.5.4, as read, has 120 Hz", "100 Hz")
        );

    /// <summary>Solid tantalum: 120 Hz.</summary>
    public static MeasuringConditions Tantalum { get; } =
        new("solid tantalum", 120m, 1.0m, 2.2m, Source.Published("MIL-PRF-49137E", "4.8.5"));

    /// <summary>Whether figures taken at two frequencies may be compared.</summary>
    public static FrequencyMatch Match(decimal readingHertz, decimal limitHertz)
    {
        if (readingHertz <= 0 || limitHertz <= 0)
        {
            return FrequencyMatch.Different;
        }

        (decimal low, decimal high) = (Math.Min(readingHertz, limitHertz), Math.Max(readingHertz, limitHertz));
        return low == high ? FrequencyMatch.Same
            : high / Near <= low ? FrequencyMatch.Near
            : FrequencyMatch.Different;
    }
}

/// <summary>How the frequency of a reading goes with that of a limit.</summary>
public enum FrequencyMatch
{
    /// <summary>The same: compare.</summary>
    Same,

    /// <summary>100 against 120 Hz: compare, and say so.</summary>
    Near,

    /// <summary>Too far apart: an ESR at 100 kHz is 0.3 to 0.8 of that at 120 Hz and proves nothing against its limit.</summary>
    Different,
}
