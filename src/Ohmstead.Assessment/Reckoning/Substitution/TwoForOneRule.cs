using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Electronics.Substitution;

namespace Ohmstead.Assessment.Reckoning.Substitution;

/// <summary>Two parts in the place of one.</summary>
internal static class TwoForOneRule
{
    private static readonly ReckonInput Rated = SharedInputs.RatedVoltage.Within(1m, 10_000m);

    internal static ReckonRule Rule { get; } =
        new(
            "two-for-one",
            "what two equal capacitors make in series and, polar ones, back to back",
            [SharedInputs.Capacitance, Rated],
            "capacitance=100uF rated-voltage=350V",
            given =>
                Answers.All(
                    Combinations.InSeries(given[SharedInputs.Capacitance], given[Rated]).Then(made => Line("in series", made)),
                    Combinations.BackToBack(given[SharedInputs.Capacitance], given[Rated]).Then(made => Line("back to back, bipolar", made))
                )
        )
        {
            Formula = "C / 2 at 2 Ur; C / 2 at Ur",
        };

    private static ReckonedLine Line(string what, Worked<(decimal Farads, decimal Volts)> made) =>
        new(
            what,
            $"{Answers.Text(made.Value.Farads, Dimension.Capacitance)} {Answers.Text(made.Value.Volts, Dimension.Voltage)}",
            made.Arithmetic,
            made.Source
        )
        {
            Remarks = made.Remarks,
        };
}
