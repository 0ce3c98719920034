using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics.Parts;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Reckoning.Hazards;

/// <summary>The resistor that guards a primary lithium cell.</summary>
internal static class ChargeGuardRule
{
    private static readonly ReckonInput Supply = ReckonInput
        .Create("supply", Dimension.Voltage, "the highest voltage of the rail that the cell backs up")
        .Within(3.1m, 50m);
    private static readonly ReckonInput Cell = ReckonInput.Create("cell", Dimension.Voltage, "the cell").Within(2m, 4m).Usually("3V");
    private static readonly ReckonInput Largest = ReckonInput
        .Create(
            "largest",
            Dimension.Current,
            "the largest abnormal charging current of its sheet: 25 mA for CR2032, CR2025 and CR2016, 10 mA and 5 mA for smaller cells"
        )
        .Within(0.0001m, 0.025m);

    internal static ReckonRule Rule { get; } =
        new(
            "charge-guard",
            "the least resistor that limits the current into a primary lithium cell when its diode has failed short",
            [Supply, Cell, Largest],
            "supply=5V largest=25mA",
            given =>
                Answers
                    .All(
                        Answers.Line(
                            "least resistor beside the diode",
                            LithiumBackup.LeastOhms(given[Supply], given[Cell], given[Largest]),
                            Dimension.Resistance
                        )
                    )
                    .WithCautions("lithium-cell")
        )
        {
            Formula = "R = (V - V of the cell) / largest abnormal charging current",
            Validity = "primary cells of lithium manganese dioxide; two diodes in series are the other way",
        };
}
