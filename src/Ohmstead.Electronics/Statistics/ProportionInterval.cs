using MathNet.Numerics.Distributions;

namespace Ohmstead.Electronics.Statistics;

/// <summary>How far a share of bad parts may be off when few were looked at.</summary>
/// <remarks>
/// Supposes independent parts. Boards are clusters: twenty parts of one board are not twenty independent parts, so the number of boards
/// belongs beside the number of parts.
/// </remarks>
public static class ProportionInterval
{
    /// <summary>Where the formulas and their published cases come from.</summary>
    public static Source Source { get; } = Source.FromMemory("Newcombe, Statistics in Medicine 17 (1998) 857-872", "methods 3 to 5");

    /// <summary>The score interval of Wilson: the one to use by default.</summary>
    public static Outcome<ConfidenceInterval> Wilson(int bad, int looked, double confidence = 0.95) =>
        Checked(bad, looked, confidence)
            .Compute(() =>
            {
                (double n, double p, double z) = (looked, (double)bad / looked, Z(confidence));
                double scale = 1 + (z * z / n);
                double centre = (p + (z * z / (2 * n))) / scale;
                double half = z * Math.Sqrt((p * (1 - p) / n) + (z * z / (4 * n * n))) / scale;
                return Clamped(bad, looked, centre - half, centre + half, confidence);
            });

    /// <summary>Wilson's interval with a continuity correction: wider, for when too narrow would be worse.</summary>
    public static Outcome<ConfidenceInterval> WilsonCorrected(int bad, int looked, double confidence = 0.95) =>
        Checked(bad, looked, confidence)
            .Compute(() =>
            {
                (double n, double p, double z) = (looked, (double)bad / looked, Z(confidence));
                double divisor = 2 * (n + (z * z));
                double middle = (2 * n * p) + (z * z);
                double low = (middle - 1 - (z * Math.Sqrt(Math.Max(0, (z * z) - 2 - (1 / n) + (4 * p * ((n * (1 - p)) + 1)))))) / divisor;
                double high = (middle + 1 + (z * Math.Sqrt(Math.Max(0, (z * z) + 2 - (1 / n) + (4 * p * ((n * (1 - p)) - 1)))))) / divisor;
                return Clamped(bad, looked, low, high, confidence);
            });

    /// <summary>The exact interval of Clopper and Pearson: never too narrow, often too wide.</summary>
    public static Outcome<ConfidenceInterval> ClopperPearson(int bad, int looked, double confidence = 0.95) =>
        Checked(bad, looked, confidence)
            .Compute(() =>
            {
                double tail = (1 - confidence) / 2;
                double low = bad == 0 ? 0 : Beta.InvCDF(bad, looked - bad + 1, tail);
                double high = bad == looked ? 1 : Beta.InvCDF(bad + 1, looked - bad, 1 - tail);
                return Clamped(bad, looked, low, high, confidence);
            });

    private static double Z(double confidence) => Normal.InvCDF(0, 1, (1 + confidence) / 2);

    // None bad must give exactly 0 and all bad exactly 1, whatever the last digit of the formulas does.
    private static ConfidenceInterval Clamped(int bad, int looked, double low, double high, double confidence) =>
        new(bad == 0 ? 0 : Math.Clamp(low, 0, 1), bad == looked ? 1 : Math.Clamp(high, 0, 1), confidence);

    private static Domain Checked(int bad, int looked, double confidence) =>
        Domain.Require(
            Domain.That(looked >= 1, "nothing was looked at: there is no share and no interval"),
            Domain.That(bad >= 0 && bad <= looked, $"{Figures.Text(bad)} bad of {Figures.Text(looked)} cannot be"),
            Domain.Within("confidence", confidence, 0.5, 0.9999)
        );
}
