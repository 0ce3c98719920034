using Ohmstead.Electronics.Supplies;

namespace Ohmstead.Electronics.Tests.Supplies;

public sealed class SupplyTests
{
    // 12 V winding, 20 % regulation, +10 % mains, bridge 1.4 V; by hand calculator.
    [Fact]
    [Trait("CheckValue", "CV40")]
    public void An_unloaded_twelve_volt_supply_reaches_twenty_one() =>
        Assert.Equal(21.00, (double)NoLoadPeak.Volts(12m, 0.20m, 0.10m, 1.4m).Value.Value, 0.01);

    // 300-0-300 V cold: 424.3 V, at +10 % 466.7 V; by hand calculator.
    [Theory]
    [InlineData("0", 424.3)]
    [InlineData("0.10", 466.7)]
    public void A_cold_valve_supply_is_over_its_450_volt_can_on_high_mains(string high, double volts) =>
        Assert.Equal(volts, (double)NoLoadPeak.Volts(300m, 0m, Exact.Of(high), 0m).Value.Value, 0.05);

    // R <= 6 pi f L: Radiotron Designer's Handbook, 4th edition, chapter 30, from memory. 10 H at 50 Hz: 9425 ohm.
    [Fact]
    public void A_choke_of_ten_henry_needs_a_load_under_nine_kilohm() =>
        Assert.Equal(9425, (double)ChokeInput.LargestLoadOhms(10m, 50m).Value.Value, 0.5);

    // 5 V at 2 A: 2.5 ohm, 10 W of heat, a 25 W part (common practice).
    [Fact]
    public void A_dummy_load_names_its_resistor()
    {
        DummyLoad load = DummyLoad.For(5m, 10m).Value.Value;
        Assert.Equal(new DummyLoad(2.5m, 2m, 10m, 25m), load);
    }

    // Ranges from memory of the families' data books.
    [Theory]
    [InlineData("TTL 74, 74LS, 74S", "4.75", true)]
    [InlineData("TTL 74, 74LS, 74S", "4.7499", false)]
    [InlineData("ECL 10K", "-5.72", true)]
    [InlineData("ECL 10K", "-5.73", false)]
    [InlineData("RTL", "3.24", true)]
    [InlineData("early desktop supply, -12 V", "-13.2", true)]
    [InlineData("early desktop supply, -12 V", "-10.92", true)]
    [InlineData("early desktop supply, -12 V", "-10.9", false)]
    [InlineData("early desktop supply, +5 V", "4.8", true)]
    [InlineData("mains 230 V", "253", true)]
    [InlineData("mains 230 V", "206", false)]
    [InlineData("valve heater 6.3 V, absolute", "6.87", true)]
    [InlineData("valve heater 6.3 V, good", "5.985", true)]
    [InlineData("valve heater 6.3 V, good", "6.616", false)]
    [InlineData("valve heater 6.3 V, British practice", "6.741", true)]
    [InlineData("valve heater 6.3 V, British practice", "6.9", false)]
    [InlineData("valve heater 6.3 V, absolute", "6.930", true)]
    [InlineData("valve heater 6.3 V, absolute", "7.0", false)]
    public void A_rail_exactly_on_its_limit_is_inside(string family, string volts, bool holds) =>
        Assert.Equal(holds, RailLimits.All.Single(r => r.Family == family).Holds(Exact.Of(volts)));

    [Fact]
    public void Every_range_holds_its_own_nominal_and_names_a_source() => Assert.All(RailLimits.All, r =>
        {
            Assert.True(r.Holds(r.NominalVolts));
            Assert.NotEmpty(r.Source.Text);
        });

    [Fact]
    public void No_rail_is_listed_twice() => Assert.Distinct(RailLimits.All.Select(r => r.Family));

    // 7805C: 4.75 to 5.25 V over line, load and temperature; least input 7.5 V: Texas Instruments LM340, SNOSBT0L (Fairchild LM78XX says 7
    // V).
    [Theory]
    [InlineData("9", "5.0", RegulatorState.InRange)]
    [InlineData("9", "5.30", RegulatorState.OutputTooHigh)]
    [InlineData("9", "5.25", RegulatorState.InRange)]
    [InlineData("9", "5.26", RegulatorState.OutputTooHigh)]
    [InlineData("9", "4.75", RegulatorState.InRange)]
    [InlineData("9", "4.74", RegulatorState.OutputTooLow)]
    [InlineData("6", "4.2", RegulatorState.InputTooLow)]
    [InlineData("9", "4.2", RegulatorState.OutputTooLow)]
    [InlineData("7.49", "4.9", RegulatorState.HeadroomMissing)]
    [InlineData("7.5", "4.9", RegulatorState.InRange)]
    [InlineData("7.2", "4.2", RegulatorState.InputTooLow)]
    public void A_regulator_is_judged_with_its_input_beside_it(string input, string output, RegulatorState expected) =>
        Assert.Equal(expected, LinearRegulator.All[0].Judge(Exact.Of(input), Exact.Of(output)));

    [Fact]
    public void A_negative_regulator_that_runs_away_is_too_high() =>
        Assert.Equal(RegulatorState.OutputTooHigh, LinearRegulator.All.Single(r => r.Part == "7905C").Judge(-9m, -6m));

    // 12 V in, 5 V out, 0.8 A: 5.6 W.
    [Fact]
    public void A_series_regulator_turns_the_rest_into_heat() =>
        Assert.Equal(5.6m, LinearRegulator.DissipationWatts(12m, 5m, 0.8m).Value.Value);

    [Fact]
    public void Ripple_eats_half_its_height_of_the_headroom() =>
        Assert.Equal(0.5m, LinearRegulator.All[0].HeadroomVolts(9.0m, 2m).Value.Value);

    // The stricter of two makers' sheets: Texas Instruments SNOSBT0L 7.5, 14.6 and 17.7 V.
    [Theory]
    [InlineData("7805C", "7.5")]
    [InlineData("7812C", "14.6")]
    [InlineData("7815C", "17.7")]
    public void The_greater_least_input_of_two_makers_counts(string part, string volts) =>
        Assert.Equal(Exact.Of(volts), LinearRegulator.Find(part)!.LeastInputVolts);

    [Theory]
    [InlineData("5", "12", "12 V out of 5 V: a series regulator gives less than it gets")]
    [InlineData("-12", "5", "5 V out of -12 V: a series regulator does not turn the sign")]
    public void A_series_regulator_only_takes_away(string input, string output, string refusal) =>
        Assert.Equal(refusal, LinearRegulator.DissipationWatts(Exact.Of(input), Exact.Of(output), 1m).Refusal);

    [Fact]
    public void A_ripple_is_not_higher_than_what_it_rides_on() =>
        Assert.Equal("a ripple of 100 V does not go with a mean of 12 V", LinearRegulator.All[0].HeadroomVolts(12m, 100m).Refusal);

    // JEDEC 13-B asks for at least 18 V, National and Fairchild parts have 18 V: the 20 V of others would kill them.
    [Fact]
    public void A_cmos_rail_counts_with_the_lower_absolute_maximum() =>
        Assert.Contains("absolute maximum 18 V", RailLimits.All.Single(r => r.Family == "CMOS 4000B").Note, StringComparison.Ordinal);

    // Intel ATX12V Power Supply Design Guide 2.0: -5 V and -12 V ±10 %, the others ±5 %; ripple 120 mV on 12 V, 100 mV on -5 V, 50 mV else.
    [Theory]
    [InlineData("ATX, -5 V", "-5.5", true)]
    [InlineData("ATX, -5 V", "-5.51", false)]
    [InlineData("ATX, +5 V standby", "4.75", true)]
    [InlineData("ATX, +5 V standby", "4.74", false)]
    [InlineData("TTL 74F", "4.5", true)]
    [InlineData("TTL 74F", "4.49", false)]
    public void A_rail_of_a_maker_s_guide_keeps_its_range(string family, string volts, bool holds) =>
        Assert.Equal(holds, RailLimits.All.Single(r => r.Family == family).Holds(Exact.Of(volts)));

    [Theory]
    [InlineData("ATX -12 V", "0.120")]
    [InlineData("ATX -5 V", "0.100")]
    [InlineData("ATX 5 V standby", "0.050")]
    public void A_rail_of_a_maker_s_guide_keeps_its_ripple(string rail, string volts) =>
        Assert.Equal(Exact.Of(volts), RippleLimit.All.Single(r => r.Rail == rail).UsualVolts);

    [Fact]
    public void A_load_under_a_tenth_is_no_load() =>
        Assert.Equal("share of the rated current is 0.09, expected 0.1 to 1", DummyLoad.For(5m, 10m, 0.09m).Refusal);

    [Fact]
    public void A_diode_drop_above_the_peak_rectifies_nothing() =>
        Assert.Equal(
            "a diode drop of 100 V is not under the peak of a winding of 1 V: nothing is rectified",
            NoLoadPeak.Volts(1m, 1m, 1m, 100m).Refusal
        );

    // Logic 5 V: 50 mV (1 %), common practice.
    [Fact]
    public void A_ripple_limit_may_go_with_the_rail()
    {
        Assert.Equal(0.050m, RippleLimit.All[0].UsualFor(5m));
        Assert.Equal(2m, RippleLimit.All.Single(r => r.Rail == "unregulated reservoir").UsualFor(20m));
    }

    // A GZ37 is sold in the place of a GZ34 and bears 4 µF, a fifteenth of it: Mullard data sheet, as indexed. 5U4: 40 µF, Emission Labs
    // data sheet.
    [Fact]
    public void A_valve_that_is_sold_for_another_bears_less()
    {
        Assert.Equal(0.000004m, ValveRectifier.All.Single(valve => valve.Type == "GZ37").LargestInputFarads);
        Assert.Equal(0.000040m, ValveRectifier.All.Single(valve => valve.Type == "5U4").LargestInputFarads);
    }

    // One valve under its European and its American name; 60 µF to the first capacitor: RCA and Mullard data sheets, as indexed.
    [Fact]
    public void A_valve_rectifier_bears_as_much_under_either_of_its_names()
    {
        Assert.Equal(0.000060m, ValveRectifier.All.Single(valve => valve.Type == "GZ34").LargestInputFarads);
        Assert.Equal(0.000060m, ValveRectifier.All.Single(valve => valve.Type == "5AR4").LargestInputFarads);
    }
}
