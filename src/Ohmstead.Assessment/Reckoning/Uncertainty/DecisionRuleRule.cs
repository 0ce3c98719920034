using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Electronics.Uncertainty;

namespace Ohmstead.Assessment.Reckoning.Uncertainty;

/// <summary>What a reading says of its limits.</summary>
internal static class DecisionRuleRule
{
    private static readonly ReckonInput Reading = ReckonInput.Create("reading", Dimension.Number, "the reading, as a plain number");
    private static readonly ReckonInput Expanded = ReckonInput.Create(
        "uncertainty",
        Dimension.Number,
        "U, its expanded uncertainty at k = 2"
    );
    private static readonly ReckonInput Low = ReckonInput.Create("low", Dimension.Number, "the lower limit").Optional();
    private static readonly ReckonInput High = ReckonInput.Create("high", Dimension.Number, "the upper limit").Optional();

    internal static ReckonRule Rule { get; } =
        new(
            "decision",
            "what a reading says of its limits once its uncertainty is counted, by each decision rule",
            [Reading, Expanded, Low, High],
            "reading=0.42 uncertainty=0.03678 high=0.45",
            Work
        )
        {
            Formula = "accepted between the limits less w = share x U; probability by the normal distribution",
            Validity = "all in one unit; low or high is needed",
        };

    private static Outcome<Reckoned> Work(GivenInputs given)
    {
        var (low, high) = (given.Has(Low) ? given[Low] : (decimal?)null, given.Has(High) ? given[High] : (decimal?)null);
        return Answers.All([
            ConformityStatement
                .Decide(given[Reading], given[Expanded], low, high, DecisionRule.Guarded)
                .Then(found =>
                    Answers.Figure(
                        "inside with probability",
                        (decimal)found.Probability,
                        ShownAs.Plain,
                        found.Arithmetic,
                        ConformanceProbability.Source
                    )
                ),
            .. DecisionRule.All.Select(rule =>
                ConformityStatement.Decide(given[Reading], given[Expanded], low, high, rule).Then(found => Line(rule, found))
            ),
        ]);
    }

    private static ReckonedLine Line(DecisionRule rule, ConformityStatement found) =>
        new(rule.Name, $"{Words(found.Conformity)}: {(found.Accepted ? "accepted" : "not accepted")}", found.Arithmetic, rule.Source)
        {
            Remarks = [rule.Meaning],
        };

    private static string Words(Conformity conformity) =>
        conformity switch
        {
            Conformity.Inside => "inside",
            Conformity.ProbablyInside => "inside, but not proved",
            Conformity.ProbablyOutside => "outside, but not proved",
            _ => "outside",
        };
}
