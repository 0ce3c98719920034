using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Reckoning.Capacitors;

/// <summary>What a leaking coupling capacitor does.</summary>
internal static class GridLeakRule
{
    private static readonly ReckonInput Across = ReckonInput.Of("voltage", Dimension.Voltage, "V, across the capacitor");
    private static readonly ReckonInput Insulation = ReckonInput.Of("insulation", Dimension.Resistance, "Rins, the insulation of the capacitor");
    private static readonly ReckonInput Grid = ReckonInput.Of("grid-leak", Dimension.Resistance, "Rg, the grid leak");

    internal static ReckonRule Rule { get; } = new(
        "grid-leak", "how far a leaking coupling capacitor lifts a grid, and the insulation it needs",
        [Across, Insulation, Grid],
        "voltage=250V insulation=50M grid-leak=470k",
        given => Answers.All(
            Answers.Line("the grid is lifted by", GridLeak.ShiftVolts(given[Across], given[Insulation], given[Grid]), Dimension.Voltage),
            Answers.Line($"least insulation for {Answers.Text(GridLeak.AcceptedVolts, Dimension.Voltage)}", GridLeak.LeastInsulationOhms(given[Across], given[Grid]), Dimension.Resistance)))
    {
        Formula = "V Rg / (Rins + Rg)",
        Validity = "insulation measured at working voltage: a capacitance meter says nothing of it",
    };
}
