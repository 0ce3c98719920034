using Ohmstead.Report.Drawings;

namespace Ohmstead.Report.Tests.Drawings;

public class TimeScaleTests
{
    // 2024 is a leap year: 366 days, and 2 July is the 183rd after 1 January.
    [Fact]
    public void Days_are_spread_evenly() =>
        Assert.Equal(
            [10m, 60m, 110m],
            new[] { new DateOnly(2024, 1, 1), new DateOnly(2024, 7, 2), new DateOnly(2025, 1, 1) }.Select(
                new TimeScale(new(2024, 1, 1), new(2025, 1, 1), 10, 110).At
            )
        );

    [Fact]
    public void A_day_beyond_the_end_is_drawn_at_the_end() =>
        Assert.Equal(110m, new TimeScale(new(2024, 1, 1), new(2025, 1, 1), 10, 110).At(new(2030, 1, 1)));

    [Fact]
    public void Years_that_begin_inside_are_written() =>
        Assert.Equal([2025, 2026, 2027], new TimeScale(new(2024, 3, 16), new(2027, 11, 1), 0, 100).Years().Select(day => day.Year));

    [Fact]
    public void Of_many_years_at_most_six_round_ones_are_written() =>
        Assert.Equal(
            [1980, 1990, 2000, 2010, 2020],
            new TimeScale(new(1978, 1, 1), new(2024, 6, 1), 0, 100).Years().Select(day => day.Year)
        );

    [Fact]
    public void Within_one_year_none_is_written() => Assert.Empty(new TimeScale(new(2026, 2, 1), new(2026, 9, 1), 0, 100).Years());

    [Fact]
    public void A_scale_of_one_day_draws_it_at_the_start() =>
        Assert.Equal(5m, new TimeScale(new(2026, 2, 1), new(2026, 2, 1), 5, 100).At(new(2026, 2, 1)));
}
