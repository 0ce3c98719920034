namespace Ohmstead.Electronics.Hazards;

/// <summary>The resistor that still limits the current into a primary lithium cell when the diode before it has failed.</summary>
/// <remarks>A diode alone is no guard: it fails short. Two diodes, or a diode and this resistor. See <see cref="SafetyNotice.Defer"/>.</remarks>
public static class LithiumGuard
{
    private static readonly Source Maker = Source.Published("Renata designer's guide, primary lithium cells", "pages 52 and 53, abnormal charging current");

    /// <summary>The nominal voltage of a lithium manganese dioxide cell.</summary>
    public const decimal CellVolts = 3.0m;

    /// <summary>The largest abnormal charging current of each cell, in ampere.</summary>
    public static IReadOnlyList<(string Cell, decimal Amperes)> All { get; } =
    [
        ("CR2032", 0.025m), ("CR2025", 0.025m), ("CR2016", 0.025m), ("CR2032 MFR", 0.010m), ("CR1220 MFR", 0.010m), ("CR1025", 0.005m),
    ];

    /// <summary>The least resistance in series with the diode, (supply - cell) / current, in ohm.</summary>
    public static Outcome<Worked<decimal>> LeastOhms(decimal supplyVolts, decimal largestAmperes) =>
        Domain.Of(
            Domain.Positive("charging current", largestAmperes),
            Domain.That(supplyVolts > CellVolts, $"a supply of {Figures.Text(supplyVolts)} V is not above the {Figures.Text(CellVolts)} V of the cell: nothing charges it"))
        .Compute(() =>
        {
            decimal ohms = (supplyVolts - CellVolts) / largestAmperes;
            string working = $"({Figures.Text(supplyVolts)} V - {Figures.Text(CellVolts)} V) / {Figures.Text(largestAmperes * 1000m)} mA = {Figures.Ohms(ohms)}";
            return new Worked<decimal>(ohms, working, Maker) { Remarks = ["for a diode that failed short; the cell's own sheet comes first"] };
        });
}
