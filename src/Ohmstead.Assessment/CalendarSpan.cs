namespace Ohmstead.Assessment;

/// <summary>Adds a written duration to a day as a person does: months and years by the calendar, anything else in whole days.</summary>
public static class CalendarSpan
{
    private const decimal SecondsPerDay = 86_400m;
    private const decimal DaysPerMonth = 365.25m / 12m;
    private const int MostMonths = 1_200;
    private const int MostDays = 36_500;

    /// <summary>The day that lies a duration after another one; a part of a day counts as a day, and 100 years are the most.</summary>
    /// <param name="day">The day to count from.</param>
    /// <param name="seconds">The duration in seconds, not negative.</param>
    public static DateOnly After(DateOnly day, decimal seconds)
    {
        var days = Math.Max(seconds, 0m) / SecondsPerDay;
        var months = days / DaysPerMonth;
        return months >= 1m && months == Math.Floor(months)
            ? day.AddMonths((int)Math.Min(months, MostMonths))
            : day.AddDays((int)Math.Min(Math.Ceiling(days), MostDays));
    }
}
