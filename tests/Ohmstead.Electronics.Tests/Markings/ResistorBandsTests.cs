using Ohmstead.Electronics.Markings;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Tests.Markings;

public class ResistorBandsTests
{
    [Fact]
    [Trait("CheckValue", "CV06")]
    public void Yellow_violet_red_gold_is_4700_ohm_five_per_cent()
    {
        var resistor = Single("yellow violet red gold"); // IEC 60062, worked example as published
        Assert.Equal("4.7 kΩ", QuantityText.Format(resistor.Nominal));
        Assert.Equal("4.465 kΩ … 4.935 kΩ", resistor.Limits.ToString());
    }

    [Fact]
    [Trait("CheckValue", "CV07")]
    public void Red_violet_green_gold_is_2_7_megohm_five_per_cent()
    {
        var resistor = Single("red violet green gold"); // IEC 60062, worked example as published
        Assert.Equal("2.7 MΩ", QuantityText.Format(resistor.Nominal));
        Assert.Equal("2.565 MΩ … 2.835 MΩ", resistor.Limits.ToString());
    }

    [Theory] // IEC 60062; the second as published
    [InlineData("red red orange gold", "22 kΩ", "±5 %")]
    [InlineData("brown black black silver brown", "1 Ω", "±1 %")]
    [InlineData("orange orange gold silver", "3.3 Ω", "±10 %")]
    [InlineData("brown grey pink gold", "18 mΩ", "±5 %")]
    [InlineData("yellow purple orange", "47 kΩ", "±20 %")]
    [InlineData("black", "0 Ω", "±0 %")]
    public void The_first_reading_from_a_known_start_is_the_value(string bands, string value, string tolerance)
    {
        var first = ResistorBands.Parse(bands, BandStart.Known).Value.Readings[0].Value;
        Assert.Equal((value, tolerance), (QuantityText.Format(first.Nominal), first.Tolerance.ToString()));
    }

    [Fact]
    public void A_fifth_band_behind_gold_can_be_a_failure_level_and_both_readings_stand()
    {
        // MIL-R-39008, from memory: 1 kΩ 5 %, 1 % per 1000 h; read as a precision part it is 10.2 Ω 1 %.
        var readings = ResistorBands.Parse("brown black red gold brown", BandStart.Known).Value.Readings;
        Assert.Equal(["10.2 Ω", "1 kΩ"], readings.Select(reading => QuantityText.Format(reading.Value.Nominal)));
        Assert.Equal([null, 0.01m], readings.Select(reading => reading.Value.FailureRate));
        Assert.Equal(["±1 %", "±5 %"], readings.Select(reading => reading.Value.Tolerance.ToString()));
    }

    [Fact]
    public void Brown_black_black_gold_brown_is_10_ohm_one_per_cent_first() =>
        // as published
        Assert.Equal("10 Ω", QuantityText.Format(ResistorBands.Parse("brown black black gold brown").Value.Readings[0].Value.Nominal));

    [Fact]
    public void Grey_as_a_tolerance_keeps_what_the_editions_say()
    {
        var readings = ResistorBands.Parse("brown red orange black grey", BandStart.Known).Value.Readings;
        Assert.Equal(["±0.01 %", "±0.05 %", "±10 %"], readings.Select(reading => reading.Value.Tolerance.ToString()));
        Assert.Equal(3, readings.Select(reading => reading.Source).Distinct().Count());
    }

    [Fact]
    public void Yellow_as_a_tolerance_can_be_five_per_cent_on_a_high_voltage_part() =>
        Assert.Equal(
            ["±0.02 %", "±5 %"],
            ResistorBands
                .Parse("brown green yellow yellow", BandStart.Known)
                .Value.Readings.Select(reading => reading.Value.Tolerance.ToString())
        );

    [Fact]
    public void Bands_that_make_sense_both_ways_are_read_both_ways()
    {
        var readings = ResistorBands.Parse("yellow violet red").Value.Readings;
        Assert.Equal(["4.7 kΩ", "270 kΩ"], readings.Select(reading => QuantityText.Format(reading.Value.Nominal)));
        Assert.Equal([false, true], readings.Select(reading => reading.Value.IsReversed));
    }

    [Fact]
    public void Gold_at_the_front_shows_that_the_part_is_the_wrong_way_round()
    {
        var resistor = Single("gold red violet yellow");
        Assert.True(resistor.IsReversed);
        Assert.Equal("4.7 kΩ", QuantityText.Format(resistor.Nominal));
    }

    [Fact]
    public void A_sixth_band_is_the_temperature_coefficient()
    {
        var reading = Assert.Single(ResistorBands.Parse("red violet green black brown red", BandStart.Known).Value.Readings);
        // IEC 60062: red 50 × 10^-6 per kelvin
        Assert.Equal((275m, 0.00005m), (reading.Value.Nominal.Value, reading.Value.TemperatureCoefficient));
    }

    [Fact]
    public void A_value_outside_the_series_is_a_hint_only()
    {
        // 500 kΩ, older than the series
        Assert.False(ResistorBands.Parse("green black yellow gold", BandStart.Known).Value.Readings[0].Value.IsPreferred);
        Assert.True(Single("yellow violet red gold").IsPreferred);
    }

    [Theory]
    [InlineData("gold gold gold gold")]
    [InlineData("black red")]
    [InlineData("red")]
    [InlineData("black black black")]
    [InlineData("mauve red red")]
    [InlineData("")]
    [InlineData("red red red red red red red")]
    public void What_is_no_resistor_is_a_fault(string bands) => Assert.NotNull(ResistorBands.Parse(bands, BandStart.Known).Fault?.Message);

    [Fact]
    public void Body_yellow_end_violet_dot_orange_is_47_kilohm()
    {
        // RMA, from memory
        var marked = Assert.Single(BodyEndDot.Read(BandColour.Yellow, BandColour.Violet, BandColour.Orange).Value.Readings).Value;
        Assert.Equal(("47 kΩ", "±20 %"), (QuantityText.Format(marked.Nominal), marked.Tolerance.ToString()));
        Assert.Equal(
            "±10 %",
            BodyEndDot
                .Read(BandColour.Yellow, BandColour.Violet, BandColour.Orange, BandColour.Silver)
                .Value.Readings[0]
                .Value.Tolerance.ToString()
        );
        Assert.NotNull(BodyEndDot.Read(BandColour.Yellow, BandColour.Gold, BandColour.Orange).Fault);
    }

    private static BandedResistor Single(string bands) => Assert.Single(ResistorBands.Parse(bands).Value.Readings).Value;
}
