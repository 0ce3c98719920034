using Ohmstead.Publishing.Tables;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Publishing;

/// <summary>What the report tells programs: tables of equal rows. The JSON file, the CSV files and the published schema all follow these
/// shapes, so they cannot disagree.</summary>
internal static class DataShapes
{
    /// <summary>The tables with a row or more for each board.</summary>
    public static IReadOnlyList<(string Name, Shape Row)> OfEachBoard { get; } =
    [
        ("parts", PartsTable.Columns.Row),
        ("readings", ReadingsTable.Columns.Row),
        ("bench", BenchTable.Columns.Row),
        ("obligations", ObligationsTable.Columns.Row),
    ];

    /// <summary>The same as the file of a board tells them: what is the same in many rows stands there once. What most rows have comes
    /// first, since nothing is written behind the last cell that says something.</summary>
    public static IReadOnlyList<BoardTable> OfOneBoard { get; } =
    [
        BoardTable.Of(
            "parts",
            PartsTable.Columns,
            BoardColumn.Own("part"),
            BoardColumn.Own("what"),
            BoardColumn.Once("sits"),
            BoardColumn.Once("outcome"),
            BoardColumn.Once("unit"),
            BoardColumn.Own("value"),
            Limit,
            BoardColumn.Own("lot"),
            BoardColumn.Once("changed"),
            BoardColumn.Once("decided"),
            BoardColumn.Once("because"),
            BoardColumn.Once("decision_doubt")
        ),
        BoardTable.Of(
            "readings",
            ReadingsTable.Columns,
            BoardColumn.Own("of"),
            BoardColumn.Own("line"),
            BoardColumn.Once("taken", "date", "by", "kind", "circuit", "instrument"),
            BoardColumn.Once("quantity", "measured", "unit"),
            BoardColumn.Own("written"),
            BoardColumn.Once("outcome"),
            BoardColumn.Own("value"),
            BoardColumn.Once("against", "limit_kind", "limit_from"),
            Limit,
            BoardColumn.Own("uncertainty"),
            BoardColumn.Own("probability_inside")
        ),
        BoardTable.Of(
            "bench",
            BenchTable.Columns,
            BoardColumn.Own("line"),
            BoardColumn.Once("visit", "date", "by"),
            BoardColumn.Once("entry"),
            BoardColumn.Own("at"),
            BoardColumn.Own("what"),
            BoardColumn.Once("severity"),
            BoardColumn.Own("lot"),
            BoardColumn.Once("note")
        ),
        BoardTable.Of(
            "obligations",
            ObligationsTable.Columns,
            BoardColumn.Once("asked", "kind", "standing", "text", "state", "next"),
            BoardColumn.Own("at"),
            BoardColumn.Own("line"),
            BoardColumn.Once("day"),
            BoardColumn.Once("evidence"),
            BoardColumn.Once("record")
        ),
    ];

    /// <summary>The tables of the collection.</summary>
    public static IReadOnlyList<(string Name, Shape Row)> OfAll { get; } =
    [
        ("boards", BoardsTable.Columns.Row),
        ("designs", DesignsTable.Columns.Row),
        ("lots", LotsTable.Columns.Row),
        ("orders", OrdersTable.Columns.Row),
        ("findings", FindingsTable.Columns.Row),
        ("kinds", KindsTable.Columns.Row),
    ];

    /// <summary>Every table by name.</summary>
    public static IReadOnlyList<(string Name, Shape Row)> All { get; } = [OfAll[0], .. OfEachBoard, .. OfAll.Skip(1)];

    /// <summary>The JSON file of the collection.</summary>
    public static Shape Whole { get; } =
        new(
            "report data",
            "What the report of a collection tells, for programs. What it tells of each board is in a file of its own.",
            "{ version: 2, collection: Saltmarsh Point, as_of: 2026-11-25 }",
            [
                Key.Count("version", "The version of this form.", "2").Needed(),
                Key.Text("collection", "The name of the collection.", "Saltmarsh Point").Needed(),
                Key.Date("as_of", "The day that was taken for today.", "2026-11-25").Needed(),
                .. OfAll.Select(table => Key.List(table.Name, table.Row, table.Row.Description).Needed()),
            ]
        );

    // A part and what was read of it often have one limit.
    private static BoardColumn Limit => BoardColumn.Once("limit", "low", "high");
}
