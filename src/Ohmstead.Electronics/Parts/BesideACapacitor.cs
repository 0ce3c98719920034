using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Decimals;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Parts;

/// <summary>What a resistance that lies beside a capacitor does to its readings, and how far it can go.</summary>
/// <remarks>
/// Re{(r - jx) || R} = R (r (R + r) + x²) / ((R + r)² + x²). A resistance beside it raises the ESR that a meter shows wherever the
/// reactance x is greater than the ESR r (D under 1), by about x²/R, and can only lower it where x is less: near 100 kHz and for some
/// microfarad. The dissipation factor rises always, by 1 / (2 pi f R C). A capacitor beside it lowers both. An inductance in resonance with
/// it could raise the ESR further; that is not counted.
/// </remarks>
public static class BesideACapacitor
{
    /// <summary>Where the formulas come from.</summary>
    public static Source Source { get; } =
        Source.Published("Agilent Impedance Measurement Handbook", "pages 1-11 and 1-12: series and parallel; the rest is algebra");

    /// <summary>What a meter that thinks in series shows of a capacitor with an ESR and a resistance beside it.</summary>
    public static Outcome<Worked<SeriesReading>> Read(decimal esrOhms, decimal hertz, decimal farads, decimal besideOhms) =>
        Sound(esrOhms, hertz, farads, Domain.Positive("resistance beside it", besideOhms))
            .Compute(() =>
            {
                decimal x = Reactance(hertz, farads);
                decimal sum = besideOhms + esrOhms;
                decimal square = (sum * sum) + (x * x);
                decimal ohms = besideOhms * ((esrOhms * sum) + (x * x)) / square;
                decimal reactance = besideOhms * besideOhms * x / square;
                return new Worked<SeriesReading>(
                    new(ohms, 1m / (LossFactor.TwoPi * hertz * reactance), ohms / reactance),
                    new(() =>
                        $"({Rounded.Ohms(esrOhms)} - j {Rounded.Ohms(x)}) || {Rounded.Ohms(besideOhms)} = {Rounded.Ohms(ohms)} - j "
                        + $"{Rounded.Ohms(reactance)}"
                    ),
                    Source
                );
            });

    /// <summary>The most that any resistance beside a capacitor makes of an ESR that is inside its limit L: L itself where the reactance x
    /// is no greater, else (L² + x²) / (2 x).</summary>
    /// <remarks>With r and x given the series resistance is greatest where the conductance beside it has made up to the susceptance, and
    /// greatest of all for r = L.</remarks>
    public static Outcome<Worked<decimal>> LargestEsr(decimal limitOhms, decimal hertz, decimal farads) =>
        Sound(limitOhms, hertz, farads)
            .Compute(() =>
            {
                decimal x = Reactance(hertz, farads);
                decimal most = x <= limitOhms ? limitOhms : ((limitOhms * limitOhms) + (x * x)) / (2m * x);
                return new Worked<decimal>(
                    most,
                    new(() =>
                        x <= limitOhms
                            ? $"x = {Rounded.Ohms(x)} is under {Rounded.Ohms(limitOhms)}: no resistance beside it can raise it"
                            : $"({Rounded.Ohms(limitOhms)}² + {Rounded.Ohms(x)}²) / (2 x {Rounded.Ohms(x)}) = {Rounded.Ohms(most)}"
                    ),
                    Source
                );
            });

    /// <summary>The resistance beside a capacitor that makes a reading of an ESR that is just on its limit; refused where none
    /// does.</summary>
    public static Outcome<Worked<decimal>> ExplainsEsr(decimal limitOhms, decimal readOhms, decimal hertz, decimal farads) =>
        Sound(limitOhms, hertz, farads, Domain.That(readOhms > limitOhms, "the reading is not above its limit"))
            .Flatten(() =>
            {
                decimal x = Reactance(hertz, farads);
                decimal square = (limitOhms * limitOhms) + (x * x);
                (decimal conductance, decimal susceptance) = (limitOhms / square, x / square);

                // readOhms (g² + b²) = g, of which the root nearer to the part's own conductance.
                decimal under = 1m - (4m * readOhms * readOhms * susceptance * susceptance);
                decimal most = under < 0m ? 0m : ((1m - DecimalMath.Sqrt(under)) / (2m * readOhms)) - conductance;
                return most <= 0m
                    ? Outcome<Worked<decimal>>.Refused(
                        $"no resistance beside it makes {Rounded.Ohms(readOhms)} of {Rounded.Ohms(limitOhms)}"
                    )
                    : Outcome<Worked<decimal>>.From(
                        new(
                            1m / most,
                            new(() =>
                                $"{Rounded.Ohms(1m / most)} beside {Rounded.Ohms(limitOhms)} and {Rounded.Farads(farads)} reads "
                                + $"{Rounded.Ohms(readOhms)} at {Figures.Text(hertz)} Hz"
                            ),
                            Source
                        )
                    );
            });

    /// <summary>The resistance beside a capacitor that makes a dissipation factor of one that is just on its limit, 1 / (2 pi f C (D -
    /// limit)); any greater one does less.</summary>
    public static Outcome<Worked<decimal>> ExplainsLossFactor(decimal limit, decimal read, decimal hertz, decimal farads) =>
        Sound(limit, hertz, farads, Domain.That(read > limit, "the reading is not above its limit"))
            .Compute(() =>
            {
                decimal ohms = 1m / (LossFactor.TwoPi * hertz * farads * (read - limit));
                return new Worked<decimal>(
                    ohms,
                    new(() =>
                        $"1 / (2 pi x {Figures.Text(hertz)} Hz x {Rounded.Farads(farads)} x ({Figures.Text(read)} - "
                        + $"{Figures.Text(limit)})) = {Rounded.Ohms(ohms)}"
                    ),
                    Source
                );
            });

    private static decimal Reactance(decimal hertz, decimal farads) => 1m / (LossFactor.TwoPi * hertz * farads);

    private static Domain Sound(decimal ohms, decimal hertz, decimal farads, string? more = null) =>
        Domain.Require(
            Domain.NotNegative("ESR or loss", ohms),
            Domain.Positive("frequency", hertz),
            Domain.Positive("capacitance", farads),
            more
        );
}

/// <summary>What a meter shows that takes a part for a capacitance and a resistance in series.</summary>
/// <param name="EsrOhms">The resistance, in ohm.</param>
/// <param name="Farads">The capacitance, in farad.</param>
/// <param name="LossFactor">The dissipation factor.</param>
public readonly record struct SeriesReading(decimal EsrOhms, decimal Farads, decimal LossFactor);
