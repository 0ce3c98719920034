using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Substitution;

/// <summary>Two parts in the place of one, and what a coupling capacitor passes.</summary>
public static class Combinations
{
    private static readonly Source Algebra = Source.Practice("capacitors in series; corner of an RC circuit");

    /// <summary>Two equal parts in series: half the value at twice the voltage, each with a sharing resistor of its own, and each used to
    /// 0.9 of its rating.</summary>
    public static Outcome<Worked<(decimal Farads, decimal Volts)>> InSeries(decimal farads, decimal ratedVolts) =>
        Domain
            .Require(Domain.Positive("capacitance", farads), Domain.Positive("rated voltage", ratedVolts))
            .Compute(() =>
                new Worked<(decimal Farads, decimal Volts)>(
                    (farads / 2m, 2m * ratedVolts),
                    $"2 x {Rounded.Farads(farads)} {Figures.Text(ratedVolts)} V in series = {Rounded.Farads(farads / 2m)} "
                        + $"{Figures.Text(2m * ratedVolts)} V",
                    Algebra
                )
                {
                    Remarks = ["sharing resistors that carry ten times the difference in leakage; no more than 0.9 of the rating on each"],
                }
            );

    /// <summary>Two equal polar parts back to back: a bipolar one of half the value at the rating of one.</summary>
    public static Outcome<Worked<(decimal Farads, decimal Volts)>> BackToBack(decimal farads, decimal ratedVolts) =>
        Domain
            .Require(Domain.Positive("capacitance", farads), Domain.Positive("rated voltage", ratedVolts))
            .Compute(() =>
                new Worked<(decimal Farads, decimal Volts)>(
                    (farads / 2m, ratedVolts),
                    $"2 x {Rounded.Farads(farads)} back to back = {Rounded.Farads(farads / 2m)} bipolar, {Figures.Text(ratedVolts)} V",
                    Algebra
                )
            );

    /// <summary>The frequency at which a coupling capacitor has lost 3 dB, 1 / (2 pi R C), in hertz.</summary>
    public static Outcome<Worked<decimal>> CornerHertz(decimal ohms, decimal farads) =>
        Domain
            .Require(Domain.Positive("resistance", ohms), Domain.Positive("capacitance", farads))
            .Compute(() =>
            {
                decimal hertz = 1m / (Capacitors.LossFactor.TwoPi * ohms * farads);
                return new Worked<decimal>(
                    hertz,
                    $"1 / (2 pi x {Rounded.Ohms(ohms)} x {Rounded.Farads(farads)}) = {Figures.Text(hertz, 4)} Hz",
                    Algebra
                );
            });
}
