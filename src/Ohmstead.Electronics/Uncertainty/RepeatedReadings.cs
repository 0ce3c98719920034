namespace Ohmstead.Electronics.Uncertainty;

/// <summary>Quantities read together several times: their means, the uncertainty of the means and how they move together.</summary>
/// <remarks>JCGM 100:2008, 4.2.3 and 5.2.3. Readings taken at the same time are correlated; a result that ignores it has a wrong
/// uncertainty.</remarks>
public sealed class RepeatedReadings
{
    private readonly IReadOnlyList<IReadOnlyList<double>> series;

    private RepeatedReadings(IReadOnlyList<IReadOnlyList<double>> series) => this.series = series;

    /// <summary>One list for each quantity, all of the same length of two or more.</summary>
    public static Outcome<RepeatedReadings> Evaluate(IReadOnlyList<IReadOnlyList<double>> series) =>
        Domain
            .Require(
                Domain.That(series.Count > 0, "no quantity is given"),
                Domain.That(series.All(s => s.Count == series[0].Count), "the quantities were not read equally often"),
                Domain.That(series.All(s => s.Count >= 2), "fewer than two readings")
            )
            .Compute(() => new RepeatedReadings(series));

    /// <summary>The mean of a quantity.</summary>
    public double Mean(int quantity) => series[quantity].Average();

    /// <summary>The covariance of the means of two quantities; with itself, the variance of its mean.</summary>
    public double CovarianceOfMeans(int first, int second)
    {
        (double a, double b) = (Mean(first), Mean(second));
        int n = series[first].Count;
        return series[first].Zip(series[second], (x, y) => (x - a) * (y - b)).Sum() / ((double)n * (n - 1));
    }

    /// <summary>The standard uncertainty of the mean of a quantity.</summary>
    public double UncertaintyOfMean(int quantity) => Math.Sqrt(CovarianceOfMeans(quantity, quantity));

    /// <summary>The correlation coefficient of two quantities.</summary>
    public double CorrelationOf(int first, int second) =>
        CovarianceOfMeans(first, second) / (UncertaintyOfMean(first) * UncertaintyOfMean(second));

    /// <summary>The covariance of two results that move with the quantities by these sensitivities, sum a_i b_j cov_ij.</summary>
    public double Covariance(IReadOnlyList<double> firstSensitivities, IReadOnlyList<double> secondSensitivities)
    {
        double sum = 0;
        for (int i = 0; i < series.Count; i++)
        {
            for (int j = 0; j < series.Count; j++)
            {
                sum += firstSensitivities[i] * secondSensitivities[j] * CovarianceOfMeans(i, j);
            }
        }

        return sum;
    }
}
