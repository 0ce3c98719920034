using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Electronics.Statistics;

namespace Ohmstead.Assessment.Reckoning.Statistics;

/// <summary>The share failed when ages at failure are known as ranges.</summary>
internal static class AgesAtFailureRule
{
    private static readonly ReckonInput Items = ReckonInput.List("ages", $"in one unit: {Ages.LookedForm}");
    private static readonly ReckonInput By = ReckonInput
        .Create("by", Dimension.Number, "an age, to be told the share failed by it")
        .Optional();

    internal static ReckonRule Rule { get; } =
        new(
            "ages-at-failure",
            "the share failed by age when failures are known to lie between two inspections only",
            [Items, By],
            "ages=..10,5..10,10+,20+,10..20 by=10",
            given =>
                Ages.Looked(given.List(Items)).Is(out var items, out var reason)
                    ? IntervalCensoredEstimate.Compute(items).Then(found => Answer(found, given))
                    : Outcome<Reckoned>.Refused(reason)
        )
        {
            Formula = "self-consistent estimate of Turnbull",
            Validity = "where inside a range the failures lie is not known",
        };

    private static Reckoned Answer(IntervalCensoredEstimate found, GivenInputs given) =>
        new([
            .. found.Masses.Select(mass =>
                Answers.Figure(
                    Range(mass),
                    (decimal)mass.Probability,
                    ShownAs.Percent,
                    $"settled after {ShownAs.Plain.Text(found.Rounds)} rounds",
                    IntervalCensoredEstimate.Source
                )
            ),
            .. given.Has(By)
                ?
                [
                    Answers.Figure(
                        $"failed by {given.Text(By)}, at least",
                        (decimal)found.ShareFailedBy(given.Double(By)),
                        ShownAs.Percent,
                        "what is certain by then",
                        IntervalCensoredEstimate.Source
                    ),
                ]
                : Array.Empty<ReckonedLine>(),
        ]);

    private static string Range(FailureMass mass) =>
        double.IsPositiveInfinity(mass.By) ? $"fail after {Text(mass.After)}"
        : mass.After == mass.By ? $"fail at {Text(mass.By)}"
        : $"fail after {Text(mass.After)} and by {Text(mass.By)}";

    private static string Text(double value) => ShownAs.Plain.Text((decimal)value);
}
