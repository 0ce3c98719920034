using Ohmstead.Report.Drawings;

namespace Ohmstead.Report.Tests.Drawings;

/// <summary>Scales worked out by hand.</summary>
public class ValueScaleTests
{
    // 800 to 1200 µF with a tenth of 400 at each end: 760 to 1240, 480 on 120 pixels upwards from 130; 1000 is in the middle.
    [Fact]
    public void Values_close_together_take_an_even_scale_with_a_tenth_of_room_at_each_end()
    {
        var scale = ValueScale.For([800, 1200, 936.4m], 130, 10);
        Assert.Equal((760m, 1240m, false), (scale.Low, scale.High, scale.IsDecades));
        Assert.Equal([130m, 70m, 10m], new[] { scale.At(760), scale.At(1000), scale.At(1240) });
        Assert.Equal([800m, 900m, 1000m, 1100m, 1200m], scale.Ticks);
    }

    // The smallest is under a third of the largest: from zero costs nothing.
    [Fact]
    public void Values_that_nearly_reach_zero_start_from_zero() => Assert.Equal(0m, ValueScale.For([0.1m, 0.4m], 0, 100).Low);

    // 20 mΩ to 5 Ω is a factor of 250: from 10 mΩ to 10 Ω, three decades on 90 pixels.
    [Fact]
    public void Values_that_span_decades_take_equal_steps_for_equal_factors()
    {
        var scale = ValueScale.For([0.02m, 5m], 0, 90);
        Assert.Equal((0.01m, 10m, true), (scale.Low, scale.High, scale.IsDecades));
        Assert.Equal([0m, 30m, 60m, 90m], new[] { scale.At(0.01m), scale.At(0.1m), scale.At(1m), scale.At(10m) });
        Assert.Equal([0.01m, 0.1m, 1m, 10m], scale.Ticks);
    }

    // From a factor of thirty on.
    [Theory]
    [InlineData("30", true)]
    [InlineData("29.9", false)]
    public void A_factor_of_thirty_takes_decades(string most, bool isDecades) =>
        Assert.Equal(
            isDecades,
            ValueScale.For([1m, decimal.Parse(most, System.Globalization.CultureInfo.InvariantCulture)], 0, 90).IsDecades
        );

    [Fact]
    public void Values_on_both_sides_of_zero_stay_on_an_even_scale() => Assert.False(ValueScale.For([-0.01m, 100m], 0, 100).IsDecades);

    [Fact]
    public void What_lies_beyond_is_drawn_at_the_end() =>
        Assert.Equal([0m, 90m], new[] { ValueScale.For([0.02m, 5m], 0, 90).At(0), ValueScale.For([0.02m, 5m], 0, 90).At(1000) });

    [Fact]
    public void One_value_alone_stands_in_the_middle() => Assert.Equal(50m, ValueScale.For([12m, 12m], 0, 100).At(12));

    [Theory]
    [InlineData(new double[0], false)]
    [InlineData(new[] { 0.0, 470e-6 }, true)]
    [InlineData(new[] { 1e25 }, false)]
    public void Only_values_of_a_size_that_a_bench_knows_are_drawn(double[] values, bool isDrawn) =>
        Assert.Equal(isDrawn, ValueScale.Holds([.. values.Select(value => (decimal)value)]));

    [Theory]
    [InlineData(1e-20, 1e20)]
    [InlineData(1e-20, 1.0000001e-20)]
    [InlineData(-1e20, 1e20)]
    [InlineData(0, 0)]
    public void The_widest_and_the_narrowest_scale_have_few_ticks(double least, double most) =>
        Assert.InRange(ValueScale.For([(decimal)least, (decimal)most], 0, 100).Ticks.Count, 0, 5);
}
