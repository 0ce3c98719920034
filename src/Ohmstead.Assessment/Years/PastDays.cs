using System.Collections.Immutable;

namespace Ohmstead.Assessment.Years;

/// <summary>The days at whose ends a collection is counted: those of the last eight quarters, of the years before, and today.</summary>
public static class PastDays
{
    private const int Quarters = 8;
    private const int MostYears = 20;
    private const int MonthsOfQuarter = 3;

    /// <summary>The days, the first one first. What lies before a collection began is left out when that is known.</summary>
    /// <param name="today">The day of this run, which is the last.</param>
    public static ImmutableArray<DateOnly> Until(DateOnly today)
    {
        var days = new List<DateOnly> { today };
        var end = EndOfQuarter(today);
        for (var left = Quarters; left > 0 && end.Year > 1; left--)
        {
            // The quarter that is under way ends today.
            end = EndOfQuarter(end.AddMonths(-MonthsOfQuarter));
            days.Add(end);
        }

        for (var year = end.Year - 1; year > Math.Max(0, end.Year - 1 - MostYears); year--)
        {
            days.Add(new(year, 12, 31));
        }

        days.Reverse();
        return [.. days];
    }

    private static DateOnly EndOfQuarter(DateOnly day)
    {
        var month = ((day.Month + MonthsOfQuarter - 1) / MonthsOfQuarter) * MonthsOfQuarter;
        return new(day.Year, month, DateTime.DaysInMonth(day.Year, month));
    }
}
