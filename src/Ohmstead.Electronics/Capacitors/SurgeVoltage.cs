namespace Ohmstead.Electronics.Capacitors;

/// <summary>Voltages beyond the rated one: surge and reverse, of aluminium electrolytics.</summary>
public static class SurgeVoltage
{
    private static readonly Source Ratio = Source.FromMemory("IEC 60384-4:2016", "2.2.7");

    /// <summary>The reverse voltage a wet aluminium electrolytic bears: at most 1 V (some makers say 1.5 V).</summary>
    public static Worked<decimal> ReverseVolts { get; } = new(1m, "at most 1 V",
        Source.Published("Vishay 038 RSU data sheet 28309", "reverse voltage"));

    /// <summary>The surge voltage in volt: 1.15 times the rated voltage up to 315 V, 1.10 times above. For short times, never
    /// continuous.</summary>
    public static Outcome<Worked<decimal>> Volts(decimal ratedVolts) =>
        Domain.Of(Domain.Positive("rated voltage", ratedVolts)).Compute(() =>
        {
            decimal ratio = ratedVolts <= 315m ? 1.15m : 1.10m;
            decimal volts = ratio * ratedVolts;
            return new Worked<decimal>(volts, $"{Figures.Text(ratio)} x {Figures.Text(ratedVolts)} V = {Figures.Text(volts)} V", Ratio)
            {
                Remarks = ["short surges only (30 s, from memory); an old can that prints its own surge voltage is right about itself"],
            };
        });
}
