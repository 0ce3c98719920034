namespace Ohmstead.Electronics.Capacitors;

/// <summary>How class 2 ceramic loses capacitance with the logarithm of time since it was last hot.</summary>
/// <remarks>
/// Class 1 does not age. Heating above the Curie point (soldering does it) starts the clock again; wait 24 to 48 hours before judging.
/// </remarks>
public static class CeramicAgeing
{
    private static readonly Source Rate = Source.Published(
        "EIA-198-1-F, as quoted in makers' ageing notes (Johanson, NIC, Holy Stone)",
        "1.1.2"
    );

    /// <summary>Class 1, which does not age.</summary>
    public static AgeingRate C0G { get; } = new("C0G", 0m, 0m, 0m);

    /// <summary>X7R.</summary>
    public static AgeingRate X7R { get; } = new("X7R", 0.025m, 0.01m, 0.04m);

    /// <summary>Z5U.</summary>
    public static AgeingRate Z5U { get; } = new("Z5U", 0.07m, 0.04m, 0.07m);

    /// <summary>Y5V.</summary>
    public static AgeingRate Y5V { get; } = new("Y5V", 0.07m, 0.06m, 0.10m);

    /// <summary>The rates makers give, per decade of hours.</summary>
    public static IReadOnlyList<AgeingRate> Rates { get; } = [C0G, X7R, Z5U, Y5V];

    /// <summary>The share of the one-hour capacitance left, 1 - k log10(t / 1 h).</summary>
    /// <param name="ratePerDecade">The loss per decade as a fraction (0.025 for X7R).</param>
    /// <param name="hours">Hours since the last heat; one or more.</param>
    public static Outcome<Worked<double>> ShareLeft(double ratePerDecade, double hours) =>
        Checked(ratePerDecade, hours)
            .Compute(() =>
            {
                double decades = Math.Log10(hours);
                double share = Math.Max(0, 1 - (ratePerDecade * decades));
                return new Worked<double>(
                    share,
                    $"1 - {Figures.Text(ratePerDecade)} x {Figures.Text(decades, 5)} decades = {Figures.Text(share, 4)}",
                    Rate
                );
            });

    /// <summary>The share left by the multiplicative form, (1 - k)^log10(t / 1 h); within about 1 % of the plain form over 30 years from
    /// 1000 h.</summary>
    public static Outcome<Worked<double>> ShareLeftMultiplicative(double ratePerDecade, double hours) =>
        Checked(ratePerDecade, hours)
            .Compute(() =>
            {
                double decades = Math.Log10(hours);
                double share = Math.Pow(1 - ratePerDecade, decades);
                return new Worked<double>(
                    share,
                    $"(1 - {Figures.Text(ratePerDecade)})^{Figures.Text(decades, 5)} decades = {Figures.Text(share, 4)}",
                    Rate
                );
            });

    private static Domain Checked(double ratePerDecade, double hours) =>
        Domain.Require(
            Domain.Within("ageing rate per decade", ratePerDecade, 0, 0.2),
            Domain.Within("hours since the last heat", hours, 1, 1e9)
        );
}

/// <summary>The ageing rate of a ceramic.</summary>
/// <param name="Ceramic">Its temperature code.</param>
/// <param name="Usual">The usual loss per decade, as a fraction.</param>
/// <param name="Low">The least rate makers give.</param>
/// <param name="High">The greatest rate makers give.</param>
public sealed record AgeingRate(string Ceramic, decimal Usual, decimal Low, decimal High);
