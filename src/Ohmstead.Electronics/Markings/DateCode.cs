using System.Globalization;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.Markings;

/// <summary>The date codes on parts: every date in the years asked for that a code can mean.</summary>
/// <remarks>
/// Letter and month character (20-year cycle, IEC 60062; T5 is May 1985, 2005 or 2025): A 1970 to X 1989 and again, without G, I, O, Q, Y
/// and Z; months 1 to 9, O, N, D. One printed table has 2002 to 2008 a year late (N to V); the sequence here is the one with R for 2003.
/// Digit and month character (10-year cycle, IEC 60062). Four digits year and week, three digits last digit of the year and week (industry
/// practice). The standard's one-character four-year cycle is not read.
/// </remarks>
public static class DateCode
{
    private const string YearLetters = "ABCDEFHJKLMNPRSTUVWX";
    private const string MonthCharacters = "123456789OND";
    private static readonly Source TwentyYears = Source.FromMemory("IEC 60062", "20-year cycle");
    private static readonly Source TenYears = Source.FromMemory("IEC 60062", "10-year cycle");
    private static readonly Source YearAndWeek = Source.Practice("year and week, as on integrated circuits");
    private static readonly Source YearAlone = Source.Practice("year alone");

    /// <summary>Reads a code of two to four characters.</summary>
    /// <param name="text">The code.</param>
    /// <param name="years">The years in which the part can have been made.</param>
    public static Parsed<Marking<ManufactureDate>> Parse(ReadOnlySpan<char> text, YearRange years)
    {
        List<MarkingReading<ManufactureDate>> dates = text.Length switch
        {
            2 =>
            [
                .. Read(LetterAndMonth(text, years), "year letter and month", TwentyYears),
                .. Read(DigitAndMonth(text, years), "last digit of the year and month", TenYears),
                .. Read(TwoDigitYear(text, years), "year without month", YearAlone),
            ],
            3 => YearWeek(text, 1, years),
            4 => YearWeek(text, 2, years),
            _ => [],
        };
        return dates.Count > 0
            ? Parsed<Marking<ManufactureDate>>.From(new Marking<ManufactureDate>([.. dates]))
            : Marking<ManufactureDate>.Failed(
                text,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"'{Excerpt.From(text)}' is no date code of {years.First} to {years.Last}, expected such as T5, 7928 or 928"
                )
            );
    }

    /// <summary>The dates alone that <see cref="Parse"/> reads, in its order, for those who need no words; none when it is no date
    /// code.</summary>
    /// <param name="text">The code.</param>
    /// <param name="years">The years in which the part can have been made.</param>
    public static IReadOnlyList<ManufactureDate> Dates(ReadOnlySpan<char> text, YearRange years) =>
        text.Length switch
        {
            2 => [.. LetterAndMonth(text, years), .. DigitAndMonth(text, years), .. TwoDigitYear(text, years)],
            3 => OfWeeks(text, 1, years),
            4 => OfWeeks(text, 2, years),
            _ => [],
        };

    /// <summary>Finds the date among the groups of characters on an integrated circuit.</summary>
    /// <remarks>
    /// 7404, 7432 and 8212 are dates and type numbers alike: a group that is part of the type number is no date, and years 63 to 99 come
    /// first. When two groups fit, both are given, for the person to choose.
    /// </remarks>
    /// <param name="groups">The groups as printed.</param>
    /// <param name="typeNumber">The type number, when it is known.</param>
    /// <param name="years">The years in which the part can have been made.</param>
    public static Parsed<Marking<ManufactureDate>> OnPackage(IEnumerable<string> groups, string? typeNumber, YearRange years)
    {
        var printed = groups.ToList();
        var dates = printed
            .Where(group => group.Length == 4 && typeNumber?.Contains(group, StringComparison.OrdinalIgnoreCase) != true)
            .SelectMany(group => YearWeek(group, 2, years))
            .OrderBy(date => date.Value.Year is >= 1963 and <= 1999 ? 0 : 1)
            .ToList();
        var text = string.Join(' ', printed);
        return dates.Count > 0
            ? Parsed<Marking<ManufactureDate>>.From(new Marking<ManufactureDate>([.. dates]))
            : Marking<ManufactureDate>.Failed(
                text,
                $"'{Excerpt.From(text)}' has no group of year and week, expected four digits such as 7928"
            );
    }

    internal static List<MarkingReading<ManufactureDate>> YearWeek(ReadOnlySpan<char> text, int yearDigits, YearRange years)
    {
        var dates = OfWeeks(text, yearDigits, years);
        return dates.Count == 0
            ? []
            : Read(
                dates,
                string.Create(CultureInfo.InvariantCulture, $"week {dates[0].Week} of a year ending in {text[..yearDigits]}"),
                YearAndWeek
            );
    }

    private static List<MarkingReading<ManufactureDate>> Read(List<ManufactureDate> dates, string rule, Source source) =>
        [.. dates.Select(date => new MarkingReading<ManufactureDate>(date, rule, source))];

    private static List<ManufactureDate> OfWeeks(ReadOnlySpan<char> text, int yearDigits, YearRange years)
    {
        if (text.ContainsAnyExceptInRange('0', '9'))
            return [];
        var year = int.Parse(text[..yearDigits], NumberStyles.None, CultureInfo.InvariantCulture);
        var week = int.Parse(text[yearDigits..], NumberStyles.None, CultureInfo.InvariantCulture);
        return week is < 1 or > 53 ? [] : Every(years, yearDigits == 1 ? 10 : 100, year, month: null, week);
    }

    private static List<ManufactureDate> LetterAndMonth(ReadOnlySpan<char> text, YearRange years)
    {
        var year = YearLetters.IndexOf(text[0], StringComparison.Ordinal);
        var month = MonthCharacters.IndexOf(text[1], StringComparison.Ordinal) + 1;
        return year < 0 || month == 0
            ? []
            : Every(years with { First = Math.Max(years.First, 1970) }, 20, (1970 + year) % 20, month, week: null);
    }

    private static List<ManufactureDate> DigitAndMonth(ReadOnlySpan<char> text, YearRange years)
    {
        var month = MonthCharacters.IndexOf(text[1], StringComparison.Ordinal) + 1;
        return !char.IsAsciiDigit(text[0]) || month == 0 ? [] : Every(years, 10, text[0] - '0', month, week: null);
    }

    private static List<ManufactureDate> TwoDigitYear(ReadOnlySpan<char> text, YearRange years) =>
        text.ContainsAnyExceptInRange('0', '9')
            ? []
            : Every(years, 100, int.Parse(text, NumberStyles.None, CultureInfo.InvariantCulture), month: null, week: null);

    private static List<ManufactureDate> Every(YearRange years, int period, int remainder, int? month, int? week)
    {
        List<ManufactureDate> dates = [];
        foreach (var year in years.Every(period, remainder))
        {
            dates.Add(new(year, month, week));
        }

        return dates;
    }
}
