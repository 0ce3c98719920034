using System.Collections.Frozen;
using Ohmstead.PartsLists;
using Ohmstead.Starting;

namespace Ohmstead.MovingIn;

/// <summary>A table as its file holds it: its rows, and which cells are figures to a spreadsheet.</summary>
/// <param name="Cells">The rows.</param>
/// <param name="Figures">Cells kept as figures, by row and column from 0.</param>
internal sealed record ReadTable(CsvTable Cells, IReadOnlySet<(int Row, int Column)> Figures);

/// <summary>Reads the file of a table: CSV, or one sheet of a workbook as <c>book.xlsx#Sheet</c>.</summary>
internal static class TableReader
{
    // One sheet of a workbook is named behind its file.
    private const char BeforeSheet = '#';

    /// <summary>The table, or why there is none and what to do.</summary>
    /// <exception cref="IOException">It cannot be read.</exception>
    public static (ReadTable? Table, string? Fault, string? NextStep) Read(string named)
    {
        var (file, sheet) = Split(named);
        if (IsWorkbook(file))
        {
            return File.Exists(file) ? WorkbookReader.Read(file, sheet) : (null, $"there is no file '{file}'", null);
        }

        if (Path.GetExtension(file).ToUpperInvariant() is ".XLS" or ".ODS" or ".XLSM" or ".XLSB")
        {
            return (null, $"{file} is a workbook of another form", "save it as .xlsx or as CSV");
        }

        if (!ListFile.Read(named).Is(out var text, out var problem))
        {
            return (null, problem, null);
        }

        var table = CsvTableReader.Read(text);
        return table.Faults.Count > 0 ? (null, $"{named}, {table.Faults[0].Place}: {table.Faults[0].Message}", table.Faults[0].NextStep)
            : table.Rows.Count == 0 ? (null, $"{named} has no row", null)
            : (new(table, FrozenSet<(int, int)>.Empty), null, null);
    }

    /// <summary>The rows of a table; a line that is none of a table is a fault of the table, and not of its file.</summary>
    /// <exception cref="IOException">It cannot be read.</exception>
    public static (CsvTable? Rows, string? Fault, string? NextStep) ReadRows(string named)
    {
        if (IsNamed(named) && Path.GetExtension(Split(named).File).ToUpperInvariant() is not (".CSV" or ".TSV" or ".TXT"))
        {
            var (table, fault, next) = Read(named);
            return (table?.Cells, fault, next);
        }

        return ListFile.Read(named).Is(out var text, out var problem) ? (CsvTableReader.Read(text), null, null) : (null, problem, null);
    }

    /// <summary>Whether a word names a table rather than a record: it ends as one does.</summary>
    public static bool IsNamed(string word) =>
        Path.GetExtension(Split(word).File).ToUpperInvariant() is ".CSV" or ".TSV" or ".TXT" or ".XLSX" or ".XLS" or ".XLSM" or ".ODS";

    /// <summary>Where the rows of a table go that are refused: beside it, as CSV.</summary>
    public static string BesideIt(string named)
    {
        var (file, sheet) = Split(named);
        var name =
            Path.GetFileNameWithoutExtension(file)
            + (sheet is null ? string.Empty : "-" + new string([.. sheet.Where(char.IsLetterOrDigit)]));
        return Path.Combine(Path.GetDirectoryName(file) ?? string.Empty, name + ".refused.csv");
    }

    private static (string File, string? Sheet) Split(string named)
    {
        var at = named.LastIndexOf(BeforeSheet);
        return at > 0 && IsWorkbook(named[..at]) ? (named[..at], named[(at + 1)..]) : (named, null);
    }

    private static bool IsWorkbook(string file) => Path.GetExtension(file).Equals(".xlsx", StringComparison.OrdinalIgnoreCase);
}
