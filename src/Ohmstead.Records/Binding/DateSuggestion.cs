using System.Globalization;
using System.Text.RegularExpressions;

namespace Ohmstead.Records.Binding;

/// <summary>The day, month or year that a person meant by what is no ISO date. Nothing is chosen where two days fit.</summary>
internal static partial class DateSuggestion
{
    private static readonly string[] Months = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];

    /// <summary>What was found and what to write, or null where nobody can say.</summary>
    internal static (string Found, string Next)? For(string text)
    {
        var plain = text.Trim().Replace('–', '-').Replace('—', '-').Replace('‑', '-').Replace('−', '-');
        if (About().Match(plain) is { Success: true } about)
        {
            return (
                "says about when; a year or a month alone says as much",
                $"write {about.Groups["year"].Value}, and how sure it is in note"
            );
        }

        if (Decade().Match(plain) is { Success: true } decade)
        {
            return (
                "is a decade; a year is expected",
                $"write \"{decade.Value}\" in note and leave the key out, or write a year for which there is evidence"
            );
        }

        if (Range().Match(plain) is { Success: true } range && IsLater(range.Groups["year"].ValueSpan, range.Groups["end"].ValueSpan))
        {
            return ("is more than one year; one is expected", $"write {range.Groups["year"].Value}, and the rest in note");
        }

        if (Week().Match(plain) is { Success: true } week)
        {
            return OfWeek(week);
        }

        var first = YearFirst().Match(plain);
        var day =
            first.Success ? Iso(first.Groups["y"].Value, first.Groups["m"].Value, first.Groups["d"].Value)
            : DayName().Match(plain) is { Success: true } named
                ? Iso(named.Groups["y"].Value, Month(named.Groups["m"].Value), named.Groups["d"].Value)
            : NameDay().Match(plain) is { Success: true } name
                ? Iso(name.Groups["y"].Value, Month(name.Groups["m"].Value), name.Groups["d"].Value)
            : null;
        if (day is not null && first.Groups["time"] is { Success: true, Value: var time })
        {
            return ("has a time, and a date here has none", $"write {day}, and {time} in note");
        }

        if (day is not null)
        {
            return (
                plain != text.Trim() ? "has long dashes for hyphens"
                : plain.All(char.IsAsciiDigit) ? "has no hyphens"
                : "is no ISO date",
                $"write {day}"
            );
        }

        if (ShortYear().Match(plain) is { Success: true } shortYear)
        {
            var (a, b, c) = (shortYear.Groups["a"].Value, shortYear.Groups["b"].Value, shortYear.Groups["c"].Value);
            var days = new[] { Iso($"20{c}", b, a), Iso($"20{c}", a, b), Iso($"20{a}", b, c) }.OfType<string>().Distinct().ToList();
            return days.Count == 0 ? null : ("has a year of two digits", $"write {string.Join(" or ", days)}, whichever it was");
        }

        return null;
    }

    // 1976-78 are years; 2008/09 may be a month, and 1976-13 is nothing.
    private static bool IsLater(ReadOnlySpan<char> year, ReadOnlySpan<char> end) =>
        end.Length == year.Length || (Number(end) > 12 && Number(end) > Number(year[^end.Length..]));

    private static (string Found, string Next)? OfWeek(Match week)
    {
        var (year, number) = (Number(week.Groups["y"].ValueSpan), Number(week.Groups["w"].ValueSpan));
        if (number < 1 || number > ISOWeek.GetWeeksInYear(year))
        {
            return null;
        }

        var monday = DateOnly.FromDateTime(ISOWeek.ToDateTime(year, number, DayOfWeek.Monday));
        return (
            string.Create(CultureInfo.InvariantCulture, $"is a week, from {monday:yyyy-MM-dd} to {monday.AddDays(6):yyyy-MM-dd}"),
            "write the day that it was"
        );
    }

    private static int Number(ReadOnlySpan<char> digits) => int.Parse(digits, NumberStyles.None, CultureInfo.InvariantCulture);

    private static string Month(string name) =>
        (Array.IndexOf(Months, name[..3].ToLowerInvariant()) + 1).ToString("00", CultureInfo.InvariantCulture);

    private static string? Iso(string year, string month, string day)
    {
        day = day.Length == 0 ? day : day.PadLeft(2, '0');
        month = month.PadLeft(2, '0');
        return IsDay(year, month, day) ? (day.Length == 0 ? $"{year}-{month}" : $"{year}-{month}-{day}")
            : day.Length > 0 && IsDay(year, day, month) ? $"{year}-{day}-{month}"
            : null;
    }

    private static bool IsDay(string year, string month, string day) =>
        int.TryParse(month, NumberStyles.None, CultureInfo.InvariantCulture, out var number)
        && number is >= 1 and <= 12
        && (
            day.Length == 0
            || (
                int.Parse(day, CultureInfo.InvariantCulture) is >= 1 and var last
                && last <= DateTime.DaysInMonth(int.Parse(year, CultureInfo.InvariantCulture), number)
            )
        );

    [GeneratedRegex(
        @"^(?:c\.|ca\.?|c|circa|about|around|approx\.?|~|≈)\s*(?<year>(?:19|20)\d\d(?:-\d\d)?)\s*\??$"
            + @"|^(?<year>(?:19|20)\d\d(?:-\d\d)?)\s*\?$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex About();

    [GeneratedRegex(@"^(?:the )?(?<ten>(?:19|20)\d)0'?s$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Decade();

    [GeneratedRegex(
        @"^(?<year>(?:19|20)\d\d) ?(?:-|/|to|or) ?(?<end>\d\d|(?:19|20)\d\d)$",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex Range();

    [GeneratedRegex(
        @"^(?<y>(?:19|20)\d\d)[-/. ]?(?<m>\d\d?)(?:[-/. ]?(?<d>\d\d?))?(?:[T ]+(?<time>\d\d?:\d\d.*))?$",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex YearFirst();

    [GeneratedRegex(@"^(?<y>(?:19|20)\d\d)-?W(?<w>\d\d)$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Week();

    [GeneratedRegex(
        @"^(?:(?<d>\d\d?)(?:st|nd|rd|th)?\.?[- ])?(?<m>jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*"
            + @"\.?,?[- ]+(?<y>(?:19|20)\d\d)$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex DayName();

    [GeneratedRegex(
        @"^(?<m>jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*\.? (?<d>\d\d?)(?:st|nd|rd|th)?,? (?<y>(?:19|20)\d\d)$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex NameDay();

    [GeneratedRegex(@"^(?<a>\d\d?)[-/. ](?<b>\d\d?)[-/. ](?<c>\d\d)$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex ShortYear();
}
