namespace Ohmstead.Electronics.Capacitors;

/// <summary>How much less ESR a wet aluminium electrolytic shows when it is warm: a third to a half less at 85 degrees than at
/// 20.</summary>
/// <remarks>Between the two the share is taken to fall alike for every kelvin. The greatest fall counts: a warm reading that is inside by
/// it is inside at 20 degrees too.</remarks>
public static class EsrTemperature
{
    private const decimal ReferenceCelsius = 20m;
    private const decimal HighestCelsius = 85m;
    private const double LeastShare = 0.5;

    /// <summary>Where the share comes from.</summary>
    public static Source Source { get; } =
        Source.FromMemory(
            "Cornell Dubilier, Aluminum Electrolytic Capacitor Application Guide",
            "ESR falls by 35 to 50 % from 25 degrees to the upper limit"
        );

    /// <summary>The least share of the ESR at 20 degrees that a sound part shows when it is warmer; from 85 degrees on the same.</summary>
    public static Outcome<Worked<decimal>> LeastShareWarm(decimal celsius) =>
        Domain
            .Require(Domain.Within("temperature", celsius, ReferenceCelsius, 150m))
            .Compute(() =>
            {
                decimal at = Math.Min(celsius, HighestCelsius);
                double ofSpan = (double)((at - ReferenceCelsius) / (HighestCelsius - ReferenceCelsius));
                decimal share = decimal.Round((decimal)Math.Pow(LeastShare, ofSpan), 4);
                return new Worked<decimal>(share, new(() => $"0.5^(({Figures.Text(at)} - 20) / 65) = {Figures.Text(share, 4)}"), Source);
            });
}
