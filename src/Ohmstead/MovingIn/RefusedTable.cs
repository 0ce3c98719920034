using System.Globalization;
using System.Text;
using Ohmstead.Disk;
using Ohmstead.Output;
using Ohmstead.PartsLists;
using Ohmstead.Report.Html;

namespace Ohmstead.MovingIn;

/// <summary>Refused rows as a table of their own: mended there, they are given again beside the table that they came from, and stand in the
/// place of its rows.</summary>
internal static class RefusedTable
{
    private const string Row = "row";
    private const string Of = "of";
    private const string Why = "refused";
    private const string Next = "what to do";
    private const int MostTries = 100;

    /// <summary>Writes the refused rows of a table, and gives the name of the file; null where no single row was refused.</summary>
    /// <param name="table">The table.</param>
    /// <param name="refused">What was refused of it.</param>
    /// <param name="foreign">How the table writes figures.</param>
    /// <param name="folder">Where to; null for beside the table.</param>
    /// <param name="collection">The collection's folder.</param>
    /// <exception cref="IOException">It cannot be written.</exception>
    public static string? Write(OldTable table, IEnumerable<RefusedRow> refused, ForeignText foreign, string? folder, string collection)
    {
        var rows = refused.Where(one => one.Row > 0).GroupBy(one => one.Row).OrderBy(row => row.Key).ToArray();
        if (rows.Length == 0)
        {
            return null;
        }

        var cells = table.Cells.Rows.ToDictionary(row => row.Line);
        using var lines = new PageBuffer();
        string?[] headings = [Row, Of, .. table.Plan.Columns.Select(column => column.Heading), Why, Next];
        CsvRows.Begin(lines);
        CsvRows.Append(lines, headings);
        foreach (var row in rows.Where(row => cells.ContainsKey(row.Key)))
        {
            string?[] written =
            [
                row.Key.ToString(CultureInfo.InvariantCulture),
                table.Name,
                .. table.Plan.Columns.Select(column => CellOf(table, cells[row.Key], column.Index, foreign)),
                string.Join("; ", row.Select(one => (one.Column is null ? string.Empty : one.Column.Heading + ": ") + one.Message)),
                string.Join("; ", row.Select(one => one.NextStep).Distinct(StringComparer.Ordinal)),
            ];
            CsvRows.Append(lines, written);
        }

        return Put(
            folder is null ? TableReader.BesideIt(table.File) : Path.Combine(folder, Path.GetFileName(TableReader.BesideIt(table.File))),
            lines.Written.ToArray(),
            collection
        );
    }

    /// <summary>The rows of a table that was mended, by the table and the row that they stand for; or what is wrong with it.</summary>
    public static (IReadOnlyDictionary<(string Of, int Row), CsvRow>? Rows, string? Fault, string? NextStep) Read(string file)
    {
        var (read, fault, next) = TableReader.Read(file);
        if (read is null)
        {
            return (null, fault, next);
        }

        var rows = new Dictionary<(string, int), CsvRow>();
        var head = read.Cells.Rows[0].Cells;
        if (head is not [Row, Of, .., Why, Next])
        {
            return (
                null,
                $"{file} is no table of refused rows: its headings are not {Row}, {Of}, … {Why}, {Next}",
                "give it as it was written, mended within its cells"
            );
        }

        foreach (var row in read.Cells.Rows.Skip(1))
        {
            if (
                row.Cells.Count != head.Count
                || !int.TryParse(row.Cells[0], NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            )
            {
                return (
                    null,
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"{file}, line {row.Line}: its first cell names no row, or a cell is missing"
                    ),
                    "leave the first two columns and all commas as they were written"
                );
            }

            rows[(row.Cells[1], number)] = new(number, [.. row.Cells.Skip(2).Take(head.Count - 4).Select(Bare)]);
        }

        return (rows, null, null);
    }

    // A figure of a spreadsheet is written as the table writes figures.
    private static string CellOf(OldTable table, CsvRow row, int column, ForeignText foreign)
    {
        var text = column < row.Cells.Count ? row.Cells[column] : string.Empty;
        return foreign.Decimals == "comma" && table.Figures.Contains((row.Line, column)) ? text.Replace('.', ',') : text;
    }

    // The sign before what a spreadsheet would compute goes again.
    private static string Bare(string cell) =>
        cell.Length > 1 && cell[0] == '\'' && "=+-@".Contains(cell[1], StringComparison.Ordinal) ? cell[1..] : cell;

    // A table that is there may hold what a person has mended: it stays, and another name is taken.
    private static string Put(string path, byte[] bytes, string collection)
    {
        var stem = path[..^".csv".Length];
        for (var number = 1; number < MostTries; number++)
        {
            var free = number == 1 ? path : string.Create(CultureInfo.InvariantCulture, $"{stem}-{number}.csv");
            if (!File.Exists(free))
            {
                new OutputFile(free, Encoding.UTF8.GetBytes(Row), collection).Write(bytes, isOver: false);
                return free;
            }

            if (new FileInfo(free).Length == bytes.Length && File.ReadAllBytes(free).AsSpan().SequenceEqual(bytes))
            {
                return free;
            }
        }

        throw new IOException($"{path} and {MostTries.ToString(CultureInfo.InvariantCulture)} like it are there: take the old ones away");
    }
}
