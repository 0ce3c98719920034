namespace Ohmstead.Electronics.Capacitors;

/// <summary>How insulation of a dry capacitor depends on the way it is read: the minute, the voltage, the temperature.</summary>
public static class InsulationConditions
{
    /// <summary>The voltage has stood so long, in seconds, when limits hold.</summary>
    public const decimal SettledSeconds = 60m;

    private const double DecadeKelvin = 60;

    private static readonly Source Absorption = Source.FromMemory(
        "Curie and von Schweidler",
        "the current of dielectric absorption falls as 1/t"
    );

    /// <summary>Where the minute comes from.</summary>
    public static Source Minute { get; } = Source.Published("IEC 60384-1, 4.5.2, as quoted by EPCOS", "60 s of steady voltage, 20 degrees");

    /// <summary>Where the voltages come from.</summary>
    public static Source Voltage { get; } =
        Source.Published(
            "Vishay MKP 1848 data sheet 28164",
            "100 V to a rating of 500 V, 500 V from there; 10 V under 100 V from memory of IEC 60384-1"
        );

    /// <summary>Where the decade comes from.</summary>
    public static Source Warmth { get; } =
        Source.Published("WIMA, Characteristics of the plastic film dielectrics", "a tenth at 85 of what it is at 25 degrees");

    /// <summary>The least voltage at which insulation is read, in volt, by the rated voltage; the lowest where it is not known.</summary>
    public static decimal LeastVolts(decimal? ratedVolts) =>
        ratedVolts switch
        {
            >= 500m => 500m,
            >= 100m => 100m,
            _ => 10m,
        };

    /// <summary>The share of the insulation at 20 degrees at another temperature, 10^(-(T - 20) / 60): under one when it is warmer, above
    /// one when it is colder.</summary>
    /// <remarks>A straight line in the logarithm between the two ends that are published, carried on into the cold.</remarks>
    public static Outcome<Worked<decimal>> Share(decimal celsius) =>
        Domain
            .Require(Domain.Within("temperature", celsius, -60m, 150m))
            .Compute(() =>
            {
                decimal share = decimal.Round((decimal)Math.Pow(10, -((double)celsius - 20) / DecadeKelvin), 4);
                return new Worked<decimal>(
                    share,
                    new(() => $"10^(-({Figures.Text(celsius)} - 20) / 60) = {Figures.Text(share, 4)}"),
                    Warmth
                );
            });

    /// <summary>The least share of its settled insulation that a sound part shows after so many seconds, t / 60 s; after one second where
    /// nobody wrote down how long.</summary>
    public static Worked<decimal> ShareAfter(decimal? seconds)
    {
        decimal after = Math.Clamp(seconds ?? 1m, 1m, SettledSeconds);

        // Cut and not rounded, so that a reading exactly on the share is on it.
        return new(
            decimal.Round(after / SettledSeconds, 20, MidpointRounding.ToZero),
            new(() => $"{Figures.Text(after)} s / 60 s"),
            Absorption
        );
    }
}
