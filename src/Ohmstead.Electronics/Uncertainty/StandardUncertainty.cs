namespace Ohmstead.Electronics.Uncertainty;

/// <summary>From what is known of an error to its standard uncertainty (one standard deviation).</summary>
public static class StandardUncertainty
{
    /// <summary>Rectangular distributions: half width over the square root of three.</summary>
    public static Source RectangularSource { get; } = Source.FromMemory("JCGM 100:2008", "4.3.7");

    /// <summary>The half width of an evenly likely range, divided by sqrt(3).</summary>
    public static double Rectangular(double halfWidth) => halfWidth / Math.Sqrt(3);

    /// <summary>The half width of a triangular distribution, divided by sqrt(6).</summary>
    public static double Triangular(double halfWidth) => halfWidth / Math.Sqrt(6);

    /// <summary>The half width of a U-shaped distribution, such as a sine's, divided by sqrt(2).</summary>
    public static double UShaped(double halfWidth) => halfWidth / Math.Sqrt(2);

    /// <summary>The step of a display, divided by sqrt(12) (JCGM 100:2008, F.2.2.1).</summary>
    public static double OfResolution(double step) => step / Math.Sqrt(12);

    /// <summary>An expanded uncertainty from a certificate, divided by its coverage factor (JCGM 100:2008, 4.3.3).</summary>
    public static double OfExpanded(double expanded, double coverageFactor) => expanded / coverageFactor;

    /// <summary>The sample standard deviation of repeated readings, with n - 1; refused for fewer than two.</summary>
    public static Outcome<double> Deviation(IReadOnlyList<double> readings) =>
        Domain
            .Require(Domain.That(readings.Count >= 2, $"{Figures.Text(readings.Count)} readings, expected two or more"))
            .Compute(() =>
            {
                double mean = readings.Average();
                return Math.Sqrt(readings.Sum(r => (r - mean) * (r - mean)) / (readings.Count - 1));
            });

    /// <summary>The standard uncertainty of the mean of repeated readings, s / sqrt(n) (JCGM 100:2008, 4.2.3).</summary>
    public static Outcome<double> OfMean(IReadOnlyList<double> readings) => Deviation(readings).Then(s => s / Math.Sqrt(readings.Count));
}
