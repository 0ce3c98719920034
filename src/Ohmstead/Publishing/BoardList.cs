using System.Globalization;
using System.Text;
using System.Text.Json;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Electronics;
using Ohmstead.Output;
using Ohmstead.Publishing.Tables;
using Ohmstead.Records.Shapes;
using Ohmstead.Report.Html;

namespace Ohmstead.Publishing;

/// <summary>The list of boards for programs and spreadsheets: what the table of the report says of each board, but for the files of the
/// report, and which kinds of obligation are open.</summary>
internal static class BoardList
{
    /// <summary>Its schema.</summary>
    public const string SchemaName = "board-list";

    private static readonly string[] FilesOfTheReport = ["page", "data", "badge"];

    private static readonly int[] Kept =
    [
        .. BoardsTable
            .Columns.Row.Keys.Index()
            .Where(key => !FilesOfTheReport.Contains(key.Item.Name, StringComparer.Ordinal))
            .Select(key => key.Index),
    ];

    /// <summary>A board.</summary>
    public static Shape Row { get; } =
        new(
            "board of the list",
            "One board with its state, and what it needs.",
            "{ board: SP-0007, title: Barograph servo amplifier, state: fit to run, look_overdue: no, record: boards/SP-0007.md }",
            [
                .. Kept.Select(at => BoardsTable.Columns.Row.Keys[at]),
                Key.Text("needs", "The kinds of obligation that are open, as the option --needs names them.", "way-round; point-proved"),
            ]
        );

    /// <summary>The JSON document.</summary>
    public static Shape Whole { get; } =
        new(
            "board list",
            "What ohmstead boards lists, for programs.",
            "{ version: 1, as_of: 2026-11-25, boards: [] }",
            [
                Key.Count("version", "The version of this form.", "1").Needed(),
                Key.Date("as_of", "The day that was taken for today.", "2026-11-25").Needed(),
                Key.List("boards", Row, Row.Description).Needed(),
            ]
        );

    /// <summary>Writes the JSON document.</summary>
    public static void Json(TextWriter target, IEnumerable<BoardSummary> boards, Workshop workshop, DateOnly today) =>
        target.Write(JsonText.Document(isOneLine: false, json =>
            {
                json.WriteString("as_of", IsoDate.Text(today));
                json.WriteStartArray("boards");
                foreach (var board in boards)
                {
                    json.WriteStartObject();
                    foreach (var (key, cell) in Row.Keys.Zip(Cells(board, workshop)))
                    {
                        Cell(json, key, cell);
                    }

                    json.WriteEndObject();
                }

                json.WriteEndArray();
            }));

    /// <summary>Writes the table (RFC 4180).</summary>
    public static void Csv(TextWriter target, IEnumerable<BoardSummary> boards, Workshop workshop)
    {
        using var lines = new PageBuffer();
        DataForm.CsvHead(lines, Row);
        foreach (var board in boards)
        {
            CsvRows.Append(lines, Cells(board, workshop));
        }

        target.Write(Encoding.UTF8.GetString(lines.Written));
    }

    private static string?[] Cells(BoardSummary board, Workshop workshop)
    {
        var all = BoardsTable.Columns.Cells((board, workshop));
        var kinds = board.Reasons.Select(reason => reason.Kind).Distinct(StringComparer.Ordinal);
        return [.. Kept.Select(at => all[at]), board.Reasons.Length == 0 ? null : string.Join("; ", kinds)];
    }

    private static void Cell(Utf8JsonWriter json, Key key, string? cell)
    {
        if (cell is null)
        {
            return;
        }

        if (key.Kind == ValueKind.Count)
        {
            json.WriteNumber(key.Name, int.Parse(cell, CultureInfo.InvariantCulture));
        }
        else
        {
            json.WriteString(key.Name, cell);
        }
    }
}
