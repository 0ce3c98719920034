using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Parts;

/// <summary>The resistor beside the diode that keeps a supply from charging a primary lithium cell when the diode has failed
/// short.</summary>
public static class LithiumBackup
{
    private static readonly Source Guide = Source.Published(
        "Renata designer's guide, pages 52 and 53",
        "at most 25 mA into CR2032, CR2025, CR2016; 10 mA and 5 mA into smaller ones"
    );

    /// <summary>The least resistance, in ohm: what of the supply is left above the cell, divided by the greatest abnormal charging
    /// current.</summary>
    public static Outcome<Worked<decimal>> LeastOhms(decimal supplyVolts, decimal cellVolts, decimal greatestAmperes) =>
        Domain
            .Require(
                Domain.Positive("supply voltage", supplyVolts),
                Domain.Positive("cell voltage", cellVolts),
                Domain.Positive("charging current", greatestAmperes)
            )
            .Compute(() =>
            {
                decimal ohms = Math.Max(0m, (supplyVolts - cellVolts) / greatestAmperes);
                return new Worked<decimal>(
                    ohms,
                    new(() =>
                        $"({Figures.Text(supplyVolts)} V - {Figures.Text(cellVolts)} V) / {Figures.Text(greatestAmperes)} A = "
                        + $"{Rounded.Ohms(ohms)}"
                    ),
                    Guide
                );
            });
}
