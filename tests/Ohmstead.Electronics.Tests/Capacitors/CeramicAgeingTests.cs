using CsCheck;
using Ohmstead.Electronics.Capacitors;

namespace Ohmstead.Electronics.Tests.Capacitors;

public sealed class CeramicAgeingTests
{
    private const double ThirtyYears = 262_800;

    // C(t) = C(1 h)(1 - k log10 t), rate 2.5 % a decade for X7R: makers' ageing notes after EIA-198; 30 years are 262 800 h.
    [Fact]
    [Trait("CheckValue", "CV24")]
    public void An_x7r_of_thirty_years_keeps_86_per_cent() =>
        Assert.Equal(0.8645, CeramicAgeing.ShareLeft(0.025, ThirtyYears).Value.Value, 1e-4);

    // 7 % a decade, same form, by hand calculator.
    [Fact]
    public void A_z5u_of_thirty_years_keeps_62_per_cent() =>
        Assert.Equal(0.6206, CeramicAgeing.ShareLeft(0.07, ThirtyYears).Value.Value, 1e-4);

    // From the 1000 h reference to 30 years: plain 0.9395 and 0.8306, multiplicative 0.9406 and 0.8390, by hand calculator.
    [Theory]
    [InlineData(0.025, 0.9395, 0.9406)]
    [InlineData(0.07, 0.8306, 0.8390)]
    public void The_two_forms_agree_to_one_per_cent_from_the_reference_hour(double rate, double plain, double multiplicative)
    {
        double hours = ThirtyYears / 1000;
        Assert.Equal(plain, CeramicAgeing.ShareLeft(rate, hours).Value.Value, 1e-4);
        Assert.Equal(multiplicative, CeramicAgeing.ShareLeftMultiplicative(rate, hours).Value.Value, 1e-4);
    }

    [Fact]
    public void A_ceramic_never_gains_by_waiting() =>
        Gen.Select(Gen.Double[0, 0.2], Gen.Double[1, 1e6], Gen.Double[1, 100])
            .Sample(
                (rate, hours, later) =>
                    CeramicAgeing.ShareLeft(rate, hours * later).Value.Value <= CeramicAgeing.ShareLeft(rate, hours).Value.Value
            );

    [Fact]
    public void Less_than_an_hour_after_the_iron_is_too_early_to_judge() =>
        Assert.Equal("hours since the last heat is 0.5, expected 1 to 1000000000", CeramicAgeing.ShareLeft(0.025, 0.5).Refusal);
}
