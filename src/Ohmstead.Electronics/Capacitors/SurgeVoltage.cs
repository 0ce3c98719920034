namespace Ohmstead.Electronics.Capacitors;

/// <summary>Voltages beyond the rated one: surge and reverse, of aluminium electrolytics.</summary>
public static class SurgeVoltage
{
    /// <summary>The highest rated voltage of aluminium electrolytics that are made or were, in volt.</summary>
    public const decimal HighestRatedVolts = 630m;

    private const decimal LowVolts = 100m;

    // Long-life cans bear 1.15 to 250 V by their own sheets (EPCOS B41505, B43505); which a part is, its rating does not say.
    private static readonly Source Ratio = Source.Published(
        "EPCOS B41851/B43851 data sheet, 01/2009; B43858 data sheet, 11/2012",
        "surge voltage"
    );

    /// <summary>The reverse voltage a wet aluminium electrolytic bears: at most 1 V (some makers say 1.5 V for short times).</summary>
    public static Worked<decimal> ReverseVolts { get; } =
        new(1m, "at most 1 V", Source.Published("Vishay 038 RSU data sheet 28309", "reverse voltage"));

    /// <summary>The surge voltage in volt: 1.15 times the rated voltage up to 100 V, 1.10 times above. For short times, never
    /// continuous.</summary>
    public static Outcome<Worked<decimal>> Volts(decimal ratedVolts) =>
        Domain
            .Require(Domain.Positive("rated voltage", ratedVolts), Domain.That(ratedVolts <= HighestRatedVolts, Unmade(ratedVolts)))
            .Compute(() =>
            {
                decimal ratio = ratedVolts <= LowVolts ? 1.15m : 1.10m;
                decimal volts = ratio * ratedVolts;
                return new Worked<decimal>(volts, $"{Figures.Text(ratio)} x {Figures.Text(ratedVolts)} V = {Figures.Text(volts)} V", Ratio)
                {
                    Remarks =
                    [
                        "short surges only; an old can that prints its own surge voltage is right about itself",
                        .. ratedVolts > LowVolts
                            ? ["long-life cans to 250 V have 1.15 in their own sheets: without that sheet count with 1.10"]
                            : Array.Empty<string>(),
                    ],
                };
            });

    private static string Unmade(decimal volts) =>
        $"rated voltage is {Figures.Text(volts)} V, no aluminium electrolytic is rated above {Figures.Text(HighestRatedVolts)} V";
}
