using System.Globalization;
using Ohmstead.Electronics;
using Ohmstead.Records.Model;

namespace Ohmstead.Records.Binding;

/// <summary>Reads dates by ISO 8601 and by nothing else, so that no culture and no clock can have a say.</summary>
public static class DateText
{
    private const int FirstYear = 1900;
    private const int LastYear = 2199;

    /// <summary>Reads a day: <c>2026-03-14</c>.</summary>
    public static Parsed<DateOnly> ParseDay(string text)
    {
        var rough = ParseRough(text);
        return !rough.Is(out var date, out var fault) ? Parsed<DateOnly>.Failed(fault)
            : date.Day is null ? Failed(text, $"'{text}' names no day, a whole date is expected", DayOf(date))
            : Parsed<DateOnly>.From(date.Earliest);
    }

    /// <summary>Reads a day, a month or a year.</summary>
    public static Parsed<RoughDate> ParseRough(string text)
    {
        var parts = text.Split('-');
        if (parts.Length > 3 || !IsDigits(parts[0], 4) || parts.Skip(1).Any(part => !IsDigits(part, 2)))
        {
            return Parsed<RoughDate>.Failed(NotIso(text));
        }

        var year = int.Parse(parts[0], CultureInfo.InvariantCulture);
        int? month = parts.Length > 1 ? int.Parse(parts[1], CultureInfo.InvariantCulture) : null;
        int? day = parts.Length > 2 ? int.Parse(parts[2], CultureInfo.InvariantCulture) : null;
        if (year is < FirstYear or > LastYear)
        {
            return Parsed<RoughDate>.Failed(Fault(text, ParseFaultKind.OutOfRange, $"the year {parts[0]} is outside 1900 to 2199", null));
        }

        if (month is < 1 or > 12 && DateSuggestion.For(text) is { } meant)
        {
            var message = parts.Length == 3 ? $"there is no such day as '{text}'" : $"'{text}' {meant.Found}";
            return Parsed<RoughDate>.Failed(Fault(text, ParseFaultKind.OutOfRange, message, meant.Next));
        }

        if (month is < 1 or > 12 || (day is { } d && (d < 1 || d > DateTime.DaysInMonth(year, month!.Value))))
        {
            return Parsed<RoughDate>.Failed(NoSuchDay(text, year, month!.Value));
        }

        return Parsed<RoughDate>.From(new RoughDate(year, month, day));
    }

    private static ParseFault NoSuchDay(string text, int year, int month) =>
        Fault(
            text,
            ParseFaultKind.OutOfRange,
            month is < 1 or > 12
                ? $"there is no such day as '{text}'"
                : string.Create(
                    CultureInfo.InvariantCulture,
                    $"there is no such day as '{text}': {Month(month)} {year} has {DateTime.DaysInMonth(year, month)} days"
                ),
            month is < 1 or > 12 ? "write year, month and day in that order, with a month from 01 to 12" : "write the day that it was"
        );

    private static string Month(int month) => CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(month);

    // A form and no day: a day that stands in a message is copied.
    private static string DayOf(RoughDate date) =>
        date.Month is { } month
            ? string.Create(CultureInfo.InvariantCulture, $"write the day too: {date.Year}-{month:00}- and two digits")
            : string.Create(CultureInfo.InvariantCulture, $"write month and day too: {date.Year}- and two digits, a hyphen and two digits");

    private static bool IsDigits(string text, int length) => text.Length == length && text.All(char.IsAsciiDigit);

    private static Parsed<DateOnly> Failed(string text, string message, string? next) =>
        Parsed<DateOnly>.Failed(Fault(text, ParseFaultKind.NotUnderstood, message, next));

    private static ParseFault Fault(string text, ParseFaultKind kind, string message, string? next) =>
        new(kind, 0, Math.Max(text.Length, 1), message, next);

    // 12/05/2024 is 12 May to some and 5 December to others: both are shown, none is chosen.
    private static ParseFault NotIso(string text)
    {
        var parts = text.Split('/', '.', ' ', '-');
        // With more digits in front it is no day: what is made of it would not be read either, and would be turned round for ever.
        if (parts is [{ Length: 1 or 2 }, { Length: 1 or 2 }, { Length: 4 }] && parts.All(part => part.All(char.IsAsciiDigit)))
        {
            var first = parts[0].PadLeft(2, '0');
            var second = parts[1].PadLeft(2, '0');
            var readings = new[] { $"{parts[2]}-{second}-{first}", $"{parts[2]}-{first}-{second}" }
                .Where(iso => ParseRough(iso).Fault is null)
                .Distinct()
                .ToList();
            if (readings.Count > 0)
            {
                var what = readings.Count > 1 ? "can be read in more than one way" : "is no ISO date";
                return Fault(text, ParseFaultKind.Ambiguous, $"'{Excerpt(text)}' {what}", $"write {string.Join(" or ", readings)}");
            }
        }

        // What is long is no date that anybody writes.
        if (text.Length <= 40 && DateSuggestion.For(text) is { } meant)
        {
            return Fault(text, ParseFaultKind.NotUnderstood, $"'{text}' {meant.Found}", meant.Next);
        }

        if (text.Length is 2 or 3 && text.TrimStart('\'', '’') is [>= '0' and <= '9', >= '0' and <= '9'])
        {
            return Fault(text, ParseFaultKind.NotUnderstood, $"'{text}' is a year of two digits", "write all four digits of the year");
        }

        return Fault(
            text,
            ParseFaultKind.NotUnderstood,
            $"'{Excerpt(text)}' is no ISO date",
            "write the day itself in the form YYYY-MM-DD, in digits and without a time"
        );
    }

    private static string Excerpt(string text) => text.Length <= 40 ? text : text[..40] + "…";
}
