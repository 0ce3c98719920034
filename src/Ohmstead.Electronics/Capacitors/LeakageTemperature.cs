namespace Ohmstead.Electronics.Capacitors;

/// <summary>How the leakage of a wet aluminium electrolytic goes with its warmth: against 20 degrees half at zero, two to three times at
/// 60, five to ten at 85.</summary>
/// <remarks>
/// Between the points the factor is taken to rise by the same share for every kelvin. The spread is that of makers: a reading that its
/// warmth may explain is not proved bad, one beyond the greatest factor is not explained by it.
/// </remarks>
public static class LeakageTemperature
{
    /// <summary>The temperature that leakage limits hold at, in degrees Celsius.</summary>
    public const decimal ReferenceCelsius = 20m;

    private const decimal HighestCelsius = 85m;

    // Temperature, least and greatest factor.
    private static readonly IReadOnlyList<(double Celsius, double Least, double Greatest)> Points = [(20, 1, 1), (60, 2, 3), (85, 5, 10)];

    /// <summary>Where the half at zero degrees comes from.</summary>
    public static Source ColdSource { get; } =
        Source.FromMemory("TDK, aluminium electrolytic capacitors, general technical information", "leakage 0.5 at 0 degrees");

    /// <summary>The lowest temperature, in degrees Celsius, of which a share is known.</summary>
    public const decimal LowestCelsius = 0m;

    /// <summary>The share of the leakage at 20 degrees that is left when it is colder, 0.5^((20 - T) / 20); refused outside 0 to 20
    /// degrees.</summary>
    public static Outcome<Worked<decimal>> ShareCold(decimal celsius) =>
        Domain
            .Require(Domain.Within("temperature", celsius, LowestCelsius, ReferenceCelsius))
            .Compute(() =>
            {
                decimal share = decimal.Round((decimal)Math.Pow(0.5, (20 - (double)celsius) / 20), 4);
                return new Worked<decimal>(
                    share,
                    new(() => $"0.5^((20 - {Figures.Text(celsius)}) / 20) = {Figures.Text(share, 4)}"),
                    ColdSource
                );
            });

    /// <summary>Where the factors come from.</summary>
    public static Source Source { get; } =
        Source.FromMemory("application notes of aluminium electrolytics", "leakage current against temperature");

    /// <summary>The most that warmth alone makes of the leakage at 20 degrees, as a factor; refused outside 20 to 85 degrees.</summary>
    public static Outcome<Worked<decimal>> GreatestFactor(decimal celsius) => Factor(celsius, point => point.Greatest);

    /// <summary>The least that warmth makes of it, as a factor; refused outside 20 to 85 degrees.</summary>
    public static Outcome<Worked<decimal>> LeastFactor(decimal celsius) => Factor(celsius, point => point.Least);

    private static Outcome<Worked<decimal>> Factor(decimal celsius, Func<(double Celsius, double Least, double Greatest), double> of) =>
        Domain
            .Require(Domain.Within("temperature", celsius, ReferenceCelsius, HighestCelsius))
            .Compute(() =>
            {
                var (low, high) = (double)celsius <= Points[1].Celsius ? (Points[0], Points[1]) : (Points[1], Points[2]);
                double share = ((double)celsius - low.Celsius) / (high.Celsius - low.Celsius);
                decimal factor = decimal.Round((decimal)(of(low) * Math.Pow(of(high) / of(low), share)), 4);
                return new Worked<decimal>(
                    factor,
                    new(() =>
                        $"{Figures.Text(of(low))} x {Figures.Text(of(high) / of(low), 4)}^(({Figures.Text(celsius)} - "
                        + $"{Figures.Text(low.Celsius)}) / {Figures.Text(high.Celsius - low.Celsius)}) = {Figures.Text(factor, 4)}"
                    ),
                    Source
                );
            });
}
