using MathNet.Numerics.Distributions;

namespace Ohmstead.Electronics.Statistics;

/// <summary>Whether two groups fail alike.</summary>
/// <param name="ChiSquare">The test statistic, with one degree of freedom.</param>
/// <param name="Probability">How likely a difference this large is when the groups fail alike.</param>
/// <param name="ExpectedInFirst">The failures expected in the first group if they do.</param>
/// <param name="ObservedInFirst">The failures seen in the first group.</param>
public sealed record LogRank(double ChiSquare, double Probability, double ExpectedInFirst, int ObservedInFirst)
{
    /// <summary>Where the test comes from.</summary>
    public static Source Source { get; } = Source.FromMemory("Mantel, Cancer Chemotherapy Reports 50 (1966) 163", "log-rank test");

    /// <summary>The test of two groups of followed items.</summary>
    public static Outcome<LogRank> Compare(IReadOnlyList<FollowedItem> first, IReadOnlyList<FollowedItem> second)
    {
        IReadOnlyList<FollowedItem> all = [.. first, .. second];
        return SurvivalCurve
            .Check(all)
            .Flatten(() =>
            {
                double expected = 0,
                    variance = 0;
                foreach (double age in all.Where(i => i.Failed).Select(i => i.Until).Distinct())
                {
                    double atRisk = AtRisk(all, age),
                        inFirst = AtRisk(first, age);
                    double failures = all.Count(i => i.Failed && i.Until == age);
                    expected += failures * inFirst / atRisk;
                    variance +=
                        atRisk > 1 ? failures * inFirst * (atRisk - inFirst) * (atRisk - failures) / (atRisk * atRisk * (atRisk - 1)) : 0;
                }

                int observed = first.Count(i => i.Failed);
                if (variance <= 0)
                {
                    return Outcome<LogRank>.Refused("the groups were never under observation together when something failed");
                }

                double chiSquare = (observed - expected) * (observed - expected) / variance;
                return Outcome<LogRank>.From(new LogRank(chiSquare, 1 - ChiSquared.CDF(1, chiSquare), expected, observed));
            });
    }

    private static int AtRisk(IReadOnlyList<FollowedItem> items, double age) => items.Count(i => i.From < age && i.Until >= age);
}
