using CsCheck;
using Ohmstead.Electronics.Life;

namespace Ohmstead.Electronics.Tests.Life;

public sealed class MakersLifeFormsTests
{
    // Rubycon life formula, 105 degrees and lower: 2000 h at 105, rated rise 5 K; rows by hand calculator.
    [Theory]
    [Trait("CheckValue", "CV33")]
    [InlineData(65, 1.0, 32_000)]
    [InlineData(65, 0.5, 43_483.5)]
    [InlineData(55, 0.7, 79_365.7)]
    [InlineData(65, 1.5, 16_069.0)]
    public void Less_ripple_than_rated_lengthens_life_in_the_ripple_form(double ambient, double rippleShare, double hours) =>
        Assert.Equal(hours, MakersLifeForms.RippleForm(2000, 105, ambient, 5, rippleShare).Value.ComputedHours, 0.5);

    // Albertsen, Electrolytic Capacitor Lifetime Estimation: K_T K_R K_V; by hand calculator.
    [Fact]
    [Trait("CheckValue", "CV34")]
    public void The_three_factor_form_is_capped_like_the_rest()
    {
        LifeEstimate life = MakersLifeForms.ThreeFactorForm(5000, 105, 65, 5, 0.8, 0.8).Value;
        Assert.Equal(158_325, life.ComputedHours, 1.0);
        Assert.Equal(131_400, life.Hours);
    }

    // Over-ripple of 1.2 on a 105 degree part: base 4, factor 0.73713, by hand calculator.
    [Fact]
    public void Ripple_over_its_rating_costs_life_twice_as_fast() => Assert.Equal(0.73713, MakersLifeForms.RippleFactor(105, 5, 1.2), 1e-5);

    // Mv = 4.3 - 3.3 Va/Vr, from memory of an application guide.
    [Theory]
    [InlineData(1.0, 1.00)]
    [InlineData(0.9, 1.33)]
    [InlineData(0.8, 1.66)]
    [InlineData(0.7, 1.99)]
    [InlineData(0.5, 2.65)]
    public void The_core_form_takes_credit_for_low_voltage(double voltageShare, double factor) =>
        Assert.Equal(1000 * factor, MakersLifeForms.CoreForm(1000, 95, 95, voltageShare).Value.ComputedHours, 1e-6);

    // 2000 h 105 degree 25 V part at 65 degrees and 20 V: 40 000 h, by hand.
    [Fact]
    public void The_linear_voltage_form_agrees_with_hand_working() =>
        Assert.Equal(40_000, MakersLifeForms.LinearVoltageForm(2000, 105, 65, 0.8).Value.ComputedHours, 1e-6);

    // 10 000 h at 85 degrees, case at 75: 40 000 h, Kendeil.
    [Fact]
    public void The_case_form_agrees_with_hand_working() =>
        Assert.Equal(40_000, MakersLifeForms.CaseForm(10_000, 85, 75).Value.ComputedHours, 1e-6);

    // (400/350)^n, by hand calculator.
    [Theory]
    [InlineData(2.5, 1.396)]
    [InlineData(3, 1.493)]
    [InlineData(5, 1.950)]
    [InlineData(0, 1)]
    public void Makers_disagree_on_the_power_of_voltage(double exponent, double factor) =>
        Assert.Equal(factor, MakersLifeForms.VoltageFactor(350.0 / 400, exponent).Value, 5e-4);

    [Fact]
    public void A_core_that_would_boil_is_refused() =>
        Assert.Equal("rise of the core is 45, expected 0 to 39", MakersLifeForms.RippleForm(2000, 105, 65, 5, 3).Refusal);

    [Fact]
    public void At_its_rating_the_ripple_form_is_the_bare_rule() =>
        Gen.Select(Gen.Double[100, 10_000], Gen.Double[40, 105], Gen.Double[1, 10])
            .Sample(
                (rated, celsius, rise) =>
                    Math.Abs(
                        MakersLifeForms.RippleForm(rated, 105, celsius, rise, 1).Value.ComputedHours
                            / TenKelvinRule.Hours(rated, 105, celsius).Value.ComputedHours
                            - 1
                    ) < 1e-12
            );
}
