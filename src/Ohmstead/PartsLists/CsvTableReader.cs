using System.Globalization;
using CsvHelper;
using CsvHelper.Configuration;

namespace Ohmstead.PartsLists;

/// <summary>Reads a table of comma, semicolon or tab separated values by RFC 4180: quoted fields, a quote in one written twice, line breaks
/// in one.</summary>
/// <remarks>What RFC 4180 does not allow (a quote in the middle of a bare field, text behind a closing quote, a quote that is never closed)
/// is a fault of its line, not a guess.</remarks>
internal static class CsvTableReader
{
    private const string NameOfSeparator = "sep=";
    private static readonly char[] Separators = [',', ';', '\t'];

    /// <summary>Reads a table. Never throws for anything the text may hold.</summary>
    /// <param name="text">The whole text, without a byte order mark.</param>
    public static CsvTable Read(string text)
    {
        var (separator, from, skipped) = Begin(text);
        var rows = new List<CsvRow>();
        var faults = new List<ListFault>();
        string? bad = null;
        var configuration = new CsvConfiguration(CultureInfo.InvariantCulture)
        {
            Delimiter = separator.ToString(),
            Mode = CsvMode.RFC4180,
            IgnoreBlankLines = true,
            BadDataFound = found => bad ??= found.Field,
        };
        using var reader = new StringReader(text[from..]);
        using var parser = new CsvParser(reader, configuration);
        while (parser.Read())
        {
            bad = null;
            var cells = parser.Record ?? [];
            var line = skipped + parser.RawRow - cells.Sum(Breaks);
            if (bad is not null)
            {
                // A quote that is never closed takes the last line end in, too.
                var isOpen = bad.StartsWith('"') && parser.RawRecord.EndsWith(bad, StringComparison.Ordinal);
                line = skipped + parser.RawRow - Breaks(isOpen ? parser.RawRecord : parser.RawRecord.TrimEnd('\r', '\n'));
                faults.Add(
                    new(
                        line,
                        0,
                        $"the quotes do not pair near '{Excerpt(bad)}'",
                        "put the whole field into quotes, and write a quote inside it twice"
                    )
                );
            }
            else if (cells.Any(cell => !string.IsNullOrWhiteSpace(cell)))
            {
                rows.Add(new(line, [.. cells.Select(cell => cell.Trim())]));
            }
        }

        return new(separator, rows, faults);
    }

    /// <summary>The beginning of a text, short enough for a message.</summary>
    internal static string Excerpt(string text) => text.Length <= 40 ? text : string.Concat(text.AsSpan(0, 40), "…");

    private static bool MaySeparate(char named) => named == '\t' || (named != '"' && (char.IsPunctuation(named) || char.IsSymbol(named)));

    private static (char Separator, int From, int Skipped) Begin(string text)
    {
        var end = text.AsSpan().IndexOfAny('\r', '\n');
        var first = (end < 0 ? text : text[..end]).Trim('"');

        // Some spreadsheets name the separator on a line of its own. A blank, a quote or a letter separates nothing.
        if (
            first.Length == NameOfSeparator.Length + 1
            && first.StartsWith(NameOfSeparator, StringComparison.OrdinalIgnoreCase)
            && MaySeparate(first[^1])
        )
        {
            var next = end < 0 ? text.Length : end + (text.AsSpan(end).StartsWith("\r\n", StringComparison.Ordinal) ? 2 : 1);
            return (first[^1], next, 1);
        }

        var isQuoted = false;
        var counts = new int[Separators.Length];
        foreach (var letter in text.AsSpan().TrimStart())
        {
            if (letter is '\r' or '\n' && !isQuoted)
            {
                break;
            }

            isQuoted ^= letter == '"';
            if (!isQuoted && Array.IndexOf(Separators, letter) is >= 0 and var which)
            {
                counts[which]++;
            }
        }

        return (Separators[Array.IndexOf(counts, counts.Max())], 0, 0);
    }

    private static int Breaks(string cell) =>
        cell.Count(letter => letter == '\n')
        + cell.Where((letter, i) => letter == '\r' && (i + 1 == cell.Length || cell[i + 1] != '\n')).Count();
}
