using Ohmstead.Electronics.Parts;

namespace Ohmstead.Electronics.Tests.Parts;

public sealed class PartLimitTests
{
    // (R2-R1)/R1 (234.5 + T1) - (T2 - T1): IEC 60335-1 clause 11, from memory; 10.0 to 12.0 ohm, 20 degrees, room 22.
    [Fact]
    [Trait("CheckValue", "CV37")]
    public void A_winding_tells_its_own_temperature() => Assert.Equal(48.9m, CopperRise.Kelvin(10.0m, 12.0m, 20m, 22m).Value.Value);

    // UL/CSA: T = (R/r)(k + t) - k with k = 234.5 for copper: 10 Ω at 20 °C, 12 Ω hot is 1.2 x 254.5 - 234.5 = 70.9 °C, 45.9 K above a room
    // of 25 °C.
    [Fact]
    public void A_winding_is_as_hot_as_the_change_of_its_resistance_says() =>
        Assert.Equal(45.9m, CopperRise.Kelvin(10.0m, 12.0m, 20m, 25m).Value.Value);

    [Fact]
    public void A_winding_of_two_thousand_degrees_is_two_readings_of_two_things() =>
        Assert.Equal(
            "that is a winding at 2311 degrees, expected -60 to 300: the two readings are not of one whole winding",
            CopperRise.Kelvin(10.0m, 100m, 20m, 20m).Refusal
        );

    // SV24: 7 MΩ, 2 MΩ and 1 MΩ are three requirements; words that give one alone would call 5 MΩ both good and bad.
    [Fact]
    public void The_words_for_a_mains_transformer_name_each_requirement() =>
        Assert.Contains(
            "7 MΩ over reinforced insulation, 2 MΩ as class II and 1 MΩ as class I in service: say by which",
            AcceptLimit.Find("mains transformer")!.Accept,
            StringComparison.Ordinal
        );

    // (f - f0)/f0, by hand calculator.
    [Theory]
    [Trait("CheckValue", "CV38")]
    [InlineData("3579600", "3579545.45", 15.24)]
    [InlineData("4433700", "4433618.75", 18.33)]
    [InlineData("32765", "32768", -91.55)]
    public void A_crystal_is_off_by_parts_in_a_million(string measured, string nominal, double ppm) =>
        Assert.Equal(ppm, (double)PartsPerMillion.Compute(Exact.Of(measured), Exact.Of(nominal)).Value.Value, 0.01);

    // 32 765 Hz for 32 768 Hz: 7.91 s a day slow.
    [Fact]
    public void Three_hertz_of_a_watch_crystal_are_eight_seconds_a_day() =>
        Assert.Equal(-7.91, (double)PartsPerMillion.SecondsADay(PartsPerMillion.Compute(32_765m, 32_768m).Value.Value), 5e-3);

    // 100 kohm, 350 ppm/K, 10 K: 350 ohm. 10 kohm, 100 ppm/K, 20 K: 20 ohm.
    [Theory]
    [InlineData("100000", "350", "10", "350")]
    [InlineData("10000", "100", "20", "20")]
    public void A_temperature_coefficient_moves_a_resistance(string ohms, string ppm, string kelvin, string change) =>
        Assert.Equal(Exact.Of(change), PartsPerMillion.TemperatureChangeOhms(Exact.Of(ohms), Exact.Of(ppm), Exact.Of(kelvin)).Value.Value);

    // 1.8432 MHz / 12 / 16 = 9600.0; 2.0000 MHz / 13 / 16 = 9615.4, +0.16 %.
    [Theory]
    [InlineData("1843200", "12", 0)]
    [InlineData("2000000", "13", 0.0016)]
    public void A_divided_clock_hits_a_baud_rate_or_nearly(string clock, string divisor, double error) =>
        Assert.Equal(error, (double)PartsPerMillion.BaudError(Exact.Of(clock), Exact.Of(divisor), 16m, 9600m).Value.Value, 5e-5);

    // 10 Mohm on 1 Mohm: 0.9091; 20 kohm/V on its 50 V range on 470 kohm: 0.680, so 100 V in the drawing are 147 V unloaded.
    [Fact]
    public void An_old_drawing_shows_what_an_old_meter_showed()
    {
        Assert.Equal(0.9091, (double)MeterLoading.Share(10_000_000m, 1_000_000m).Value.Value, 5e-5);
        decimal old = MeterLoading.MeterOhms(20_000m, 50m).Value;
        Assert.Equal(0.680, (double)MeterLoading.Share(old, 470_000m).Value.Value, 5e-4);
        Assert.Equal(147, (double)MeterLoading.Translate(100m, old, 1_000_000_000_000m, 470_000m).Value.Value, 0.1);
    }

    // Suffix letters: data sheets of 1N4728A (SMC, Taiwan Semiconductor), 1N746 (VPT) and 1N5221 (Digitron); A and B of 1N5221 and Pro
    // Electron from memory.
    [Theory]
    [InlineData(ZenerSeries.Jedec4728, 'C', "0.02")]
    [InlineData(ZenerSeries.Jedec4728, 'D', "0.01")]
    [InlineData(ZenerSeries.Jedec746, 'C', "0.02")]
    [InlineData(ZenerSeries.Jedec746, 'd', "0.01")]
    [InlineData(ZenerSeries.Jedec5221, 'C', "0.02")]
    [InlineData(ZenerSeries.Jedec5221, 'D', "0.01")]
    [InlineData(ZenerSeries.Jedec4728, null, "0.10")]
    [InlineData(ZenerSeries.Jedec4728, 'A', "0.05")]
    [InlineData(ZenerSeries.Jedec5221, 'A', "0.10")]
    [InlineData(ZenerSeries.Jedec5221, 'B', "0.05")]
    [InlineData(ZenerSeries.ProElectron, 'c', "0.05")]
    public void The_same_letter_means_different_tolerances(ZenerSeries series, char? suffix, string fraction) =>
        Assert.Equal(Exact.Of(fraction), ZenerTolerance.For(series, suffix).Value.Value);

    [Fact]
    public void An_unknown_suffix_is_refused() =>
        Assert.Equal("suffix B has no known tolerance in this series", ZenerTolerance.For(ZenerSeries.Jedec746, 'B').Refusal);

    // Carbon film: its mark and 2 % of ageing, common practice.
    [Fact]
    public void An_aged_carbon_film_gets_two_per_cent_more()
    {
        AcceptLimit film = AcceptLimit.All.Single(l => l.Part == "carbon film resistor");
        Assert.Equal((93_000m, 107_000m), film.Range(100_000m, 0.05m).Value.Value);
    }

    [Fact]
    public void A_part_without_a_usual_figure_is_refused() =>
        Assert.Equal("no usual figure is known for a crystal", AcceptLimit.All.Single(l => l.Part == "crystal").Range(1m, 0.1m).Refusal);

    [Fact]
    public void A_crystal_that_is_fine_for_logic_can_be_wrong_for_colour()
    {
        Assert.True(CrystalLimit.All[0].Holds(-91.55m));
        Assert.False(CrystalLimit.All.Single(limit => limit.Use == "colour subcarrier").Holds(-91.55m));
    }

    // ±100 ppm are 8.64 s a day: fine where it clocks logic, not where it keeps the time of day (±20 ppm, 1.73 s a day; common practice).
    [Fact]
    public void A_crystal_that_is_fine_for_logic_does_not_keep_the_time_of_day()
    {
        CrystalLimit timekeeping = CrystalLimit.All.Single(limit => limit.Use == "clock that keeps the time of day");
        Assert.True(timekeeping.Holds(20m));
        Assert.False(timekeeping.Holds(20.1m));
        Assert.Equal(1.728m, PartsPerMillion.SecondsADay(timekeeping.PartsPerMillion));
        Assert.Contains("±20 ppm where it keeps the time of day", AcceptLimit.Find("crystal")!.Accept, StringComparison.Ordinal);
    }
}
