using Ohmstead.Electronics.Uncertainty;

namespace Ohmstead.Electronics.Tests.Uncertainty;

public sealed class AccuracySpecificationTests
{
    // a = reading x p/100 + digits x resolution; u = a / sqrt(3), JCGM 100:2008 4.3.7 (from memory); worked by hand calculator.
    [Fact]
    [Trait("CheckValue", "CV42")]
    public void A_capacitance_reading_gets_its_uncertainty_from_the_meter_sheet()
    {
        AccuracySpecification meter = new(0.5m, 5m, 0.1m);
        Worked<decimal> halfWidth = meter.HalfWidth(412.0m).Value;
        Assert.Equal(2.56m, halfWidth.Value);
        Assert.Equal("0.5 % of 412 + 5 x 0.1 = 2.56", halfWidth.Arithmetic);
        Assert.Equal(1.4780, (double)meter.StandardUncertaintyOf(412.0m).Value, 1e-4);
    }

    // 5 V rail on +/-(0.5 % + 2 digits of 10 mV), by hand calculator.
    [Fact]
    public void A_rail_reading_of_4_78_volts_is_good_to_half_a_tenth()
    {
        AccuracySpecification meter = new(0.5m, 2m, 0.01m);
        Assert.Equal(0.0439m, meter.HalfWidth(4.78m).Value.Value);
        Assert.Equal(0.0507, (double)meter.ExpandedUncertaintyOf(4.78m).Value.Value, 5e-5);
        Assert.Equal(0.0507, (double)meter.ExpandedUncertainty(4.78m).Value, 5e-5);
    }

    [Fact]
    public void The_sign_of_a_reading_does_not_change_its_uncertainty() =>
        Assert.Equal(
            new AccuracySpecification(1m, 0m, 0m).HalfWidth(5m).Value.Value,
            new AccuracySpecification(1m, 0m, 0m).HalfWidth(-5m).Value.Value
        );

    [Fact]
    public void A_fixed_part_is_added_as_it_stands() =>
        Assert.Equal(0.0284m, new AccuracySpecification(2m, 0m, 0m, 0.02m).HalfWidth(0.42m).Value.Value);

    [Fact]
    public void A_negative_accuracy_is_refused() =>
        Assert.Equal("per cent of reading is -1, expected 0 or more", new AccuracySpecification(-1m, 0m, 0m).HalfWidth(5m).Refusal);

    [Fact]
    public void An_uncertainty_without_its_working_is_refused_for_the_same_reasons()
    {
        Assert.Equal("digits is -2, expected 0 or more", new AccuracySpecification(1m, -2m, 0m).ExpandedUncertainty(5m).Refusal);
        Assert.Equal(
            "the figures are too large or too small to compute with",
            new AccuracySpecification(100m, 0m, 0m).ExpandedUncertainty(decimal.MaxValue).Refusal
        );
    }
}
