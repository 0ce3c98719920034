using Ohmstead.Electronics.Capacitors;

namespace Ohmstead.Electronics.Tests.Capacitors;

public sealed class ReadingConditionTests
{
    // A decade from 25 to 85 degrees (WIMA): about 0.68 for 10 K, a tenth for 60 K, ten times as much 60 K below.
    [Theory]
    [InlineData("20", 1)]
    [InlineData("30", 0.6813)]
    [InlineData("80", 0.1)]
    [InlineData("0", 2.1544)]
    public void Insulation_falls_by_a_decade_in_60_kelvin(string celsius, double share) =>
        Assert.Equal(share, (double)InsulationConditions.Share(Exact.Of(celsius)).Value.Value, 1e-4);

    // Absorption current as 1/t (Curie and von Schweidler, from memory): after 10 s a sixth is there, after one second a sixtieth.
    [Theory]
    [InlineData("60", 1)]
    [InlineData("10", 0.16667)]
    [InlineData(null, 0.016667)]
    [InlineData("600", 1)]
    public void Before_the_minute_a_sound_part_shows_a_share_of_its_insulation(string? seconds, double share) =>
        Assert.Equal(share, (double)InsulationConditions.ShareAfter(seconds is null ? null : Exact.Of(seconds)).Value, 1e-4);

    // 100 V to a rating of 500 V, 500 V from there (Vishay MKP 1848).
    [Theory]
    [InlineData("63", 10)]
    [InlineData("100", 100)]
    [InlineData("499", 100)]
    [InlineData("500", 500)]
    public void Insulation_is_read_at_a_voltage_that_goes_with_the_rating(string rated, int volts) =>
        Assert.Equal(volts, InsulationConditions.LeastVolts(Exact.Of(rated)));

    // Half at 85 degrees at the most (Cornell Dubilier, from memory): 0.5^(20/65) = 0.8079 at 40.
    [Theory]
    [InlineData("20", 1)]
    [InlineData("40", 0.8079)]
    [InlineData("85", 0.5)]
    [InlineData("105", 0.5)]
    public void A_warm_ESR_is_at_least_half_of_what_it_is_at_20_degrees(string celsius, double share) =>
        Assert.Equal(share, (double)EsrTemperature.LeastShareWarm(Exact.Of(celsius)).Value.Value, 1e-4);

    // Half at 0 degrees (TDK, from memory): 0.5^(10/20) = 0.7071 at 10.
    [Theory]
    [InlineData("0", 0.5)]
    [InlineData("10", 0.7071)]
    [InlineData("20", 1)]
    public void A_cold_electrolytic_leaks_less(string celsius, double share) =>
        Assert.Equal(share, (double)LeakageTemperature.ShareCold(Exact.Of(celsius)).Value.Value, 1e-4);

    // Ten times at 85, twelve at 125 degrees (tancap.com.cn): 10^(20/65) = 2.031 at 40.
    [Theory]
    [InlineData("40", 2.0309)]
    [InlineData("85", 10)]
    [InlineData("125", 12)]
    public void A_warm_tantalum_leaks_more(string celsius, double factor) =>
        Assert.Equal(factor, (double)Tantalum.WarmLeakageFactor(Exact.Of(celsius)).Value.Value, 1e-3);

    // SV15. Vishay 138D: 100 µF 10 V may fall to 80 µF, 100 µF 6 V to 75 µF.
    [Theory]
    [InlineData("6", "75")]
    [InlineData("8", "80")]
    [InlineData("10", "80")]
    [InlineData("15", "85")]
    [InlineData("20", "90")]
    [InlineData("50", "90")]
    public void A_wet_tantalum_may_lose_less_the_higher_its_rating(string rated, string microfarads) =>
        Assert.Equal(Exact.Of(microfarads), 100m * (1m - WetTantalum.LargestDrop(Exact.Of(rated))));
}
