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

    /// <summary>The tables of the collection.</summary>
    public static IReadOnlyList<(string Name, Shape Row)> OfAll { get; } =
    [
        ("boards", BoardsTable.Columns.Row),
        ("designs", DesignsTable.Columns.Row),
        ("lots", LotsTable.Columns.Row),
        ("orders", OrdersTable.Columns.Row),
        ("findings", FindingsTable.Columns.Row),
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

    /// <summary>The JSON file of a board: a change to one board changes a small file.</summary>
    public static Shape WholeBoard { get; } =
        new(
            "board data",
            "What the report tells of a board, for programs.",
            "{ version: 3, board: SP-0007 }",
            [
                Key.Count("version", "The version of this form.", "3").Needed(),
                SharedKeys.Board,
                .. OfEachBoard.Select(table => Key.List(table.Name, OfOneBoard(table.Row), table.Row.Description).Needed()),
            ]
        );

    /// <summary>A row as it stands in the file of its board, which says once which board that is.</summary>
    public static Shape OfOneBoard(Shape row) =>
        new(
            row.Name,
            row.Description,
            row.Example.Replace("board: SP-0007, ", string.Empty, StringComparison.Ordinal),
            [.. row.Keys.Skip(1)]
        );
}
