using CsCheck;
using Ohmstead.Electronics.Supplies;

namespace Ohmstead.Electronics.Tests.Supplies;

public sealed class ReservoirRippleTests
{
    // dV = I / (2 f C) full wave, I / (f C) half wave: after Horowitz and Hill; worked by hand calculator.
    [Theory]
    [Trait("CheckValue", "CV39")]
    [InlineData("1", "50", "0.0047", Rectifier.Bridge, 2.1277)]
    [InlineData("1", "60", "0.0047", Rectifier.CentreTap, 1.7730)]
    [InlineData("0.5", "50", "0.0022", Rectifier.Bridge, 2.2727)]
    [InlineData("3", "60", "0.022", Rectifier.Bridge, 1.1364)]
    [InlineData("2", "50", "0.01", Rectifier.Bridge, 2.0000)]
    [InlineData("0.1", "50", "0.00047", Rectifier.HalfWave, 4.2553)]
    public void The_rule_of_thumb_gives_the_ripple_at_most(
        string amperes,
        string hertz,
        string farads,
        Rectifier rectifier,
        double volts
    ) =>
        Assert.Equal(
            volts,
            (double)ReservoirRipple.VoltsPeakToPeak(Exact.Of(amperes), Exact.Of(hertz), Exact.Of(farads), rectifier).Value.Value,
            1e-4
        );

    // The same rule turned round: 1.5 A, 50 Hz, 2 V need 7500 µF.
    [Fact]
    public void A_wanted_ripple_gives_a_capacitance() =>
        Assert.Equal(0.0075m, ReservoirRipple.FaradsFor(2m, 1.5m, 50m, Rectifier.Bridge).Value.Value);

    // 3.2 V at 1 A and 50 Hz is at most 3125 µF: under 4700 µF -20 % = 3760 µF, so proved low.
    [Fact]
    public void Too_much_ripple_proves_the_capacitance_low()
    {
        Worked<RippleEvidence> evidence = ReservoirRipple.Evidence(3.2m, 1m, 50m, Rectifier.Bridge, 0.00376m).Value;
        Assert.Equal(0.003125m, evidence.Value.AtMostFarads);
        Assert.True(evidence.Value.ProvedLow);
        Assert.EndsWith("limit 3760 µF; under the lower limit: proved low", evidence.Arithmetic, StringComparison.Ordinal);
    }

    // ngspice: 1.030 A and 1.753 V come from a true 4700 µF, the rule says at most 5877 µF.
    [Fact]
    public void Little_ripple_proves_nothing()
    {
        RippleEvidence evidence = ReservoirRipple.Evidence(1.753m, 1.030m, 50m, Rectifier.Bridge, 0.00376m).Value.Value;
        Assert.Equal(5877, (double)evidence.AtMostFarads * 1e6, 2.0);
        Assert.False(evidence.ProvedLow);
    }

    [Fact]
    public void A_sawtooth_has_an_rms_of_its_height_over_two_root_three() => Assert.Equal(0.5774, ReservoirRipple.SawtoothRms(2), 1e-4);

    // ngspice 39: 17 V peak, 50 Hz, bridge, 4700 µF, 14.3 ohm: 15.585 V down to 13.831 V, mean 14.733 V, diode model not recorded.
    [Fact]
    public void The_computed_waveform_agrees_with_a_circuit_simulator()
    {
        ReservoirWaveform wave = ReservoirWaveform.Compute(17, 50, 4700e-6, 14.3, Rectifier.Bridge).Value;
        Assert.Equal(1.753, wave.RippleVolts, 1.753 * 0.03);
        Assert.Equal(14.733, wave.MeanVolts, 0.05);
    }

    // ngspice 39, the same circuit with IS = 1e-12 and N = 1 for every diode, 0.7143 V at 1 A: 15.5496 V to 13.7628 V, mean 14.697 V.
    [Fact]
    public void The_computed_waveform_agrees_closely_when_the_diodes_are_the_same()
    {
        ReservoirWaveform wave = ReservoirWaveform.Compute(17, 50, 4700e-6, 14.3, Rectifier.Bridge, 0.7143).Value;
        Assert.Equal(15.5496, wave.MaximumVolts, 0.005);
        Assert.Equal(13.7628, wave.MinimumVolts, 0.005);
        Assert.Equal(14.697, wave.MeanVolts, 0.005);
    }

    [Fact]
    public void The_rule_of_thumb_is_never_under_the_computed_ripple() =>
        Gen.Select(Gen.Int[10, 100], Gen.Int[1000, 10_000], Gen.Int[20, 200])
            .Sample(
                (peak, microFarads, ohms) =>
                {
                    ReservoirWaveform wave = ReservoirWaveform.Compute(peak, 50, microFarads * 1e-6, ohms, Rectifier.Bridge).Value;
                    return wave.RippleVolts <= wave.MaximumVolts / ohms / (100 * microFarads * 1e-6);
                },
                iter: 10
            );

    [Fact]
    public void A_half_wave_supply_conducts_once_and_ripples_more() =>
        Assert.True(
            ReservoirWaveform.Compute(17, 50, 4700e-6, 100, Rectifier.HalfWave).Value.RippleVolts
                > ReservoirWaveform.Compute(17, 50, 4700e-6, 100, Rectifier.CentreTap).Value.RippleVolts * 1.8
        );

    [Fact]
    public void A_supply_without_volts_is_refused() =>
        Assert.Equal("peak voltage is 0, expected 2 to 10000", ReservoirWaveform.Compute(0, 50, 1e-3, 10, Rectifier.Bridge).Refusal);
}
