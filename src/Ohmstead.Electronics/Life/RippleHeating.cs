using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Life;

/// <summary>How much ripple current warms a can above its surroundings.</summary>
public static class RippleHeating
{
    private static readonly Source Balance = Source.FromMemory("Chemi-Con technical note E1001L", "heat balance of a can");
    private static readonly Source Triangle = Source.Practice("fundamental of a triangular ripple voltage across a capacitance");
    private static readonly Source Square = Source.Published(
        "Rubycon, life of aluminium electrolytic capacitors, technical note",
        "ripple"
    );
    private static readonly Source CoreTable = Source.Published(
        "Rubycon, life of aluminium electrolytic capacitors, technical note",
        "core and case, column alignment reconstructed"
    );

    // Core over case rise by can diameter in millimetre: up to this diameter, this ratio.
    private static readonly IReadOnlyList<(double Millimetres, double Ratio)> CoreRatios =
    [
        (8, 1.0),
        (12.5, 1.1),
        (18, 1.2),
        (22, 1.3),
        (25, 1.4),
        (30, 1.5),
        (35, 1.6),
    ];

    /// <summary>The cooling surface of a can in cm². The two ways of counting differ by a tenth for usual cans: say which.</summary>
    public static Outcome<double> SurfaceSquareCentimetres(double diameterMillimetres, double lengthMillimetres, CanSurface counted) =>
        Domain
            .Require(Domain.Within("diameter", diameterMillimetres, 1, 200), Domain.Within("length", lengthMillimetres, 1, 500))
            .Compute(() =>
            {
                (double d, double l) = (diameterMillimetres / 10, lengthMillimetres / 10);
                double end = Math.PI * d * d / 4;
                return (Math.PI * d * l) + (counted == CanSurface.BothEnds ? 2 * end : end);
            });

    /// <summary>The rise of the can, I² ESR / (beta S), in kelvin.</summary>
    /// <param name="amperes">Ripple current r.m.s.</param>
    /// <param name="esrOhms">ESR at the ripple's frequency.</param>
    /// <param name="surfaceSquareCentimetres">The cooling surface.</param>
    /// <param name="milliwattsPerSquareCentimetreKelvin">Heat given off, 1.0 to 2.2 in free air, falling with size.</param>
    public static Outcome<Worked<double>> RiseKelvin(
        double amperes,
        double esrOhms,
        double surfaceSquareCentimetres,
        double milliwattsPerSquareCentimetreKelvin
    ) =>
        Domain
            .Require(
                Domain.NotNegative("ripple current", amperes),
                Domain.NotNegative("ESR", esrOhms),
                Domain.Positive("surface", surfaceSquareCentimetres),
                Domain.Within("heat given off", milliwattsPerSquareCentimetreKelvin, 0.1, 20)
            )
            .Compute(() =>
            {
                double watts = amperes * amperes * esrOhms;
                double kelvin = watts * 1000 / (milliwattsPerSquareCentimetreKelvin * surfaceSquareCentimetres);
                string working =
                    $"({Figures.Text(amperes)} A)² x {Rounded.Ohms(esrOhms)} / ({Figures.Text(milliwattsPerSquareCentimetreKelvin)} "
                    + $"mW/(cm² K) x {Figures.Text(surfaceSquareCentimetres, 5)} cm²) = {Figures.Text(kelvin, 4)} K";
                return new Worked<double>(kelvin, working, Balance);
            });

    /// <summary>The rise from the rating, dT0 (I / I0)²; dT0 is 5 K for most 105 degree parts, 3.5 to 10 K for others.</summary>
    public static Outcome<Worked<double>> RiseFromRating(double ratedRiseKelvin, double amperes, double ratedAmperes) =>
        Domain
            .Require(
                Domain.NotNegative("rated rise", ratedRiseKelvin),
                Domain.NotNegative("ripple current", amperes),
                Domain.Positive("rated ripple current", ratedAmperes)
            )
            .Compute(() =>
            {
                double kelvin = ratedRiseKelvin * (amperes / ratedAmperes) * (amperes / ratedAmperes);
                return new Worked<double>(
                    kelvin,
                    $"{Figures.Text(ratedRiseKelvin)} K x ({Figures.Text(amperes)} / {Figures.Text(ratedAmperes)})² = "
                        + $"{Figures.Text(kelvin, 4)} K",
                    Square
                );
            });

    /// <summary>
    /// The ripple current that a ripple voltage drives through a capacitance, 2 pi f C Vpp / (2 sqrt 3), in ampere r.m.s.: the ripple is
    /// taken as a triangle and its harmonics are left out, so short charging pulses can be half as much again.
    /// </summary>
    /// <param name="peakToPeakVolts">The ripple voltage, peak to peak.</param>
    /// <param name="hertz">Its frequency: twice the mains frequency behind a full-wave rectifier.</param>
    /// <param name="farads">The capacitance.</param>
    public static Outcome<Worked<double>> FromVoltage(double peakToPeakVolts, double hertz, double farads) =>
        Domain
            .Require(
                Domain.NotNegative("ripple voltage", peakToPeakVolts),
                Domain.Within("ripple frequency", hertz, 1, 1e6),
                Domain.Positive("capacitance", farads)
            )
            .Compute(() =>
            {
                double amperes = 2 * Math.PI * hertz * farads * peakToPeakVolts / (2 * Math.Sqrt(3));
                return new Worked<double>(
                    amperes,
                    new(() =>
                        $"2 pi x {Figures.Text(hertz)} Hz x {Rounded.Farads(farads)} x {Figures.Text(peakToPeakVolts)} V / (2 sqrt 3) = "
                        + $"{Figures.Text(amperes, 4)} A"
                    ),
                    Triangle
                );
            });

    /// <summary>The core's temperature from the case's, Ta + alpha (Tc - Ta), alpha by diameter; refused above 35 mm.</summary>
    public static Outcome<Worked<double>> CoreCelsius(double ambientCelsius, double caseCelsius, double diameterMillimetres) =>
        Domain
            .Require(
                Domain.Within("diameter", diameterMillimetres, 1, CoreRatios[^1].Millimetres),
                Domain.Finite("ambient temperature", ambientCelsius),
                Domain.That(caseCelsius >= ambientCelsius, "the case is cooler than its surroundings")
            )
            .Compute(() =>
            {
                double ratio = CoreRatios.First(r => diameterMillimetres <= r.Millimetres).Ratio;
                double core = ambientCelsius + (ratio * (caseCelsius - ambientCelsius));
                string working =
                    $"{Figures.Text(ambientCelsius)} + {Figures.Text(ratio)} x ({Figures.Text(caseCelsius)} - "
                    + $"{Figures.Text(ambientCelsius)}) = {Figures.Text(core)} degrees";
                return new Worked<double>(core, working, CoreTable);
            });
}

/// <summary>Which faces of a can count as cooling.</summary>
public enum CanSurface
{
    /// <summary>The mantle and one end.</summary>
    OneEnd,

    /// <summary>The mantle and both ends.</summary>
    BothEnds,
}
