using System.Globalization;
using System.Text;
using System.Text.Json;
using Ohmstead.Report.Html;
using Ohmstead.Running;

namespace Ohmstead.Output;

/// <summary>A column of a listing.</summary>
/// <param name="Key">Its name for programs.</param>
/// <param name="Title">Its head for people.</param>
/// <param name="IsNumber">True for a column of whole numbers, which stand to the right.</param>
internal sealed record ListColumn(string Key, string Title, bool IsNumber = false);

/// <summary>Lines of equal form, which can be told to people, to a spreadsheet and to programs.</summary>
/// <param name="Name">What the lines are, for programs.</param>
/// <param name="Columns">The columns.</param>
/// <param name="Rows">The cells, one for each column; null where there is nothing to say.</param>
internal sealed record Listing(string Name, IReadOnlyList<ListColumn> Columns, IReadOnlyList<IReadOnlyList<string?>> Rows)
{
    /// <summary>The form for a spreadsheet.</summary>
    public const string SheetForm = "csv";

    /// <summary>The form for programs.</summary>
    public const string DataForm = "json";

    /// <summary>The forms there are, that for people first.</summary>
    public static IReadOnlyList<string> Forms { get; } = ["text", SheetForm, DataForm];

    /// <summary>Writes it in one of the forms.</summary>
    public void Write(TextWriter target, string form)
    {
        switch (form)
        {
            case SheetForm:
                Csv(target);
                break;
            case DataForm:
                Json(target);
                break;
            default:
                Text(target);
                break;
        }
    }

    private void Text(TextWriter target)
    {
        var widths = Columns.Select((column, at) => Rows.Select(row => Shown(row[at]).Length).Append(column.Title.Length).Max()).ToArray();
        Line(target, widths, Columns.Select(column => column.Title));
        foreach (var row in Rows)
        {
            Line(target, widths, row.Select(Shown));
        }
    }

    private void Line(TextWriter target, int[] widths, IEnumerable<string> cells)
    {
        var line = new StringBuilder();
        foreach (var (cell, at) in cells.Select((cell, at) => (cell, at)))
        {
            line.Append(at == 0 ? string.Empty : "  ").Append(Columns[at].IsNumber ? cell.PadLeft(widths[at]) : cell.PadRight(widths[at]));
        }

        target.WriteLine(line.ToString().TrimEnd());
    }

    private void Csv(TextWriter target)
    {
        using var lines = new PageBuffer();
        CsvRows.Append(lines, [.. Columns.Select(column => column.Key)]);
        foreach (var row in Rows)
        {
            CsvRows.Append(lines, [.. row]);
        }

        target.Write(Encoding.UTF8.GetString(lines.Written));
    }

    private void Json(TextWriter target) => target.Write(JsonText.Document(isOneLine: false, json =>
            {
                json.WriteStartArray(Name);
                foreach (var row in Rows)
                {
                    json.WriteStartObject();
                    foreach (var (column, at) in Columns.Select((column, at) => (column, at)))
                    {
                        Cell(json, column, row[at]);
                    }

                    json.WriteEndObject();
                }

                json.WriteEndArray();
            }));

    private static void Cell(Utf8JsonWriter json, ListColumn column, string? cell)
    {
        if (cell is null)
        {
            json.WriteNull(column.Key);
        }
        else if (column.IsNumber)
        {
            json.WriteNumber(column.Key, int.Parse(cell, CultureInfo.InvariantCulture));
        }
        else
        {
            json.WriteString(column.Key, cell);
        }
    }

    private static string Shown(string? cell) => cell is null ? string.Empty : Printable.Escape(cell);
}
