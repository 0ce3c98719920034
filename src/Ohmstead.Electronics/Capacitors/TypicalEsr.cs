namespace Ohmstead.Electronics.Capacitors;

/// <summary>What ESR to expect of a new wet aluminium electrolytic at 20 degrees. Orientation, never a limit.</summary>
public static class TypicalEsr
{
    private static readonly Source At100KiloHertzSource = Source.FromMemory(
        "general-purpose radial data sheets; a factor of two either way",
        null
    );

    // Low and high typical ESR by capacitance in microfarad.
    private static readonly IReadOnlyList<(decimal MicroFarads, decimal Low, decimal High)> At100KiloHertz =
    [
        (1m, 5m, 15m),
        (4.7m, 2m, 6m),
        (10m, 1m, 4m),
        (22m, 0.7m, 2.5m),
        (47m, 0.4m, 1.5m),
        (100m, 0.2m, 0.8m),
        (220m, 0.1m, 0.5m),
        (470m, 0.06m, 0.3m),
        (1000m, 0.04m, 0.15m),
        (2200m, 0.03m, 0.08m),
        (4700m, 0.02m, 0.05m),
    ];

    /// <summary>The largest ESR at 120 Hz that a general-purpose part for 105 degrees may have new, by completed steps.</summary>
    public static Outcome<Worked<decimal>> UpperBoundAt120Hertz(decimal farads, decimal ratedVolts) =>
        LossFactorSeries.General105.Limit(ratedVolts, farads).Is(out LossFactorLimit? known, out string? reason)
            ? LossFactor.EsrLimit(known.CompletedSteps, known.Hertz, farads)
            : Outcome<Worked<decimal>>.Refused(reason);

    /// <summary>
    /// The range of ESR at 100 kHz that is typical for the nearest listed value, in ohm; refused outside 1 to 4700 µF.
    /// </summary>
    public static Outcome<Worked<(decimal Low, decimal High)>> TypicalAt100KiloHertz(decimal farads)
    {
        decimal microFarads = farads is > 0 and < 1 ? farads * 1_000_000m : 0m;
        return Domain
            .Require(Domain.Within("capacitance in microfarad", microFarads, 0.8m, 6000m))
            .Compute(() =>
            {
                (decimal nearest, decimal low, decimal high) = At100KiloHertz.MinBy(row =>
                    Math.Abs(Math.Log((double)(row.MicroFarads / microFarads)))
                );
                return new Worked<(decimal Low, decimal High)>(
                    (low, high),
                    $"{Figures.Text(low)} to {Figures.Text(high)} Ω for {Figures.Text(nearest)} µF",
                    At100KiloHertzSource
                );
            });
    }
}
