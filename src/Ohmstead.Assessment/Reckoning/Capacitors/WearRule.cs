using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Reckoning.Capacitors;

/// <summary>How much of the allowed wear is used, by every end-of-life criterion known.</summary>
internal static class WearRule
{
    private static readonly ReckonInput Change = ReckonInput
        .Create("change", Dimension.Ratio, "the change of capacitance, -25% for a quarter lost")
        .Within(-1m, 100m)
        .Optional();
    private static readonly ReckonInput Loss = ReckonInput
        .Create("loss", Dimension.Number, "dissipation factor or ESR over its limit (or first value)")
        .Within(0m, 1e6m)
        .Optional();
    private static readonly ReckonInput Impedance = ReckonInput
        .Create("impedance", Dimension.Number, "impedance over its limit (or first value)")
        .Within(0m, 1e6m)
        .Optional();
    private static readonly ReckonInput Leakage = ReckonInput
        .Create("leakage", Dimension.Number, "leakage over its limit")
        .Within(0m, 1e6m)
        .Optional();

    internal static ReckonRule Rule { get; } =
        new(
            "wear",
            "how much of what a worn electrolytic may change is used, by each end-of-life criterion known",
            [Change, Loss, Impedance, Leakage],
            "change=-25% loss=1.5",
            Work
        )
        {
            Formula = "share used = change / change allowed",
            Validity =
                "wet aluminium electrolytics; at least one of change, loss, impedance and leakage; the part's own data sheet comes first",
        };

    private static Outcome<Reckoned> Work(GivenInputs given)
    {
        ReckonedLine[] lines =
        [
            .. EndOfLifeCriteria.All.SelectMany(criteria =>
                criteria
                    .Judge(Known(given, Change), Known(given, Loss), Known(given, Impedance), Known(given, Leakage))
                    .Select(wear => Line(criteria, wear))
            ),
        ];
        return lines.Length > 0
            ? Outcome<Reckoned>.From(new Reckoned(lines))
            : Outcome<Reckoned>.Refused("wear needs change or loss or impedance or leakage");
    }

    private static decimal? Known(GivenInputs given, ReckonInput input) => given.Has(input) ? given[input] : null;

    private static ReckonedLine Line(EndOfLife criteria, Wear wear) =>
        Answers.Figure($"{wear.What} used, {criteria.Test}", wear.ShareUsed, ShownAs.Percent, wear.Arithmetic, criteria.Source) with
        {
            Remarks =
                wear.Exceeded ? ["beyond the criterion"]
                : wear.WorthWatching ? ["inside, and worth watching"]
                : [],
        };
}
