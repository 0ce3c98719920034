using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Statistics;

namespace Ohmstead.Assessment.Reckoning.Statistics;

/// <summary>Whether two groups fail alike.</summary>
internal static class LogRankRule
{
    private static readonly ReckonInput First = ReckonInput.List("first", $"the items of one group: {Ages.FollowedForm}");
    private static readonly ReckonInput Second = ReckonInput.List("second", "the items of the other group");

    internal static ReckonRule Rule { get; } =
        new(
            "log-rank",
            "whether two groups of items that were followed fail alike",
            [First, Second],
            "first=6,6,6,6+,7,9+,10,10+,11+,13,16,17+,19+,20+,22,23,25+,32+,32+,34+,35+ "
                + "second=1,1,2,2,3,4,4,5,5,8,8,8,8,11,11,12,12,15,17,22,23",
            given =>
                Ages.Followed(given.List(First)).Is(out var first, out var reason)
                && Ages.Followed(given.List(Second)).Is(out var second, out reason)
                    ? LogRank.Compare(first, second).Then(Answer)
                    : Outcome<Reckoned>.Refused(reason)
        )
        {
            Formula = "(observed - expected)² / variance, one degree of freedom",
            Validity = "items followed from a known start; few failures make a weak test",
        };

    private static Reckoned Answer(LogRank test) =>
        new([
            Answers.Figure(
                "test statistic",
                (decimal)test.ChiSquare,
                ShownAs.Plain,
                $"{Text(test.ObservedInFirst)} failures in the first group, {Text(test.ExpectedInFirst)} expected if both fail alike",
                LogRank.Source
            ),
            Answers.Figure(
                "probability of such a difference if they fail alike",
                (decimal)test.Probability,
                ShownAs.Plain,
                "chi-square with one degree of freedom",
                LogRank.Source
            ),
        ]);

    private static string Text(double value) => ShownAs.Plain.Text((decimal)value);
}
