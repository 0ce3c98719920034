namespace Ohmstead.Electronics.Capacitors;

/// <summary>
/// Limits of solid tantalum capacitors (manganese dioxide). Their capacitance says little: they fail short at power-up; leakage,
/// voltage margin and history decide.
/// </summary>
public static class Tantalum
{
    private static readonly Source Sheets = Source.FromMemory("tantalum data sheets to IEC 60384-15 and -24", null);
    private static readonly Source Typical = Source.Published(
        "Vishay, typical performance characteristics, MIL-PRF-55365",
        "category voltage; reverse peaks of 10, 5 and 1 %; the volts at most from memory"
    );
    private static readonly Source Warm = Source.Published(
        "solid tantalum data sheet, tancap.com.cn",
        "leakage at most 10 times at 85 and 12 times at 125 degrees"
    );
    private static readonly Source Derating = Source.Published("KEMET derating guidelines for tantalum capacitors", "50 % to 85 degrees");

    /// <summary>The largest dissipation factor at 120 Hz: 0.04 to 1 µF, 0.06 to 68 µF, 0.10 above (some sheets say 0.08).</summary>
    public static Outcome<Worked<decimal>> LossFactorLimit(decimal farads) =>
        Domain
            .Require(Domain.Positive("capacitance", farads))
            .Compute(() =>
            {
                (decimal limit, string range) = farads switch
                {
                    <= 0.000001m => (0.04m, "up to 1 µF"),
                    <= 0.000068m => (0.06m, "up to 68 µF"),
                    _ => (0.10m, "above 68 µF, some sheets 0.08"),
                };
                return new Worked<decimal>(limit, new(() => $"{Figures.Text(limit)} at 120 Hz {range}"), Sheets);
            });

    /// <summary>The most that warmth alone makes of the leakage at 20 degrees: ten times at 85, twelve at 125, rising alike for every
    /// kelvin between.</summary>
    public static Outcome<Worked<decimal>> WarmLeakageFactor(decimal celsius) =>
        Domain
            .Require(Domain.Within("temperature", celsius, 20m, 125m))
            .Compute(() =>
            {
                (double from, double low, double high, double span) = celsius <= 85m ? (20.0, 1.0, 10.0, 65.0) : (85.0, 10.0, 12.0, 40.0);
                decimal factor = decimal.Round((decimal)(low * Math.Pow(high / low, ((double)celsius - from) / span)), 4);
                return new Worked<decimal>(
                    factor,
                    new(() =>
                        $"{Figures.Text(low)} x {Figures.Text(high / low, 4)}^(({Figures.Text(celsius)} - {Figures.Text(from)}) / "
                        + $"{Figures.Text(span)}) = {Figures.Text(factor, 4)}"
                    ),
                    Warm
                );
            });

    /// <summary>The rated voltage to ask for on a rail: twice its voltage, that is 50 % derating.</summary>
    public static Outcome<Worked<decimal>> LeastRatedVolts(decimal railVolts) =>
        Domain
            .Require(Domain.Positive("rail voltage", railVolts))
            .Compute(() =>
                new Worked<decimal>(2m * railVolts, $"{Figures.Text(railVolts)} V / 0.5 = {Figures.Text(2m * railVolts)} V", Derating)
            );

    /// <summary>The voltage allowed at a temperature: rated up to 85 degrees, falling in a straight line to two thirds at 125
    /// degrees.</summary>
    public static Outcome<Worked<decimal>> CategoryVolts(decimal ratedVolts, decimal celsius) =>
        Domain
            .Require(Domain.Positive("rated voltage", ratedVolts), Domain.Within("temperature", celsius, -80m, 125m))
            .Compute(() =>
            {
                decimal share = celsius <= 85m ? 1m : 1m - ((celsius - 85m) / 120m);
                return new Worked<decimal>(
                    share * ratedVolts,
                    $"{Figures.Text(share, 4)} x {Figures.Text(ratedVolts)} V at {Figures.Text(celsius)} degrees",
                    Typical
                );
            });

    /// <summary>
    /// The reverse voltage borne for moments: 10 % of rated and at most 1 V to 25 degrees, 5 % and 0.5 V to 85, 1 % and 0.1 V to 125.
    /// Wet tantalum in a silver can bears almost none.
    /// </summary>
    public static Outcome<Worked<decimal>> ReverseVolts(decimal ratedVolts, decimal celsius) =>
        Domain
            .Require(Domain.Positive("rated voltage", ratedVolts), Domain.Within("temperature", celsius, -80m, 125m))
            .Compute(() =>
            {
                (decimal share, decimal most) = celsius switch
                {
                    <= 25m => (0.10m, 1m),
                    <= 85m => (0.05m, 0.5m),
                    _ => (0.01m, 0.1m),
                };
                decimal volts = Math.Min(share * ratedVolts, most);
                string working =
                    $"{Figures.Percent(share)} of {Figures.Text(ratedVolts)} V, at most {Figures.Text(most)} V = {Figures.Text(volts)} V";
                return new Worked<decimal>(volts, working, Typical)
                {
                    Remarks = ["for moments only; makers differ, some allow 3 % at 85 degrees"],
                };
            });
}
