using Ohmstead.Assessment.Years;

namespace Ohmstead.Assessment.Tests.Years;

/// <summary>The days at whose ends a collection is counted, written from a calendar.</summary>
public sealed class PastDaysTests
{
    [Fact]
    public void The_last_eight_quarters_stand_behind_the_years_before_them()
    {
        var days = PastDays.Until(new(2026, 11, 30));
        string[] told = [.. days.TakeLast(12).Select(day => day.ToString("o", null))];
        Assert.Equal(
            [
                "2021-12-31",
                "2022-12-31",
                "2023-12-31",
                "2024-12-31",
                "2025-03-31",
                "2025-06-30",
                "2025-09-30",
                "2025-12-31",
                "2026-03-31",
                "2026-06-30",
                "2026-09-30",
                "2026-11-30",
            ],
            told
        );
        Assert.Equal(29, days.Length);
        Assert.Equal(new(2004, 12, 31), days[0]);
    }

    [Theory]
    [InlineData("2026-09-30", "2026-06-30")]
    [InlineData("2026-10-01", "2026-09-30")]
    [InlineData("2026-12-31", "2026-09-30")]
    [InlineData("2024-02-29", "2023-12-31")]
    public void A_quarter_that_is_under_way_ends_today(string today, string before)
    {
        var days = PastDays.Until(DateOnly.Parse(today, null));
        Assert.Equal((DateOnly.Parse(before, null), DateOnly.Parse(today, null)), (days[^2], days[^1]));
        Assert.Equal(days, days.Distinct().Order());
    }

    [Fact]
    public void The_first_days_of_the_calendar_have_no_years_before() => Assert.Equal(new(1, 2, 1), PastDays.Until(new(1, 2, 1))[^1]);
}
