using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Report.Drawings;

namespace Ohmstead.Report.Tests.Drawings;

/// <summary>All places are worked out by hand: a strip is 96 pixels wide, a lower limit stands at 24 and an upper one at 72.</summary>
public class StripScaleTests
{
    // 470 µF ±20 % allows 376 to 564 µF, 188 µF on 48 pixels: a quarter of the room, 47 µF, is 12 pixels.
    [Theory]
    [InlineData(470, 48)]
    [InlineData(517, 60)]
    [InlineData(423, 36)]
    public void Between_two_limits_a_reading_is_drawn_where_it_lies(int microfarads, int across) =>
        Assert.Equal(across, StripScale.For(Room(376, 564), microfarads, null, 470, VerdictOutcome.Inside).At);

    [Theory]
    [InlineData(376, 29)]
    [InlineData(564, 67)]
    public void A_reading_exactly_on_its_limit_is_inside_and_its_shape_stays_off_the_stroke(int microfarads, int across) =>
        Assert.Equal(across, StripScale.For(Room(376, 564), microfarads, null, 470, VerdictOutcome.Inside).At);

    [Fact]
    public void A_reading_just_outside_is_drawn_clear_of_the_stroke_on_the_other_side() =>
        Assert.Equal(77m, StripScale.For(Room(376, 564), 565, null, 470, VerdictOutcome.Outside).At);

    // A limit of nothing at all has no size to draw by: on it a reading stands beside the stroke, above it at the end.
    [Theory]
    [InlineData(0, 67, false, VerdictOutcome.Inside)]
    [InlineData(3, 91, true, VerdictOutcome.Outside)]
    public void A_limit_of_zero_is_drawn(int reading, int across, bool isBeyond, VerdictOutcome outcome)
    {
        var drawing = StripScale.For(Room(null, 0), reading, null, null, outcome);
        Assert.Equal((across, isBeyond), (drawing.At, drawing.IsBeyond));
    }

    // 900 µF lies 336 µF above 564, at 72 + 85.8 pixels.
    [Theory]
    [InlineData(900, 91)]
    [InlineData(61, 5)]
    public void A_reading_beyond_the_strip_is_drawn_at_its_end_and_says_so(int microfarads, int across)
    {
        var drawing = StripScale.For(Room(376, 564), microfarads, null, 470, VerdictOutcome.Outside);
        Assert.Equal((across, true), (drawing.At, drawing.IsBeyond));
    }

    // U = 23.5 µF is 6 pixels to each side of 48.
    [Fact]
    public void An_uncertainty_wider_than_the_shape_is_drawn_to_scale()
    {
        var drawing = StripScale.For(Room(376, 564), 470, 23.5m, 470, VerdictOutcome.Inside);
        Assert.Equal((42m, 54m), (drawing.Low, drawing.High));
    }

    [Fact]
    public void An_uncertainty_that_the_shape_covers_is_not_drawn()
    {
        var drawing = StripScale.For(Room(376, 564), 470, 2m, 470, VerdictOutcome.Inside);
        Assert.Equal(drawing.Low, drawing.High);
    }

    // A tolerance of -10/+50 % puts 220 µF a sixth of the way from 198 to 330 µF: 24 + 8.
    [Fact]
    public void The_nominal_value_stands_where_a_lopsided_tolerance_leaves_it() =>
        Assert.Equal(32m, StripScale.For(Room(198, 330), 263.1m, null, 220, VerdictOutcome.Inside).Nominal);

    // At most 4 Ω: zero at 0, 2 Ω halfway to 72.
    [Fact]
    public void With_an_upper_limit_alone_the_scale_starts_from_zero()
    {
        var drawing = StripScale.For(Room(null, 4), 2m, null, null, VerdictOutcome.Inside);
        Assert.Equal((StripBand.AtMost, 36m, false), (drawing.Band, drawing.At, drawing.IsDecades));
    }

    // At most 10 µA: 100 nA are two decades below, 72 - 2 x 24; 1 mA would be two above, beyond the end.
    [Theory]
    [InlineData(0.1, VerdictOutcome.Inside, 24, false)]
    [InlineData(1000, VerdictOutcome.Outside, 91, true)]
    public void A_reading_decades_from_its_limit_takes_a_scale_of_decades_and_says_so(
        double microamperes,
        VerdictOutcome outcome,
        int across,
        bool isBeyond
    )
    {
        var drawing = StripScale.For(Room(null, 10), (decimal)microamperes, null, null, outcome);
        Assert.Equal((true, across, isBeyond), (drawing.IsDecades, drawing.At, drawing.IsBeyond));
    }

    // At least 2 MΩ: 4 MΩ is twice 24 pixels from zero; 200 MΩ is two decades above the limit.
    [Theory]
    [InlineData(4, 48, false)]
    [InlineData(200, 72, true)]
    public void With_a_lower_limit_alone_it_is_the_same_to_the_other_side(int megohms, int across, bool isDecades)
    {
        var drawing = StripScale.For(Room(2, null), megohms, null, null, VerdictOutcome.Inside);
        Assert.Equal((across, isDecades), (drawing.At, drawing.IsDecades));
    }

    // The new part reads 0.5 Ω of at most 4 Ω, which alone would be linear; the old one read 40 Ω, one decade above the limit: 72 + 24 is
    // the end.
    [Fact]
    public void The_part_before_is_drawn_on_the_same_scale_and_has_a_say_in_it()
    {
        var drawing = StripScale.For(Room(null, 4), 0.5m, null, null, VerdictOutcome.Inside, 40m);
        Assert.Equal((true, 91m, 50.3m), (drawing.IsDecades, drawing.Before, drawing.At));
    }

    [Fact]
    public void Without_a_limit_there_is_nothing_to_hold_a_reading_against() =>
        Assert.Equal(
            new StripDrawing(StripBand.None, 48m, 48m, 48m, null, false, false),
            StripScale.For(default, 5m, 1m, null, VerdictOutcome.NoLimit)
        );

    [Fact]
    public void A_rail_below_zero_runs_from_left_to_right_like_any_other() =>
        Assert.Equal(36m, StripScale.For(Room(-12.6m, -11.4m), -12.3m, null, -12, VerdictOutcome.Inside).At);

    [Fact]
    public void The_largest_reading_against_the_narrowest_limit_is_drawn_at_the_end() =>
        Assert.True(
            StripScale
                .For(Room(0.0000000000000000000000000001m, 0.0000000000000000000000000002m), 100m, null, null, VerdictOutcome.Outside)
                .IsBeyond
        );

    [Theory]
    [InlineData(48.04, "48")]
    [InlineData(48.25, "48.2")]
    [InlineData(60, "60")]
    public void A_place_is_written_to_a_tenth_without_a_zero_at_the_end(double place, string written) =>
        Assert.Equal(written, StripScale.Short((decimal)place).ToString(System.Globalization.CultureInfo.InvariantCulture));

    private static Interval Room(decimal? lower, decimal? upper) =>
        new(lower is { } low ? new Quantity(low, Dimension.Number) : null, upper is { } high ? new Quantity(high, Dimension.Number) : null);
}
