using System.Globalization;
using System.Text.RegularExpressions;

namespace Ohmstead.Assessment.Searching;

/// <summary>Reads days as people write them.</summary>
/// <remarks>
/// 2021-05-14, 14 May 2021, May 14, 2021, 14.5.2021 and 14/5/2021 are a day; 2021-05 and May 2021 a month; 9 March the same day of any
/// year. The day comes before the month where both are figures. A year alone is a number like any other.
/// </remarks>
internal static partial class SearchDates
{
    private const RegexOptions Options = RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture | RegexOptions.IgnoreCase;
    private const int Patience = 1000;
    private const string Month =
        "(?<n>jan(uary)?|feb(ruary)?|mar(ch)?|apr(il)?|may|june?|july?|aug(ust)?|sept?(ember)?|oct(ober)?|nov(ember)?|dec(ember)?)";
    private const string End = "(?![\\p{L}\\p{Nd}\\uD800-\\uDFFF])";
    private const string Months = "jan feb mar apr may jun jul aug sep oct nov dec";

    /// <summary>Reads the day at a place of a plain text; null where none stands there.</summary>
    public static (SearchItem Item, int End)? Read(string text, int at)
    {
        if (!char.IsAsciiDigit(text[at]))
        {
            // Most words begin no month.
            return at + 2 < text.Length && IsMonth(text.AsSpan(at, 3)) ? From(MonthFirst().Match(text, at)) : null;
        }

        // Most numbers begin no day, which the character behind them tells.
        var end = at + 1;
        while (end < text.Length && end < at + 5 && char.IsAsciiDigit(text[end]))
        {
            end++;
        }

        var after = end < text.Length ? text[end] : '\0';
        return (end - at, after) switch
        {
            (4, '-') => From(Figures().Match(text, at)),
            (1 or 2, '/') => From(Pointed().Match(text, at)),
            (1 or 2, '.') => From(DayFirst().Match(text, at)) ?? From(Pointed().Match(text, at)),
            (1 or 2, ' ' or 's' or 'n' or 'r' or 't' or 'S' or 'N' or 'R' or 'T') => From(DayFirst().Match(text, at)),
            _ => null,
        };
    }

    private static bool IsMonth(ReadOnlySpan<char> start)
    {
        for (var month = 0; month < Months.Length; month += 4)
        {
            if (start.Equals(Months.AsSpan(month, 3), StringComparison.OrdinalIgnoreCase))
            {
                return true;
            }
        }

        return false;
    }

    private static (SearchItem Item, int End)? From(Match match)
    {
        if (!match.Success)
        {
            return null;
        }

        var word = match.Groups["n"] is { Success: true } name ? name.Value.ToLowerInvariant() : null;
        var year = Number(match.Groups["y"]);
        var month = word is null ? Number(match.Groups["m"]) : (Months.IndexOf(word[..3], StringComparison.Ordinal) / 4) + 1;
        var day = Number(match.Groups["d"]);
        var isDay = day is >= 1 and <= 31;
        if (month is < 1 or > 12 || (day != 0 && !isDay) || (year == 0 && !isDay))
        {
            return null;
        }

        var (whole, ofYear, anyYear) = (
            Text($"@{year:0000}-{month:00}-{day:00}"),
            Text($"@{year:0000}-{month:00}"),
            Text($"@-{month:00}-{day:00}")
        );
        var token =
            year == 0 ? anyYear
            : isDay ? whole
            : ofYear;
        var beside = new List<string>(4);
        if (year != 0)
        {
            beside.Add(year.ToString(CultureInfo.InvariantCulture));
            if (isDay)
            {
                beside.Add(ofYear);
                beside.Add(anyYear);
            }
        }

        if (word is not null)
        {
            beside.Add(word);
        }

        return (new(SearchItemKind.Day, token) { Beside = [.. beside] }, match.Index + match.Length);
    }

    private static int Number(Group group) =>
        group.Success ? int.Parse(group.ValueSpan, NumberStyles.None, CultureInfo.InvariantCulture) : 0;

    private static string Text(FormattableString text) => FormattableString.Invariant(text);

    [GeneratedRegex("\\G(?<y>[12][0-9]{3})-(?<m>[0-9]{2})(-(?<d>[0-9]{2}))?(?!-)" + End, Options, Patience)]
    private static partial Regex Figures();

    [GeneratedRegex("\\G(?<d>[0-9]{1,2})(st|nd|rd|th)?\\.? " + Month + End + "(\\.?,? (?<y>[12][0-9]{3})" + End + ")?", Options, Patience)]
    private static partial Regex DayFirst();

    [GeneratedRegex("\\G(?<d>[0-9]{1,2})([./])(?<m>[0-9]{1,2})([./])(?<y>[12][0-9]{3})" + End, Options, Patience)]
    private static partial Regex Pointed();

    [GeneratedRegex(
        "\\G" + Month + "\\.? ((?<d>[0-9]{1,2})(st|nd|rd|th)?" + End + "(,? (?<y>[12][0-9]{3})" + End + ")?|(?<y>[12][0-9]{3})" + End + ")",
        Options,
        Patience
    )]
    private static partial Regex MonthFirst();
}
