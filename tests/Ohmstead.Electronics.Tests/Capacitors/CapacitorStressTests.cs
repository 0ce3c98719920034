using Ohmstead.Electronics.Capacitors;

namespace Ohmstead.Electronics.Tests.Capacitors;

public sealed class CapacitorStressTests
{
    // 1.15 up to 100 V, 1.10 from 160 V up: EPCOS B41851/B43851 data sheet, 01/2009, and B43858, 11/2012. Long-life cans (B41505) bear 1.15
    // to 250 V.
    [Theory]
    [Trait("CheckValue", "CV22")]
    [InlineData("25", "28.75")]
    [InlineData("100", "115")]
    [InlineData("101", "111.1")]
    [InlineData("250", "275")]
    [InlineData("315", "346.5")]
    [InlineData("450", "495")]
    [InlineData("63", "72.45")]
    [InlineData("630", "693")]
    public void The_surge_voltage_is_fifteen_or_ten_per_cent_over_the_rating(string rated, string surge) =>
        Assert.Equal(Exact.Of(surge), SurgeVoltage.Volts(Exact.Of(rated)).Value.Value);

    // sqrt(1.0² + (0.8 / 1.4)²), by hand calculator.
    [Fact]
    [Trait("CheckValue", "CV23")]
    public void Ripple_of_two_frequencies_adds_as_heating_power()
    {
        Worked<double> sum = RippleCurrent.Equivalent([new(1.0, 1.0), new(0.8, 1.4)]).Value;
        Assert.Equal(1.1518, sum.Value, 1e-4);
        Assert.Equal("sqrt((1 A / 1)² + (0.8 A / 1.4)²) = 1.1518 A", sum.Arithmetic);
    }

    [Fact]
    public void No_aluminium_electrolytic_is_rated_above_630_volts() =>
        Assert.Equal("rated voltage is 631 V, no aluminium electrolytic is rated above 630 V", SurgeVoltage.Volts(631m).Refusal);

    // SV16: NIC NRB-XW data sheet, 450 V: 950 mA at 120 Hz are 760 mA at 60 Hz, 1330 at 1 kHz, 1425 at 10 kHz and above.
    [Theory]
    [Trait("CheckValue", "SV16")]
    [InlineData("60", "760")]
    [InlineData("120", "950")]
    [InlineData("1000", "1330")]
    [InlineData("10000", "1425")]
    [InlineData("100000", "1425")]
    public void A_radial_of_450_volts_bears_more_ripple_of_higher_frequency(string hertz, string milliamperes) =>
        Assert.Equal(Exact.Of(milliamperes), 950m * RippleGrade.HighVoltage.At(Exact.Of(hertz)).Value.Low);

    // General Electric/Aerovox application data p. 67, eight series of large cans: 1.04 to 1.15 at 400 Hz, 1.10 to 1.35 at 10 kHz.
    [Theory]
    [InlineData("400", "1.04", "1.15")]
    [InlineData("399", "1", "1")]
    [InlineData("10000", "1.1", "1.35")]
    [InlineData("100", "0.92", "0.97")]
    public void A_large_can_bears_less_than_a_small_part(string hertz, string low, string high)
    {
        RippleMultiplier row = RippleGrade.LargeCan.At(Exact.Of(hertz)).Value;
        Assert.Equal((Exact.Of(low), Exact.Of(high)), (row.Low, row.High));
    }

    [Fact]
    public void A_frequency_beyond_the_table_has_no_multiplier() =>
        Assert.Equal("no multiplier is known for 1000000 Hz, expected 50 to 100000 Hz", RippleGrade.GeneralPurpose.At(1_000_000m).Refusal);

    [Fact]
    public void No_ripple_component_at_all_is_refused() =>
        Assert.Equal("no ripple component is given, expected one or more", RippleCurrent.Equivalent([]).Refusal);

    // V Rg / (Rins + Rg), by hand calculator: 250 V, 50 Mohm, 470 kohm lift the grid by 2.328 V.
    [Fact]
    [Trait("CheckValue", "CV27")]
    public void A_leaking_coupling_capacitor_lifts_the_grid() =>
        Assert.Equal(2.328, (double)GridLeak.ShiftVolts(250m, 50_000_000m, 470_000m).Value.Value, 1e-3);

    // The same circuit turned round: 0.1 V of shift needs 1.17 Gohm.
    [Fact]
    public void A_tenth_of_a_volt_at_the_grid_needs_over_a_gigohm() =>
        Assert.Equal(1.17e9, (double)GridLeak.LeastInsulationOhms(250m, 470_000m).Value.Value, 0.01e9);

    // SV07: (V - v) Rg / v by hand calculator: a small stage at 15 mV, an output stage at 5 V.
    [Theory]
    [Trait("CheckValue", "SV07")]
    [InlineData("250", "470000", "0.1", 1.1745e9)]
    [InlineData("250", "1000000", "0.015", 16.67e9)]
    [InlineData("350", "500000", "5", 34.5e6)]
    public void The_insulation_goes_with_the_shift_that_the_stage_bears(string across, string grid, string shift, double ohms) =>
        Assert.Equal(
            ohms,
            (double)GridLeak.LeastInsulationOhms(Exact.Of(across), Exact.Of(grid), Exact.Of(shift)).Value.Value,
            ohms * 5e-4
        );

    [Fact]
    public void A_multiplier_of_a_thousandth_is_a_slip() =>
        Assert.Equal("frequency multiplier is 0.001, expected 0.2 to 5", RippleCurrent.Equivalent([new(1.0, 0.001)]).Refusal);

    // 50 % derating to 85 degrees: KEMET derating guidelines. 12 V rail -> 24 V least.
    [Fact]
    public void A_tantalum_on_twelve_volts_wants_twenty_four() => Assert.Equal(24m, Tantalum.LeastRatedVolts(12m).Value.Value);

    // Category voltage falls to 2/3 at 125 degrees: Vishay, typical performance characteristics, MIL-PRF-55365 (25 V: 16.7 V).
    [Fact]
    public void A_tantalum_bears_two_thirds_of_its_rating_at_125_degrees()
    {
        Assert.Equal(35m, Tantalum.CategoryVolts(35m, 85m).Value.Value);
        Assert.Equal(23.333m, Tantalum.CategoryVolts(35m, 125m).Value.Value, 3);
    }

    // 10 µF, 0.06, 120 Hz: 7.96 ohm at most, by hand calculator.
    [Fact]
    public void A_tantalum_of_ten_microfarad_may_have_eight_ohm() =>
        Assert.Equal(7.96, (double)LossFactor.EsrOhms(Tantalum.LossFactorLimit(0.00001m).Value.Value, 120m, 0.00001m).Value, 0.005);

    [Theory]
    [InlineData("25", "1")]
    [InlineData("85", "0.5")]
    [InlineData("125", "0.1")]
    public void Reverse_voltage_on_a_tantalum_shrinks_with_heat(string celsius, string volts) =>
        Assert.Equal(Exact.Of(volts), Tantalum.ReverseVolts(16m, Exact.Of(celsius)).Value.Value);

    [Theory]
    [InlineData("15", true)]
    [InlineData("25", true)]
    [InlineData("4", false)]
    public void A_reading_in_a_cold_shed_is_not_comparable(string celsius, bool comparable) =>
        Assert.Equal(comparable, LowTemperatureImpedance.IsComparable(Exact.Of(celsius)));
}
