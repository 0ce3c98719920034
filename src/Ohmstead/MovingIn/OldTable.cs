using System.Globalization;
using Ohmstead.PartsLists;

namespace Ohmstead.MovingIn;

/// <summary>A table of a keeper, read and not yet understood.</summary>
/// <param name="File">The file as it was named.</param>
/// <param name="Sort">What its rows are.</param>
/// <param name="Cells">Its rows.</param>
/// <param name="Plan">What its columns hold.</param>
internal sealed record OldTable(string File, TableSort Sort, CsvTable Cells, ColumnPlan Plan)
{
    /// <summary>Cells that a spreadsheet keeps as figures, by row and column from 0: their decimal mark is known.</summary>
    public required IReadOnlySet<(int Row, int Column)> Figures { get; init; }

    /// <summary>The rows below the headings.</summary>
    public IEnumerable<CsvRow> Rows => Cells.Rows.Where(row => row.Line > Plan.HeadingLine);

    /// <summary>Its name without the folder.</summary>
    public string Name => Path.GetFileName(File);

    /// <summary>A refusal of one cell.</summary>
    public RefusedRow Refused(CsvRow row, PlannedColumn? column, string message, string? next) =>
        new(this, row.Line, column, message, next);
}

/// <summary>A row that is not taken in, and why.</summary>
/// <param name="Table">The table.</param>
/// <param name="Row">The row, by its line in the file or in the sheet; 0 where the whole table is meant.</param>
/// <param name="Column">The column, or null where the whole row is meant.</param>
/// <param name="Message">What was found and what was expected.</param>
/// <param name="NextStep">What to do, or null.</param>
internal sealed record RefusedRow(OldTable Table, int Row, PlannedColumn? Column, string Message, string? NextStep)
{
    /// <summary>Another row that must be mended first, where nothing is wrong with this one; or null.</summary>
    public string? WaitsFor { get; init; }

    /// <summary>The place as a person finds it: readings.csv, row 7, column 4 'ESR'.</summary>
    public string Place =>
        Table.File
        + (Row > 0 ? string.Create(CultureInfo.InvariantCulture, $", row {Row}") : string.Empty)
        + (
            Column is null
                ? string.Empty
                : string.Create(CultureInfo.InvariantCulture, $", column {Column.Index + 1} '{CsvTableReader.Excerpt(Column.Heading)}'")
        );
}

/// <summary>The cells of one row that are used, by what they hold. What a cell may not hold at all is refused before.</summary>
internal sealed class RowCells
{
    private readonly Dictionary<string, (PlannedColumn Column, string Text, bool IsFigure)> cells = new(StringComparer.Ordinal);

    private RowCells(OldTable table, CsvRow row)
    {
        Table = table;
        Row = row;
    }

    /// <summary>The table.</summary>
    public OldTable Table { get; }

    /// <summary>The row.</summary>
    public CsvRow Row { get; }

    /// <summary>Whether every used cell is empty.</summary>
    public bool AreEmpty => cells.Count == 0;

    /// <summary>What a cell says; null where it is empty or there is none.</summary>
    public string? this[string target] => cells.TryGetValue(target, out var cell) ? cell.Text : null;

    /// <summary>Whether a spreadsheet keeps a cell as a figure.</summary>
    public bool IsFigure(string target) => cells.TryGetValue(target, out var cell) && cell.IsFigure;

    /// <summary>A refusal of the cell with that meaning, or of the row.</summary>
    public RefusedRow Refused(string? target, string message, string? next) =>
        Table.Refused(Row, target is null ? null : Table.Plan.For(target), message, next);

    /// <summary>What an earlier row about the same thing says otherwise, and how nothing of either is lost; null where both say the
    /// same.</summary>
    public string? Against(RowCells earlier)
    {
        string[] differing =
        [
            .. earlier
                .cells.Keys.Union(cells.Keys, StringComparer.Ordinal)
                .Where(target => earlier[target] != this[target])
                .Select(target => $"'{Heading(earlier, target)}' is {Said(earlier[target])} there and {Said(this[target])} here"),
        ];
        return differing.Length == 0
            ? null
            : $"write what both say into one of the rows, and take the other out: {string.Join(", ", differing)}";
    }

    private string Heading(RowCells earlier, string target) =>
        CsvTableReader.Excerpt((cells.TryGetValue(target, out var own) ? own : earlier.cells[target]).Column.Heading);

    private static string Said(string? text) => text is null ? "empty" : CsvTableReader.Excerpt(text);

    /// <summary>The cells of a row, or why they are none.</summary>
    public static (RowCells? Cells, RefusedRow? Refused) Read(OldTable table, CsvRow row)
    {
        var width = table.Plan.Columns.Count;
        if (row.Cells.Count < width || row.Cells.Skip(width).Any(cell => cell.Length > 0))
        {
            return (
                null,
                table.Refused(
                    row,
                    null,
                    string.Create(CultureInfo.InvariantCulture, $"the row has {row.Cells.Count} cells, the headings have {width}"),
                    "put a cell that holds the separator into quotes"
                )
            );
        }

        var read = new RowCells(table, row);
        foreach (var column in table.Plan.Columns.Where(column => column.Target is not null && row.Cells[column.Index].Length > 0))
        {
            var (text, fault, next) = CellText.Read(row.Cells[column.Index]);
            if (fault is not null)
            {
                return (null, table.Refused(row, column, fault, next));
            }

            if (column.Target is TableSort.Board or TableSort.Part or ColumnPlan.Reference or "lot" && SumRow.Fault(text) is { } sums)
            {
                return (null, table.Refused(row, column, sums, SumRow.NextStep));
            }

            read.cells[column.Target!] = (column, text, table.Figures.Contains((row.Line, column.Index)));
        }

        return (read, null);
    }
}
