using CsCheck;
using Ohmstead.Electronics.Life;

namespace Ohmstead.Electronics.Tests.Life;

public sealed class TenKelvinRuleTests
{
    // L = L0 2^((T0 - T)/10): Rubycon technical note 5-1; the rows by hand.
    [Theory]
    [Trait("CheckValue", "CV28")]
    [InlineData(2000, 105, 65, 32_000)]
    [InlineData(1000, 85, 45, 16_000)]
    [InlineData(2000, 85, 55, 16_000)]
    [InlineData(2000, 105, 60, 45_254.8)]
    public void Life_doubles_for_every_ten_kelvin_less(double rated, double ratedCelsius, double celsius, double hours) =>
        Assert.Equal(hours, TenKelvinRule.Hours(rated, ratedCelsius, celsius).Value.Hours, 0.05);

    // COSEL technical note 100: 1000 h at 105 degrees, eight hours each at 45, 55 and 65, is like 57.2 degrees throughout.
    [Fact]
    [Trait("CheckValue", "CV29")]
    public void Three_temperatures_a_day_weigh_like_one()
    {
        LifeEstimate life = TenKelvinRule.MixedDuty(1000, 105, [new(8, 45), new(8, 55), new(8, 65)]).Value;
        Assert.Equal(27_428.6, life.Hours, 0.05);
        Assert.Equal(57.2, TenKelvinRule.EquivalentCelsius(1000, 105, life.Hours).Value, 0.05);
    }

    // Beckhoff PS9011-2420-0001 documentation: 166 000 h at 40 degrees and 469 000 h at 25.
    [Fact]
    [Trait("CheckValue", "CV30")]
    public void A_published_pair_of_lives_obeys_the_rule() =>
        Assert.Equal(469_000, TenKelvinRule.Hours(166_000, 40, 25).Value.ComputedHours, 469_000 * 0.002);

    // The same documentation: at most 15 years are guaranteed, 131 400 h.
    [Fact]
    [Trait("CheckValue", "CV31")]
    public void No_life_is_counted_beyond_fifteen_years()
    {
        LifeEstimate life = TenKelvinRule.Hours(5000, 105, 55).Value;
        Assert.Equal(160_000, life.ComputedHours, 1e-6);
        Assert.Equal(131_400, life.Hours);
        Assert.True(life.IsCapped);
        Assert.Equal(15 * LifeEstimate.HoursPerYear, LifeEstimate.CapHours);
    }

    [Fact]
    public void Hours_at_several_temperatures_add_at_one_reference() =>
        Assert.Equal(100 + 400 + 50, TenKelvinRule.EquivalentHours([new(100, 45), new(200, 55), new(100, 35)], 45).Value, 1e-9);

    [Theory]
    [InlineData(75, 0)]
    [InlineData(55, 1)]
    [InlineData(25, 1)]
    [InlineData(110, 2)]
    public void The_rule_says_when_it_is_outside_its_range(double celsius, int remarks) =>
        Assert.Equal(remarks, TenKelvinRule.Hours(2000, 105, celsius).Value.Remarks.Count);

    [Fact]
    public void A_hotter_part_never_lives_longer() =>
        Gen.Select(Gen.Double[100, 10_000], Gen.Double[-20, 150], Gen.Double[0, 50])
            .Sample(
                (rated, celsius, more) =>
                    TenKelvinRule.Hours(rated, 105, celsius + more).Value.Hours <= TenKelvinRule.Hours(rated, 105, celsius).Value.Hours
            );

    [Fact]
    public void A_mix_of_one_temperature_is_that_temperature() =>
        Gen.Select(Gen.Double[100, 10_000], Gen.Double[0, 150], Gen.Double[1, 24])
            .Sample(
                (rated, celsius, hours) =>
                    Math.Abs(
                        TenKelvinRule.MixedDuty(rated, 105, [new(hours, celsius)]).Value.ComputedHours
                            / TenKelvinRule.Hours(rated, 105, celsius).Value.ComputedHours
                            - 1
                    ) < 1e-12
            );

    [Fact]
    public void A_life_of_nothing_is_refused() =>
        Assert.Equal("rated life is 0, expected a number above 0", TenKelvinRule.Hours(0, 105, 65).Refusal);

    // Ea that doubles the rate over ten kelvin, by hand calculator with k = 8.617 333 e-5 eV/K.
    [Theory]
    [Trait("CheckValue", "CV35")]
    [InlineData(75, 85, 0.7448, 1e-4)]
    [InlineData(25, 35, 0.549, 5e-4)]
    [InlineData(45, 55, 0.624, 5e-4)]
    [InlineData(95, 105, 0.832, 5e-4)]
    public void The_rule_of_ten_kelvin_hides_an_activation_energy(double cooler, double hotter, double electronVolts, double within) =>
        Assert.Equal(electronVolts, Arrhenius.EnergyForDoubling(cooler, hotter).Value, within);

    // A fixed 0.94 eV from 105 degrees down: 5.0, 12.0, 30.3, 81 and 230, against 4, 8, 16, 32 and 64 by the rule (by hand calculator).
    [Theory]
    [InlineData(85, 5.0)]
    [InlineData(75, 12.0)]
    [InlineData(65, 30.3)]
    [InlineData(55, 81)]
    [InlineData(45, 230)]
    public void A_fixed_activation_energy_promises_far_more_than_the_rule(double celsius, double factor) =>
        Assert.Equal(factor, Arrhenius.Acceleration(0.94, celsius, 105).Value, factor * 0.01);
}
