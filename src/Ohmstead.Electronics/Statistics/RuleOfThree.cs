namespace Ohmstead.Electronics.Statistics;

/// <summary>What no failure in n says: the share is under 1 - (1 - confidence)^(1/n), at 95 % about 3/n. One-sided.</summary>
public static class RuleOfThree
{
    /// <summary>Where it comes from.</summary>
    public static Source Source { get; } = Source.Practice("binomial probability of no failure");

    /// <summary>The one-sided upper limit of the share, exact.</summary>
    public static Outcome<Worked<double>> UpperLimit(int looked, double confidence = 0.95) =>
        Domain
            .Require(
                Domain.That(looked >= 1, "nothing was looked at: there is no limit"),
                Domain.Within("confidence", confidence, 0.5, 0.9999)
            )
            .Compute(() =>
            {
                double limit = 1 - Math.Pow(1 - confidence, 1.0 / looked);
                string working =
                    $"1 - {Figures.Text(1 - confidence)}^(1/{Figures.Text(looked)}) = {Figures.Text(limit, 4)}, about "
                    + $"3/{Figures.Text(looked)} = {Figures.Text(3.0 / looked, 4)}";
                return new Worked<double>(limit, working, Source) { Remarks = ["one-sided"] };
            });
}
