using System.Collections.Immutable;
using Ohmstead.Assessment.Years;

namespace Ohmstead.Assessment.Tests.Years;

public sealed class PastYearTests
{
    private static readonly ImmutableArray<DateOnly> Days = [new(2025, 9, 30), new(2025, 12, 31), new(2026, 11, 25)];

    [Fact]
    public void A_year_ago_is_counted_once_among_the_other_days()
    {
        Assert.Equal([new(2025, 9, 30), new(2025, 11, 25), new(2025, 12, 31), new(2026, 11, 25)], PastYear.With(Days));
        ImmutableArray<DateOnly> quarters = [new(2025, 12, 31), new(2026, 12, 31)];
        Assert.Equal(quarters, PastYear.With(quarters));
        Assert.Empty(PastYear.With([]));
    }

    [Fact]
    public void What_was_done_before_it_goes_on_to_the_next_day_and_what_was_done_since_is_that_of_the_year()
    {
        var year = PastYear.Apart([Point(2025, 9, 30, 1), Point(2025, 11, 25, 2), Point(2025, 12, 31, 4), Point(2026, 11, 25, 8)], Days);
        Assert.Equal((new DateOnly(2025, 11, 25), 12), (year.Before!.Day, year.Before.Work.Done));
        Assert.Equal([(Days[0], 1), (Days[1], 6), (Days[2], 8)], year.Points.Select(point => (point.Day, point.Work.Done)));
    }

    [Fact]
    public void A_collection_that_is_younger_has_no_year_ago()
    {
        ImmutableArray<PastPoint> points = [Point(2025, 12, 31, 4), Point(2026, 11, 25, 8)];
        var year = PastYear.Apart(points, Days);
        Assert.Null(year.Before);
        Assert.Equal(points, year.Points);
        Assert.Null(PastYear.Apart([], Days).Before);
    }

    private static PastPoint Point(int year, int month, int day, int done) => new(new(year, month, day), 3, 1, new BenchCount(1, 1, done));
}
