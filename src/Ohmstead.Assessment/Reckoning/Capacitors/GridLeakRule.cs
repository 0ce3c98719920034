using Ohmstead.Assessment.Reckoning.Basis;
using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Reckoning.Capacitors;

/// <summary>What a leaking coupling capacitor does.</summary>
internal static class GridLeakRule
{
    private static readonly ReckonInput Across = ReckonInput
        .Create("voltage", Dimension.Voltage, "V, across the capacitor")
        .Within(1m, 2000m);
    private static readonly ReckonInput Insulation = ReckonInput
        .Create("insulation", Dimension.Resistance, "Rins, the insulation of the capacitor")
        .Within(0m, 1e15m);
    private static readonly ReckonInput Grid = ReckonInput
        .Create("grid-leak", Dimension.Resistance, "Rg, the grid leak")
        .Within(100m, 100_000_000m);
    private static readonly ReckonInput Accepted = ReckonInput
        .Create("accepted", Dimension.Voltage, "how far it may be lifted: 0.1 V suits an output stage, a hundredth of the bias a small one")
        .Within(0.001m, 10m)
        .Usually("0.1V");

    internal static ReckonRule Rule { get; } =
        new(
            "grid-leak",
            "how far a leaking coupling capacitor lifts a grid, and the insulation it needs",
            [Across, Insulation, Grid, Accepted],
            "voltage=250V insulation=50M grid-leak=470k",
            given =>
                Answers.All(
                    Answers.Line(
                        "the grid is lifted by",
                        GridLeak.ShiftVolts(given[Across], given[Insulation], given[Grid]),
                        Dimension.Voltage
                    ),
                    Answers
                        .Line(
                            $"least insulation for {given.Text(Accepted)}",
                            GridLeak.LeastInsulationOhms(given[Across], given[Grid], given[Accepted]),
                            Dimension.Resistance
                        )
                        .Remarking("a stage biased at 1.5 V wants 15 mV, a hundredth of it; no standard gives such a limit")
                )
        )
        {
            Formula = "V Rg / (Rins + Rg)",
            Validity = "insulation measured at working voltage: a capacitance meter says nothing of it",
        };
}
