using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Capacitors;

/// <summary>What a leaking coupling capacitor does to the grid it feeds.</summary>
public static class GridLeak
{
    /// <summary>The grid shift usually accepted of an output stage: 0.1 V. A capacitance meter says nothing of it; test at working
    /// voltage.</summary>
    public const decimal AcceptedVolts = 0.1m;

    private const decimal ShareOfBias = 0.01m;

    /// <summary>The grid shift to accept of a stage of a known bias: a hundredth of it, 15 mV of 1.5 V; it is less than the usual 0.1 V up
    /// to a bias of 10 V.</summary>
    public static Outcome<Worked<decimal>> AcceptedVoltsFor(decimal biasVolts) =>
        Domain
            .Require(Domain.Positive("bias", Math.Abs(biasVolts)))
            .Compute(() =>
            {
                decimal volts = ShareOfBias * Math.Abs(biasVolts);
                return new Worked<decimal>(
                    volts,
                    new(() => $"{Figures.Percent(ShareOfBias)} of {Figures.Text(Math.Abs(biasVolts))} V = {Figures.Text(volts)} V"),
                    Source.Practice("music-electronics-forum.com thread 43312")
                );
            });

    /// <summary>How far the grid is lifted, V Rg / (Rins + Rg), in volt.</summary>
    public static Outcome<Worked<decimal>> ShiftVolts(decimal acrossVolts, decimal insulationOhms, decimal gridLeakOhms) =>
        Domain
            .Require(
                Domain.NotNegative("voltage", acrossVolts),
                Domain.NotNegative("insulation resistance", insulationOhms),
                Domain.Positive("grid leak", gridLeakOhms)
            )
            .Compute(() =>
            {
                decimal volts = acrossVolts * gridLeakOhms / (insulationOhms + gridLeakOhms);
                string working =
                    $"{Figures.Text(acrossVolts)} V x {Rounded.Ohms(gridLeakOhms)} / ({Rounded.Ohms(insulationOhms)} + "
                    + $"{Rounded.Ohms(gridLeakOhms)}) = {Figures.Text(volts, 4)} V";
                return new Worked<decimal>(volts, working, Source.CommonPractice);
            });

    /// <summary>The least insulation that keeps the grid shift within a limit, Rg (V / limit - 1), in ohm.</summary>
    public static Outcome<Worked<decimal>> LeastInsulationOhms(
        decimal acrossVolts,
        decimal gridLeakOhms,
        decimal shiftVolts = AcceptedVolts
    ) =>
        Domain
            .Require(
                Domain.Positive("voltage", acrossVolts),
                Domain.Positive("grid leak", gridLeakOhms),
                Domain.Positive("grid shift", shiftVolts)
            )
            .Compute(() =>
            {
                decimal ohms = Math.Max(0m, gridLeakOhms * ((acrossVolts / shiftVolts) - 1m));
                string working =
                    $"{Rounded.Ohms(gridLeakOhms)} x ({Figures.Text(acrossVolts)} V / {Figures.Text(shiftVolts)} V - 1) = "
                    + $"{Rounded.Ohms(ohms)}";
                return new Worked<decimal>(ohms, working, Source.CommonPractice);
            });
}
