using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Xml;
using ExcelDataReader;
using ExcelDataReader.Exceptions;
using Ohmstead.Electronics;
using Ohmstead.PartsLists;

namespace Ohmstead.MovingIn;

/// <summary>Reads one sheet of a workbook (.xlsx): what its cells show, a day as 2026-03-14, a figure with the fifteen digits that a
/// spreadsheet keeps.</summary>
internal static class WorkbookReader
{
    private const long MostBytes = 64 << 20;
    private const long MostUnpacked = 512L << 20;
    private const int MostRows = 200_000;
    private const int MostColumns = 500;

    /// <summary>The sheet, or why there is none and what to do.</summary>
    /// <param name="file">The workbook.</param>
    /// <param name="sheet">The name of the sheet; null where the workbook has one that holds anything.</param>
    public static (ReadTable? Table, string? Fault, string? NextStep) Read(string file, string? sheet)
    {
        // The library asks for the encoding of old workbooks, which are not read here, before it looks at this one.
        Encoding.RegisterProvider(CodePagesEncodingProvider.Instance);
        try
        {
            using var stream = new FileStream(file, FileMode.Open, FileAccess.Read, FileShare.Read);
            if (stream.Length > MostBytes)
            {
                return (
                    null,
                    string.Create(CultureInfo.InvariantCulture, $"{file} has {stream.Length} bytes, at most {MostBytes} are read"),
                    null
                );
            }

            if (Fault(stream) is { } fault)
            {
                return (null, $"{file}: {fault}", "mend it in the spreadsheet, or save the sheet as CSV");
            }

            stream.Position = 0;
            using var book = ExcelReaderFactory.CreateOpenXmlReader(stream);
            return Read(file, sheet, book);
        }
        catch (Exception problem)
            when (problem is InvalidDataException or XmlException or ExcelReaderException or FormatException or OverflowException)
        {
            return (null, $"{file} is no workbook that can be read: {problem.Message}", "save it as .xlsx again, or the sheet as CSV");
        }
    }

    private static (ReadTable? Table, string? Fault, string? NextStep) Read(string file, string? sheet, IExcelDataReader book)
    {
        var found = new List<(string Name, ReadTable Table)>();
        do
        {
            if (sheet is not null && book.Name != sheet)
            {
                found.Add((book.Name, new(new(',', [], []), new HashSet<(int, int)>())));
                continue;
            }

            var (table, fault, next) = Sheet(book);
            if (table is null)
            {
                return (null, $"{file}, sheet '{book.Name}': {fault}", next);
            }

            found.Add((book.Name, table));
        } while (book.NextResult());

        var full = found.Where(one => one.Table.Cells.Rows.Count > 0).ToArray();
        return full.Length == 1
            ? (full[0].Table, null, null)
            : (
                null,
                sheet is not null && found.All(one => one.Name != sheet) ? $"{file} has no sheet '{sheet}'"
                : full.Length == 0 ? $"{file} has no row"
                : $"{file} has {full.Length.ToString(CultureInfo.InvariantCulture)} sheets",
                found.Count > 1 ? "name one: " + string.Join(", ", found.Select(one => $"\"{file}#{one.Name}\"")) : null
            );
    }

    private static (ReadTable? Table, string? Fault, string? NextStep) Sheet(IExcelDataReader book)
    {
        var rows = new List<(int Line, string[] Cells)>();
        var figures = new HashSet<(int, int)>();
        var width = 0;
        for (var line = 1; book.Read(); line++)
        {
            if (line > MostRows || book.FieldCount > MostColumns)
            {
                return (
                    null,
                    string.Create(CultureInfo.InvariantCulture, $"it has more than {MostRows} rows or {MostColumns} columns"),
                    "save what belongs to the table into a sheet of its own"
                );
            }

            var cells = new string[book.FieldCount];
            for (var column = 0; column < cells.Length; column++)
            {
                var value = book.GetValue(column);
                cells[column] = TextOf(value).Trim();
                if (value is double or int or decimal)
                {
                    figures.Add((line, column));
                }

                width = cells[column].Length > 0 ? Math.Max(width, column + 1) : width;
            }

            if (cells.Any(cell => cell.Length > 0))
            {
                rows.Add((line, cells));
            }
        }

        // Columns in which nothing stands are not of the table.
        return (new(new(',', [.. rows.Select(row => new CsvRow(row.Line, [.. row.Cells.Take(width)]))], []), figures), null, null);
    }

    private static string TextOf(object? value) =>
        value switch
        {
            null => string.Empty,
            string text => text,
            DateTime day => day.TimeOfDay == TimeSpan.Zero
                ? IsoDate.Text(DateOnly.FromDateTime(day))
                : day.ToString("yyyy-MM-dd HH:mm:ss", CultureInfo.InvariantCulture),
            bool yes => yes ? "yes" : "no",
            double figure => Math.Abs(figure) is > 1e-13 and < 1e15 || figure == 0
                ? decimal.Parse(figure.ToString("G15", CultureInfo.InvariantCulture), NumberStyles.Float, CultureInfo.InvariantCulture)
                    .ToString(CultureInfo.InvariantCulture)
                : figure.ToString("R", CultureInfo.InvariantCulture),
            IFormattable other => other.ToString(null, CultureInfo.InvariantCulture),
            _ => value.ToString() ?? string.Empty,
        };

    // A cell that shows an error comes out of the library as an empty one. And a small file may unpack to more than a machine holds.
    private static string? Fault(FileStream stream)
    {
        using var packed = new ZipArchive(stream, ZipArchiveMode.Read, leaveOpen: true);
        if (packed.Entries.Sum(entry => entry.Length) > MostUnpacked)
        {
            return string.Create(CultureInfo.InvariantCulture, $"it unpacks to more than {MostUnpacked} bytes");
        }

        foreach (
            var entry in packed.Entries.Where(entry => entry.FullName.StartsWith("xl/worksheets/", StringComparison.OrdinalIgnoreCase))
        )
        {
            if (!entry.FullName.EndsWith(".xml", StringComparison.OrdinalIgnoreCase))
            {
                continue;
            }

            using var xml = XmlReader.Create(entry.Open(), new() { DtdProcessing = DtdProcessing.Prohibit, CloseInput = true });
            while (xml.Read())
            {
                if (xml.NodeType == XmlNodeType.Element && xml.LocalName == "c" && xml.GetAttribute("t") == "e")
                {
                    return $"cell {xml.GetAttribute("r")} shows an error ({Path.GetFileNameWithoutExtension(entry.Name)})";
                }
            }
        }

        return null;
    }
}
