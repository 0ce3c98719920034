namespace Ohmstead.Electronics.Parts;

/// <summary>The voltage tolerance that a Zener's suffix stands for. It depends on the series: the same letter means different
/// things.</summary>
public static class ZenerTolerance
{
    private static readonly Source Jedec = Source.Published(
        "data sheets of the JEDEC 1N series: SMC and Taiwan Semiconductor 1N4728A, VPT 1N746, Digitron 1N5221",
        "suffix"
    );
    private static readonly Source Remembered = Source.FromMemory("JEDEC registrations of 1N5221 to 1N5281", "suffix");
    private static readonly Source ProElectron = Source.FromMemory("Pro Electron type designation code", "voltage tolerance letter");

    /// <summary>The tolerance as a fraction, for a suffix letter or null for none; refused when the series does not know it.</summary>
    public static Outcome<Worked<decimal>> For(ZenerSeries series, char? suffix)
    {
        decimal? fraction = (series, suffix is { } letter ? char.ToUpperInvariant(letter) : (char?)null) switch
        {
            (ZenerSeries.Jedec746 or ZenerSeries.Jedec4728, null) => 0.10m,
            (ZenerSeries.Jedec746 or ZenerSeries.Jedec4728, 'A') => 0.05m,
            (ZenerSeries.Jedec746 or ZenerSeries.Jedec4728 or ZenerSeries.Jedec5221, 'C') => 0.02m,
            (ZenerSeries.Jedec746 or ZenerSeries.Jedec4728 or ZenerSeries.Jedec5221, 'D') => 0.01m,
            (ZenerSeries.Jedec5221, null) => 0.20m,
            (ZenerSeries.Jedec5221, 'A') => 0.10m,
            (ZenerSeries.Jedec5221, 'B') => 0.05m,
            (ZenerSeries.ProElectron, 'A') => 0.01m,
            (ZenerSeries.ProElectron, 'B') => 0.02m,
            (ZenerSeries.ProElectron, 'C') => 0.05m,
            (ZenerSeries.ProElectron, 'D') => 0.10m,
            _ => null,
        };
        string mark = suffix is { } c ? $"suffix {c}" : "no suffix";
        return fraction is { } known
            ? Outcome<Worked<decimal>>.From(
                new Worked<decimal>(
                    known,
                    $"{mark}: ±{Figures.Percent(known)}",
                    series switch
                    {
                        ZenerSeries.ProElectron => ProElectron,
                        ZenerSeries.Jedec5221 when char.ToUpperInvariant(suffix ?? 'A') is 'A' or 'B' => Remembered,
                        _ => Jedec,
                    }
                )
            )
            : Outcome<Worked<decimal>>.Refused($"{mark} has no known tolerance in this series");
    }
}

/// <summary>A series of Zener diodes.</summary>
public enum ZenerSeries
{
    /// <summary>1N746 to 1N759.</summary>
    Jedec746,

    /// <summary>1N4728 to 1N4764.</summary>
    Jedec4728,

    /// <summary>1N5221 to 1N5281.</summary>
    Jedec5221,

    /// <summary>European designations such as BZX79-C.</summary>
    ProElectron,
}
