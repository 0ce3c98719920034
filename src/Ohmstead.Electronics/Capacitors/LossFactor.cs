using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Capacitors;

/// <summary>
/// The loss of a capacitor in its forms: dissipation factor (tan delta), equivalent series resistance, quality, impedance, and the
/// series against the parallel picture.
/// </summary>
/// <remarks>
/// Series model: a capacitance C in series with an ESR, C = Cs. Valid well below self-resonance, with all figures taken at one
/// frequency. A 100 kHz ESR must never be compared with a 120 Hz dissipation factor: the dielectric part of the loss falls with
/// frequency. Units: ohm, farad, hertz, henry; the dissipation factor is a plain number (0.16, not 16 %).
/// </remarks>
public static class LossFactor
{
    // To 27 figures: the limits that come of it are decimals.
    internal const decimal TwoPi = 6.28318530717958647692528677m;

    /// <summary>The definitions hold for every capacitor; ESR = tan delta / (2 pi f C) is also what makers give as the largest
    /// ESR.</summary>
    public static Source Source { get; } = Source.Published("Vishay 038 RSU data sheet 28309", "maximum ESR from tan delta");

    /// <summary>The reactance of a capacitance, 1 / (2 pi f C), in ohm.</summary>
    public static Outcome<decimal> ReactanceOhms(decimal hertz, decimal farads) =>
        Domain
            .Require(Domain.Positive("frequency", hertz), Domain.Positive("capacitance", farads))
            .Compute(() => 1m / (TwoPi * hertz * farads));

    /// <summary>The equivalent series resistance, tan delta / (2 pi f C), in ohm.</summary>
    public static Outcome<decimal> EsrOhms(decimal lossFactor, decimal hertz, decimal farads) =>
        Domain
            .Require(
                Domain.NotNegative("dissipation factor", lossFactor),
                Domain.Positive("frequency", hertz),
                Domain.Positive("capacitance", farads)
            )
            .Flatten((lossFactor, hertz, farads), static given =>
                Outcome<decimal>.From(given.lossFactor / (TwoPi * given.hertz * given.farads))
            );

    /// <summary>The largest ESR that a dissipation factor limit allows, with its working.</summary>
    public static Outcome<Worked<decimal>> EsrLimit(decimal lossFactor, decimal hertz, decimal farads) =>
        EsrOhms(lossFactor, hertz, farads)
            .Then(ohms => new Worked<decimal>(
                ohms,
                new(() =>
                    $"{Figures.Text(lossFactor)} / (2 pi x {Figures.Text(hertz)} Hz x {Rounded.Farads(farads)}) = {Rounded.Ohms(ohms)}"
                ),
                Source
            ));

    /// <summary>The dissipation factor, 2 pi f C ESR.</summary>
    public static Outcome<decimal> FromEsr(decimal esrOhms, decimal hertz, decimal farads) =>
        Domain
            .Require(Domain.NotNegative("ESR", esrOhms), Domain.Positive("frequency", hertz), Domain.Positive("capacitance", farads))
            .Compute(() => TwoPi * hertz * farads * esrOhms);

    /// <summary>The dissipation factor that a resistance in parallel causes by itself, 1 / (2 pi f R C); the capacitance reading is
    /// unharmed in the parallel picture, 1 + D² times as much in the series one.</summary>
    public static Outcome<decimal> FromParallelResistance(decimal ohms, decimal hertz, decimal farads) =>
        Domain
            .Require(Domain.Positive("resistance", ohms), Domain.Positive("frequency", hertz), Domain.Positive("capacitance", farads))
            .Compute(() => 1m / (TwoPi * hertz * ohms * farads));

    /// <summary>The quality factor, 1 / tan delta.</summary>
    public static Outcome<decimal> Quality(decimal lossFactor) =>
        Domain.Require(Domain.Positive("dissipation factor", lossFactor)).Compute(() => 1m / lossFactor);

    /// <summary>The power factor, D / sqrt(1 + D²): the sine of the loss angle where the dissipation factor is its tangent.</summary>
    public static Outcome<double> PowerFactor(double lossFactor) =>
        Domain
            .Require(Domain.NotNegative("dissipation factor", lossFactor))
            .Compute(() => lossFactor / Math.Sqrt(1 + (lossFactor * lossFactor)));

    /// <summary>The magnitude of the impedance, sqrt(ESR² + (2 pi f L - Xc)²), in ohm. Radial electrolytics have some 13 to 18
    /// nH.</summary>
    public static Outcome<double> ImpedanceOhms(double esrOhms, double hertz, double farads, double henries = 0) =>
        Domain
            .Require(
                Domain.NotNegative("ESR", esrOhms),
                Domain.Positive("frequency", hertz),
                Domain.Positive("capacitance", farads),
                Domain.NotNegative("inductance", henries)
            )
            .Compute(() => double.Hypot(esrOhms, (2 * Math.PI * hertz * henries) - (1 / (2 * Math.PI * hertz * farads))));

    /// <summary>The self-resonant frequency, 1 / (2 pi sqrt(L C)), in hertz.</summary>
    public static Outcome<double> ResonanceHertz(double henries, double farads) =>
        Domain
            .Require(Domain.Positive("inductance", henries), Domain.Positive("capacitance", farads))
            .Compute(() => 1 / (2 * Math.PI * Math.Sqrt(henries * farads)));

    /// <summary>What a meter set to the parallel picture shows for a series capacitance, Cs / (1 + D²), in farad.</summary>
    public static Outcome<decimal> ParallelFarads(decimal seriesFarads, decimal lossFactor) =>
        Domain
            .Require(Domain.Positive("capacitance", seriesFarads), Domain.NotNegative("dissipation factor", lossFactor))
            .Compute(() => seriesFarads / (1m + (lossFactor * lossFactor)));

    /// <summary>The series capacitance behind a parallel reading, Cp (1 + D²), in farad.</summary>
    public static Outcome<decimal> SeriesFarads(decimal parallelFarads, decimal lossFactor) =>
        Domain
            .Require(Domain.Positive("capacitance", parallelFarads), Domain.NotNegative("dissipation factor", lossFactor))
            .Compute(() => parallelFarads * (1m + (lossFactor * lossFactor)));

    /// <summary>The parallel resistance that stands for an ESR, ESR (1 + 1/D²), in ohm.</summary>
    public static Outcome<decimal> ParallelOhms(decimal esrOhms, decimal lossFactor) =>
        Domain
            .Require(Domain.NotNegative("ESR", esrOhms), Domain.Positive("dissipation factor", lossFactor))
            .Compute(() => esrOhms * (1m + (1m / (lossFactor * lossFactor))));
}
