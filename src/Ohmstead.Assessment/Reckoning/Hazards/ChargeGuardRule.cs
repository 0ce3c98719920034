using Ohmstead.Electronics.Hazards;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Reckoning.Hazards;

/// <summary>The resistor that guards a primary lithium cell.</summary>
internal static class ChargeGuardRule
{
    private static readonly ReckonInput Supply = ReckonInput.Of("supply", Dimension.Voltage, "the highest voltage of the rail that the cell backs up").Within(3.1m, 50m);
    private static readonly ReckonInput Cell = ReckonInput.Word("cell", "the type of cell, with spaces in quotes", [.. LithiumGuard.All.Select(known => known.Cell)]).Usually("CR2032");

    internal static ReckonRule Rule { get; } = new(
        "charge-guard", "the least resistor that limits the current into a primary lithium cell when its diode has failed short",
        [Supply, Cell],
        "supply=5V cell=CR2032",
        given => Answers.All(Answers.Line(
                "least resistor beside the diode", LithiumGuard.LeastOhms(given[Supply], LithiumGuard.All.First(known => known.Cell == given.Text(Cell)).Amperes), Dimension.Resistance))
            .WithCautions("lithium-cell"))
    {
        Formula = "R = (V - 3.0 V) / largest abnormal charging current",
        Validity = "primary cells of lithium manganese dioxide; two diodes in series are the other way",
    };
}
