namespace Ohmstead.Electronics.Supplies;

/// <summary>The voltage an unregulated reservoir climbs to with no load and high mains: what its capacitor must be rated for.</summary>
public static class NoLoadPeak
{
    private const decimal SquareRootOfTwo = 1.414213562373095048801688724m;

    /// <summary>sqrt2 Vrms (1 + regulation)(1 + mains) - diode drops, in volt.</summary>
    /// <param name="windingVoltsRms">The winding's voltage at full load, in volt r.m.s.</param>
    /// <param name="regulation">How far the winding rises without load, as a fraction (0.20 for 20 %).</param>
    /// <param name="mainsHigh">How far the mains may be high, as a fraction (0.10 for 10 %).</param>
    /// <param name="diodeVolts">The sum of the diode drops in the path.</param>
    public static Outcome<Worked<decimal>> Volts(decimal windingVoltsRms, decimal regulation, decimal mainsHigh, decimal diodeVolts) =>
        Domain
            .Require(
                Domain.Positive("winding voltage", windingVoltsRms),
                Domain.Within("regulation", regulation, 0m, 1m),
                Domain.Within("mains over nominal", mainsHigh, 0m, 1m),
                Domain.NotNegative("diode drop", diodeVolts),
                Domain.That(
                    diodeVolts < SquareRootOfTwo * windingVoltsRms,
                    $"a diode drop of {Figures.Text(diodeVolts)} V is not under the peak of a winding of "
                        + $"{Figures.Text(windingVoltsRms)} V: nothing is rectified"
                )
            )
            .Compute(() =>
            {
                decimal volts = (SquareRootOfTwo * windingVoltsRms * (1m + regulation) * (1m + mainsHigh)) - diodeVolts;
                string working =
                    $"1.414 x {Figures.Text(windingVoltsRms)} V x {Figures.Text(1m + regulation)} x {Figures.Text(1m + mainsHigh)} - "
                    + $"{Figures.Text(diodeVolts)} V = {Figures.Text(volts, 4)} V";
                return new Worked<decimal>(volts, working, Source.Practice("peak of the winding without load"));
            });
}
