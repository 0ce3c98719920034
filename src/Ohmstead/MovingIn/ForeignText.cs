using Ohmstead.Electronics;
using Ohmstead.Records.Binding;

namespace Ohmstead.MovingIn;

/// <summary>How a table writes days and figures, where it does not write them as records do. What is not said is not guessed.</summary>
/// <param name="Days">Which comes first in its days: day-first, month-first or year-first; null where nobody said.</param>
/// <param name="Decimals">Its decimal mark: comma or point; null where nobody said.</param>
internal sealed record ForeignText(string? Days, string? Decimals)
{
    /// <summary>What --days takes.</summary>
    public static IReadOnlyList<string> DayWords { get; } = ["day-first", "month-first", "year-first"];

    /// <summary>What --decimals takes.</summary>
    public static IReadOnlyList<string> DecimalWords { get; } = ["comma", "point"];

    /// <summary>A day as records have it, or what is wrong and what to do.</summary>
    public (string? Day, string? Fault, string? NextStep) Day(string text)
    {
        if (DateText.ParseDay(text).Is(out var known, out var fault))
        {
            return (IsoDate.Text(known), null, null);
        }

        var pieces = text.Split(['.', '/', '-', ' '], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        if (pieces.Length != 3 || pieces.Any(piece => piece.Length is 0 or > 4 || !piece.All(char.IsAsciiDigit)))
        {
            return (null, fault.Message, fault.NextStep ?? "write the day as 2026-03-14");
        }

        var isYearFirst = pieces[0].Length == 4;
        if (!isYearFirst && pieces[2].Length != 4)
        {
            return (null, $"'{text}' has no year of four digits", "write the year whole, as in 2026-03-14");
        }

        var meant = new (string Word, string? Day)[]
        {
            (DayWords[0], isYearFirst ? null : Day(pieces[2], pieces[1], pieces[0])),
            (DayWords[1], isYearFirst ? null : Day(pieces[2], pieces[0], pieces[1])),
            (DayWords[2], isYearFirst ? Day(pieces[0], pieces[1], pieces[2]) : null),
        };
        if (Days is not null)
        {
            return meant.First(one => one.Word == Days).Day is { } day
                ? (day, null, null)
                : (
                    null,
                    $"'{text}' is no day when the {Days.Replace("-first", string.Empty, StringComparison.Ordinal)} comes first",
                    "write the day as 2026-03-14"
                );
        }

        var can = meant.Where(one => one.Day is not null).ToArray();
        return can.Length == 0
            ? (null, $"'{text}' is no day of the calendar", "write the day as 2026-03-14")
            : (
                null,
                can.Length == 1
                    ? $"'{text}' is not written as records write a day, and how this table writes days is not said"
                    : $"'{text}' can be {string.Join(" or ", can.Select(one => one.Day))}",
                string.Join(" or ", can.Select(one => $"--days {one.Word}")) + " says how this table writes its days"
            );
    }

    /// <summary>A text with its figures as records have them, or what is wrong and what to do.</summary>
    /// <param name="text">The text: one figure, or several with units.</param>
    public (string? Text, string? Fault, string? NextStep) Figures(string text)
    {
        var read = text.ToCharArray();
        for (var at = 0; at < text.Length; at++)
        {
            if (!char.IsAsciiDigit(text[at]))
            {
                continue;
            }

            var end = at + 1;
            while (
                end < text.Length
                && (char.IsAsciiDigit(text[end]) || (IsMark(text[end]) && end + 1 < text.Length && char.IsAsciiDigit(text[end + 1])))
            )
            {
                end++;
            }

            var figure = text[at..end];
            if (Fault(figure) is { Fault: { } fault } wrong)
            {
                return (null, fault, wrong.NextStep);
            }

            if (figure.IndexOf(',', StringComparison.Ordinal) is >= 0 and var comma)
            {
                read[at + comma] = '.';
            }

            at = end;
        }

        return (new string(read), null, null);
    }

    private (string? Fault, string? NextStep) Fault(string figure)
    {
        var marks = figure.Where(IsMark).ToArray();
        if (marks.Length == 0)
        {
            return (null, null);
        }

        if (marks.Length > 1 || marks[0] is not (',' or '.'))
        {
            return ($"'{figure}' has marks between its digits that are no decimal mark", "write it without marks between thousands");
        }

        var behind = figure.Length - 1 - figure.IndexOf(marks[0], StringComparison.Ordinal);
        var isThousand = behind == 3 && figure.Length <= 7 && figure[0] != '0';
        var (plain, other) = (figure.Replace(',', '.'), figure.Replace(marks[0].ToString(), string.Empty, StringComparison.Ordinal));
        return (marks[0], Decimals) switch
        {
            (',', "comma") or ('.', "point") => (null, null),
            ('.', null) when !isThousand => (null, null),
            (',', null) when !isThousand => (
                $"a comma in '{figure}', and the decimal mark of this table is not said",
                "--decimals comma says that a comma is the decimal mark"
            ),
            (_, null) => (
                $"'{figure}' can be {plain} or {other}",
                $"--decimals {(marks[0] == ',' ? "comma" : "point")} says that it is {plain}"
            ),
            _ => (
                $"'{figure}' has a {(marks[0] == ',' ? "comma" : "point")}, and the decimal mark of this table is the {Decimals}",
                $"write {plain.Replace('.', marks[0] == ',' ? '.' : ',')} or {other}"
            ),
        };
    }

    private static bool IsMark(char letter) => letter is ',' or '.' or '\'' or '\u2019';

    private static string? Day(string year, string month, string day) =>
        DateText.ParseDay($"{year}-{month.PadLeft(2, '0')}-{day.PadLeft(2, '0')}").Is(out var known, out _) ? IsoDate.Text(known) : null;
}
