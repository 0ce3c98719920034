using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics;
using Ohmstead.Electronics.PreferredValues;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Reckoning.Preferred;

/// <summary>The neighbours of a value in the preferred series.</summary>
internal static class PreferredValueRule
{
    private static readonly ReckonInput Resistance = SharedInputs.Resistance.Optional();
    private static readonly ReckonInput Capacitance = SharedInputs.Capacitance.Optional();

    internal static ReckonRule Rule { get; } =
        new(
            "preferred-value",
            "the preferred values around a value, series by series, and what is made today for an old capacitance",
            [Resistance, Capacitance],
            "capacitance=8uF",
            Work
        )
        {
            Formula = "10^(n/m), rounded, with the exceptions of IEC 60063",
            Validity = "resistance or capacitance is needed; a value outside a series is a hint and no fault",
        };

    private static Source Series => new("IEC 60063:2015", null, SourceBasis.Memory);

    private static Outcome<Reckoned> Work(GivenInputs given)
    {
        if (!given.Has(Resistance) && !given.Has(Capacitance))
        {
            return Outcome<Reckoned>.Refused("preferred-value needs resistance or capacitance");
        }

        var value = given.Has(Resistance)
            ? new Quantity(given[Resistance], Dimension.Resistance)
            : new Quantity(given[Capacitance], Dimension.Capacitance);
        if (value.Value <= 0m)
        {
            return Outcome<Reckoned>.Refused($"{QuantityText.Format(value)} has no preferred value, expected above 0");
        }

        return Answers.All([
            .. ESeries
                .All.Select(series => (series, series.Neighbours(value)))
                .Where(row => row.Item2 is not null)
                .Select(row => Line(row.series, row.Item2!.Value)),
            .. given.Has(Capacitance)
                ? LegacyCapacitances
                    .Replace(value)
                    .Select(today =>
                        Outcome<ReckonedLine>.From(
                            Answers.Figure(
                                "made today",
                                today.Value.Value,
                                Dimension.Capacitance,
                                $"{Answers.Text(today.Deviation, ShownAs.Percent)} off",
                                Answers.Practice("values for old capacitances")
                            )
                        )
                    )
                : [],
        ]);
    }

    private static Outcome<ReckonedLine> Line(ESeries series, PreferredNeighbours near) =>
        near.Below == near.Above
            ? Answers.Said(
                series.Name,
                $"{QuantityText.Format(near.Nearest)} is in the series",
                $"{Answers.Text(series.Count, ShownAs.Plain)} values a decade",
                Series
            )
            : Answers.Said(
                series.Name,
                $"{QuantityText.Format(near.Below)} or {QuantityText.Format(near.Above)}, nearest {QuantityText.Format(near.Nearest)}",
                $"{Answers.Text(series.Count, ShownAs.Plain)} values a decade",
                Series
            );
}
