using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Electronics.Uncertainty;

namespace Ohmstead.Assessment.Reckoning.Uncertainty;

/// <summary>Several uncertainties put together.</summary>
internal static class BudgetRule
{
    private static readonly ReckonInput Components = ReckonInput.List(
        "components",
        "standard uncertainties: u, or u*sensitivity, or u@degrees of freedom"
    );
    private static readonly ReckonInput Correlated = ReckonInput
        .Create("correlation", Dimension.Number, "of the first two components, -1 to 1")
        .Optional();

    internal static ReckonRule Rule { get; } =
        new(
            "budget",
            "several standard uncertainties put together: combined, expanded, degrees of freedom, coverage factor",
            [Components, Correlated, SharedInputs.Confidence],
            "components=3,4 confidence=95%",
            given =>
                Read(given.List(Components)).Is(out var components, out var reason)
                    ? Work(
                        new UncertaintyBudget(components)
                        {
                            Correlations = given.Has(Correlated) ? [new Correlation(0, 1, given.Double(Correlated))] : [],
                        },
                        given
                    )
                    : Outcome<Reckoned>.Refused(reason)
        )
        {
            Formula = "u = sqrt(sum (c u)² + 2 c1 c2 u1 u2 r); nu = u^4 / sum(u_i^4 / nu_i); U = k u",
            Validity = "small uncertainties; without degrees of freedom a component counts as well known",
        };

    private static Outcome<Reckoned> Work(UncertaintyBudget budget, GivenInputs given)
    {
        var lines = new List<Outcome<ReckonedLine>>
        {
            Answers.Line(
                "combined standard uncertainty",
                budget.Combined(),
                ShownAs.Plain,
                "root sum of squares" + (budget.Correlations.Count > 0 ? " with the correlation" : string.Empty),
                UncertaintyBudget.Source
            ),
            Answers.Line("expanded uncertainty, k = 2", budget.Expanded(), ShownAs.Plain),
        };
        if (budget.EffectiveDegreesOfFreedom().Is(out var degrees, out _) && budget.Combined().Is(out var combined, out _))
        {
            var finite = double.IsFinite(degrees);
            lines.Add(
                finite
                    ? Answers.Line(
                        "effective degrees of freedom",
                        Outcome<double>.From(degrees),
                        ShownAs.Plain,
                        "Welch and Satterthwaite",
                        UncertaintyBudget.Source
                    )
                    : Answers.Said(
                        "effective degrees of freedom",
                        "infinite",
                        "every component is taken as well known",
                        UncertaintyBudget.Source
                    )
            );
            lines.Add(
                budget
                    .CoverageFactorFor(given.Double(SharedInputs.Confidence))
                    .Then(k =>
                        Answers.Figure(
                            $"coverage factor for {given.Text(SharedInputs.Confidence)}",
                            (decimal)k,
                            ShownAs.Plain,
                            finite ? "Student's t, degrees rounded down" : "normal distribution",
                            UncertaintyBudget.Source
                        )
                    )
            );
            lines.Add(
                budget
                    .CoverageFactorFor(given.Double(SharedInputs.Confidence))
                    .Then(k =>
                        Answers.Figure(
                            $"expanded uncertainty for {given.Text(SharedInputs.Confidence)}",
                            (decimal)(k * combined),
                            ShownAs.Plain,
                            $"{ShownAs.Plain.Text((decimal)k)} x {ShownAs.Plain.Text((decimal)combined)}",
                            UncertaintyBudget.Source
                        )
                    )
            );
        }

        return Answers.All(lines);
    }

    private static Outcome<IReadOnlyList<UncertaintyComponent>> Read(IReadOnlyList<string> entries)
    {
        var components = new List<UncertaintyComponent>(entries.Count);
        foreach (var entry in entries)
        {
            var (head, degrees) = Cut(entry, '@', double.PositiveInfinity);
            var (u, sensitivity) = head is null ? (null, null) : Cut(head, '*', 1);
            if (u is null || sensitivity is not { } times || degrees is not { } freedom || Number(u) is not { } value)
            {
                return Outcome<IReadOnlyList<UncertaintyComponent>>.Refused(
                    $"'{entry}' is no component, expected such as 0.5, 0.5*2 or 0.5@9"
                );
            }

            components.Add(new UncertaintyComponent(entry, value, times, freedom));
        }

        return Outcome<IReadOnlyList<UncertaintyComponent>>.From(components);
    }

    private static (string? Head, double? Tail) Cut(string text, char mark, double otherwise) =>
        text.IndexOf(mark, StringComparison.Ordinal) is >= 0 and var at ? (text[..at], Number(text[(at + 1)..])) : (text, otherwise);

    private static double? Number(string text) =>
        Answers.Parsed(text, Dimension.Number).Is(out var number, out _) ? (double)number.Value : null;
}
