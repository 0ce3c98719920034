using System.Globalization;
using Ohmstead.Electronics.Markings;
using Ohmstead.Running;

namespace Ohmstead.Output;

/// <summary>A print and everything it can mean.</summary>
/// <param name="Text">The print.</param>
/// <param name="Meanings">Its meanings; none when no code knows it.</param>
internal sealed record ReadPrint(string Text, IReadOnlyList<PrintMeaning> Meanings)
{
    /// <summary>What is open about it.</summary>
    public string Open =>
        Meanings.Count switch
        {
            0 => "no code that is known; look for the maker's own list",
            1 => "one meaning only; a print can still be worn or wrong: measure",
            _ => string.Create(
                CultureInfo.InvariantCulture,
                $"{Meanings.Count} meanings: the print alone does not decide, the part and a measurement do"
            ),
        };
}

/// <summary>What prints can mean, as a table or as JSON.</summary>
internal static class MarkingTable
{
    // A cell that is longer pushes the rest of its own row alone.
    private const int WidestColumn = 42;

    /// <summary>Writes a table for each print.</summary>
    public static void Write(TextWriter target, IReadOnlyList<ReadPrint> prints)
    {
        foreach (var print in prints)
        {
            Line(target, $"{print.Text}: {print.Open}");
            string[][] rows =
            [
                .. Together(print.Meanings)
                    .Select(meaning =>
                        new[] { meaning.As, meaning.Meaning, meaning.Limits ?? string.Empty, meaning.Rule, $"[{meaning.Source.Text}]" }
                    ),
            ];
            int[] widths =
            [
                .. Enumerable
                    .Range(0, 5)
                    .Select(column => Math.Min(WidestColumn, rows.Select(row => row[column].Length).DefaultIfEmpty().Max())),
            ];
            foreach (var row in rows)
            {
                // A column that is empty in every row takes no room.
                Line(
                    target,
                    "  "
                        + string.Join(
                                "  ",
                                row.Index().Where(cell => widths[cell.Index] > 0).Select(cell => cell.Item.PadRight(widths[cell.Index]))
                            )
                            .TrimEnd()
                );
            }
        }
    }

    // Dates of one rule are told on one line: 1985-05 or 2005-05.
    private static IEnumerable<PrintMeaning> Together(IReadOnlyList<PrintMeaning> meanings) =>
        meanings
            .GroupBy(meaning =>
                meaning.Limits is null ? (meaning.As, meaning.Rule, meaning.Source.Text) : (meaning.As, meaning.Rule, meaning.Meaning)
            )
            .Select(group => group.First() with { Meaning = string.Join(" or ", group.Select(meaning => meaning.Meaning)) });

    /// <summary>Writes one JSON document.</summary>
    public static void WriteJson(TextWriter target, IReadOnlyList<ReadPrint> prints)
    {
        target.Write(JsonText.Document(isOneLine: false, json =>
            {
                json.WriteStartArray("prints");
                foreach (var print in prints)
                {
                    json.WriteStartObject();
                    json.WriteString("text", print.Text);
                    json.WriteBoolean("certain", print.Meanings.Count == 1);
                    json.WriteString("open", print.Open);
                    json.WriteStartArray("meanings");
                    foreach (var meaning in print.Meanings)
                    {
                        json.WriteStartObject();
                        json.WriteString("as", meaning.As);
                        json.WriteString("meaning", meaning.Meaning);
                        json.WriteString("limits", meaning.Limits);
                        json.WriteString("rule", meaning.Rule);
                        json.WriteString("source", meaning.Source.Text);
                        json.WriteEndObject();
                    }

                    json.WriteEndArray();
                    json.WriteEndObject();
                }

                json.WriteEndArray();
            }));
    }

    private static void Line(TextWriter target, string text) => target.WriteLine(Printable.Escape(text));
}
