using System.Globalization;

namespace Ohmstead.Report.Html;

/// <summary>Days and weeks as ISO 8601 writes them.</summary>
internal static class Days
{
    /// <summary>Whether the text is a day of the calendar, such as 2026-03-14, or a week of it, such as 2025-W41.</summary>
    public static bool IsOne(ReadOnlySpan<char> text) =>
        text.Length is 8 or 10
        && text[4] == '-'
        && Number(text[..4]) is >= 1 and var year
        && (text.Length == 8 ? IsWeek(year, text[5..]) : IsDay(year, text[5..]));

    private static bool IsWeek(int year, ReadOnlySpan<char> week) =>
        week[0] == 'W' && Number(week[1..]) is >= 1 and var number && number <= ISOWeek.GetWeeksInYear(year);

    private static bool IsDay(int year, ReadOnlySpan<char> day) =>
        day[2] == '-'
        && Number(day[..2]) is >= 1 and <= 12 and var month
        && Number(day[3..]) is >= 1 and var number
        && number <= DateTime.DaysInMonth(year, month);

    private static int Number(ReadOnlySpan<char> digits) =>
        int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : -1;
}
