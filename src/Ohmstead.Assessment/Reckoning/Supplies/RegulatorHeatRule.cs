using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Electronics.Supplies;

namespace Ohmstead.Assessment.Reckoning.Supplies;

/// <summary>What a series regulator makes of its input.</summary>
internal static class RegulatorHeatRule
{
    private static readonly ReckonInput Input = ReckonInput
        .Create("input", Dimension.Voltage, "Vin, at the regulator")
        .Within(-1000m, 1000m);
    private static readonly ReckonInput Output = ReckonInput.Create("output", Dimension.Voltage, "Vout").Within(-1000m, 1000m);
    private static readonly ReckonInput Type = ReckonInput
        .Word("type", "the regulator, to be told its headroom", [.. LinearRegulator.All.Select(known => known.Part)])
        .Optional();
    private static readonly ReckonInput Ripple = ReckonInput
        .Create("ripple", Dimension.Voltage, "the ripple at its input, peak to peak")
        .Within(0m, 1000m)
        .Usually("0V");

    internal static ReckonRule Rule { get; } =
        new(
            "regulator-heat",
            "the heat a series regulator makes, and what is left of its input at the bottom of the ripple",
            [Input, Output, SharedInputs.Current, Type, Ripple],
            "input=12V output=5V current=0.5A type=7805C ripple=2V",
            given =>
                Against(given) is { } reason
                    ? Outcome<Reckoned>.Refused(reason)
                    : Answers.All([
                        Answers.Line(
                            "heat",
                            LinearRegulator.DissipationWatts(given[Input], given[Output], given[SharedInputs.Current]),
                            Dimension.Power
                        ),
                        .. given.Has(Type) && LinearRegulator.Find(given.Text(Type)) is { } known
                            ? [Answers.Line("headroom", known.HeadroomVolts(given[Input], given[Ripple]), Dimension.Voltage)]
                            : Array.Empty<Outcome<ReckonedLine>>(),
                    ])
        )
        {
            Formula = "P = (Vin - Vout) I; headroom = Vin - ripple / 2 - least input",
            Validity = "headroom under 0 V means that the output dips with each cycle; the output has the sign of the input and is less",
        };

    private static string? Against(GivenInputs given) =>
        given.Has(Type)
        && LinearRegulator.Find(given.Text(Type)) is { } known
        && (given[Output] < known.LowVoltsOver || given[Output] > known.HighVoltsOver)
            ? $"output: a {known.Part} gives {Answers.Text(known.LowVoltsOver, Dimension.Voltage)} to "
                + $"{Answers.Text(known.HighVoltsOver, Dimension.Voltage)}, not {given.Text(Output)}: with another output say no type"
            : null;
}
