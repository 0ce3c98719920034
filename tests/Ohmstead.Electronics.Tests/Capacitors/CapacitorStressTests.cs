using Ohmstead.Electronics.Capacitors;

namespace Ohmstead.Electronics.Tests.Capacitors;

public sealed class CapacitorStressTests
{
    // 1.15 up to 315 V, 1.10 above: IEC 60384-4 cl. 2.2.7, from memory; TDK B41856, B43511 and B43641 data sheets agree.
    [Theory]
    [Trait("CheckValue", "CV22")]
    [InlineData("25", "28.75")]
    [InlineData("315", "362.25")]
    [InlineData("450", "495")]
    [InlineData("63", "72.45")]
    [InlineData("350", "385")]
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

    // 50 % derating to 85 degrees: KEMET derating guidelines. 12 V rail -> 24 V least.
    [Fact]
    public void A_tantalum_on_twelve_volts_wants_twenty_four() => Assert.Equal(24m, Tantalum.LeastRatedVolts(12m).Value.Value);

    // Category voltage falls to 2/3 at 125 degrees: from memory.
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
