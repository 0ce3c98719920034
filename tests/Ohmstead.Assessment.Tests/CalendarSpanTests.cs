using System.Globalization;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests;

/// <summary>Counted on a calendar by hand.</summary>
public sealed class CalendarSpanTests
{
    [Theory]
    [InlineData("2024-09-12", "12 months", "2025-09-12")]
    [InlineData("2023-01-10", "24 months", "2025-01-10")]
    [InlineData("2024-02-29", "1 year", "2025-02-28")]
    [InlineData("2026-01-31", "1 month", "2026-02-28")]
    [InlineData("2026-03-14", "10 d", "2026-03-24")]
    [InlineData("2026-03-14", "36 h", "2026-03-16")]
    public void A_duration_is_added_as_a_person_counts_it(string day, string duration, string expected)
    {
        var board = Worked.Board("bench:\n  - date: " + day + "\n    work:\n      - { at: board, did: washed, dry: " + duration + " }");
        var dry = board.Visits[0].Work[0].Dry!.Value.Value;
        Assert.Equal(Day(expected), CalendarSpan.After(Day(day), dry));
    }

    [Fact]
    public void A_duration_without_end_is_cut_at_a_hundred_years() =>
        Assert.True(CalendarSpan.After(Day("2026-03-14"), decimal.MaxValue) <= Day("2126-03-14"));

    private static DateOnly Day(string text) => DateOnly.ParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture);
}
