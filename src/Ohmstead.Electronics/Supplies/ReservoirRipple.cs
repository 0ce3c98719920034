using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Supplies;

/// <summary>Ripple on a reservoir capacitor by the rule of thumb, and what it says of the capacitor.</summary>
/// <remarks>
/// dV = I / (2 f C) for full wave and I / (f C) for half wave, f the mains frequency: the capacitor is taken to feed the load for the
/// whole period. The real ripple is 70 to 90 % of it. Valid while the ripple is under a fifth of the voltage.
/// </remarks>
public static class ReservoirRipple
{
    /// <summary>The largest share of the voltage that the rule of thumb holds for.</summary>
    public const decimal ValidShare = 0.2m;

    /// <summary>Where the rule comes from.</summary>
    public static Source Source { get; } = Source.Practice("charge drawn from a capacitance between two pulses, C dV = I t");

    /// <summary>The ripple in volt peak to peak, the upper bound.</summary>
    public static Outcome<Worked<decimal>> VoltsPeakToPeak(decimal amperes, decimal mainsHertz, decimal farads, Rectifier rectifier) =>
        Domain
            .Require(
                Domain.NotNegative("load current", amperes),
                Domain.Positive("mains frequency", mainsHertz),
                Domain.Positive("capacitance", farads)
            )
            .Compute(() =>
            {
                decimal pulses = rectifier.PulsesPerCycle();
                decimal volts = amperes / (pulses * mainsHertz * farads);
                string working =
                    $"{Figures.Text(amperes)} A / ({Figures.Text(pulses)} x {Figures.Text(mainsHertz)} Hz x {Rounded.Farads(farads)}) = "
                    + $"{Figures.Text(volts, 5)} V peak to peak at most";
                return new Worked<decimal>(volts, working, Source) { Remarks = ["the real ripple is 70 to 90 % of it"] };
            });

    /// <summary>The r.m.s. value of a sawtooth of this height, dV / (2 sqrt 3).</summary>
    public static double SawtoothRms(double voltsPeakToPeak) => voltsPeakToPeak / (2 * Math.Sqrt(3));

    /// <summary>The capacitance that keeps the ripple within a height, I / (pulses f dV), in farad.</summary>
    public static Outcome<Worked<decimal>> FaradsFor(decimal voltsPeakToPeak, decimal amperes, decimal mainsHertz, Rectifier rectifier) =>
        Domain
            .Require(
                Domain.Positive("ripple", voltsPeakToPeak),
                Domain.Positive("load current", amperes),
                Domain.Positive("mains frequency", mainsHertz)
            )
            .Compute(() =>
            {
                decimal pulses = rectifier.PulsesPerCycle();
                decimal farads = amperes / (pulses * mainsHertz * voltsPeakToPeak);
                string working =
                    $"{Figures.Text(amperes)} A / ({Figures.Text(pulses)} x {Figures.Text(mainsHertz)} Hz x "
                    + $"{Figures.Text(voltsPeakToPeak)} V) = {Rounded.Farads(farads)}";
                return new Worked<decimal>(farads, working, Source);
            });

    /// <summary>
    /// What a measured ripple proves of the capacitor in circuit with the power on: the rule of thumb gives an upper bound of the
    /// capacitance, so a bound under the lower limit proves the capacitance low, and any other bound proves nothing.
    /// </summary>
    public static Outcome<Worked<RippleEvidence>> Evidence(
        decimal voltsPeakToPeak,
        decimal amperes,
        decimal mainsHertz,
        Rectifier rectifier,
        decimal lowerLimitFarads
    ) =>
        FaradsFor(voltsPeakToPeak, amperes, mainsHertz, rectifier)
            .Then(bound =>
            {
                bool low = bound.Value < lowerLimitFarads;
                string verdict = low ? "under the lower limit: proved low" : "not under the lower limit: proves nothing";
                return new Worked<RippleEvidence>(
                    new RippleEvidence(bound.Value, low),
                    $"at most {bound.Arithmetic}; limit {Rounded.Farads(lowerLimitFarads)}; {verdict}",
                    Source
                );
            });
}

/// <summary>What a ripple reading says of its reservoir capacitor.</summary>
/// <param name="AtMostFarads">The capacitance is at most this; the true one is some 0.7 to 0.9 of it.</param>
/// <param name="ProvedLow">True when even the bound is under the lower limit. False proves nothing.</param>
public sealed record RippleEvidence(decimal AtMostFarads, bool ProvedLow);
