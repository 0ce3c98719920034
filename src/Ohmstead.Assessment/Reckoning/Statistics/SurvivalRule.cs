using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Statistics;

namespace Ohmstead.Assessment.Reckoning.Statistics;

/// <summary>The product-limit curve.</summary>
internal static class SurvivalRule
{
    private static readonly ReckonInput Items = ReckonInput.List("ages", $"the items followed, in one unit: {Ages.FollowedForm}");

    internal static ReckonRule Rule { get; } =
        new(
            "survival",
            "the share still good at each age, from items that were followed until they failed",
            [Items],
            "ages=9,13,13+,18,23,28+,31,34,45+,48,161+",
            given => Ages.Followed(given.List(Items)).Is(out var items, out var reason) ? Work(items) : Outcome<Reckoned>.Refused(reason)
        )
        {
            Formula = "product of (1 - failures / at risk); error by Greenwood",
            Validity = "ages at failure must be known: items found bad at an inspection belong to calculate ages-at-failure",
        };

    private static Outcome<Reckoned> Work(IReadOnlyList<FollowedItem> items) =>
        SurvivalCurve
            .Estimate(items)
            .Then(curve => new Reckoned([
                .. curve.Steps.Select(step =>
                    Answers.Figure(
                        $"good after {Text(step.Age)}",
                        (decimal)step.Survival,
                        ShownAs.Plain,
                        Working(step),
                        SurvivalCurve.Source
                    )
                ),
                curve.Median is { } median
                    ? Answers.Figure(
                        "median, the first age at which half or fewer are good",
                        (decimal)median,
                        ShownAs.Plain,
                        "read from the curve",
                        SurvivalCurve.Source
                    )
                    : new ReckonedLine("median", "not reached", "more than half were still good at the last failure", SurvivalCurve.Source),
            ]));

    private static string Working(SurvivalStep step) =>
        $"{Text(step.Failures)} of {Text(step.AtRisk)} at risk failed"
        + (step.StandardError is { } error ? $"; standard error {Text(error)}" : string.Empty);

    private static string Text(double value) => ShownAs.Plain.Text((decimal)value);
}
