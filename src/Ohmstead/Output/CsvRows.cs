using System.Buffers;
using System.Text;

namespace Ohmstead.Output;

/// <summary>Rows of a table as CSV (RFC 4180, UTF-8). A cell that a spreadsheet would take for a formula is made text.</summary>
/// <remarks>A large collection has a million of them, so they are written straight into bytes.</remarks>
internal static class CsvRows
{
    // What spreadsheets take for the start of a formula; line ends and tabs are written out before.
    private const string Formula = "=+-@";

    /// <summary>Writes a row.</summary>
    /// <param name="lines">Where it is written.</param>
    /// <param name="cells">Its cells; nothing where there is nothing to say.</param>
    public static void Append(IBufferWriter<byte> lines, params ReadOnlySpan<string?> cells)
    {
        for (var at = 0; at < cells.Length; at++)
        {
            if (at > 0)
            {
                lines.Write(","u8);
            }

            Cell(lines, Printable.Of(cells[at] ?? string.Empty));
        }

        lines.Write("\r\n"u8);
    }

    private static void Cell(IBufferWriter<byte> lines, string cell)
    {
        if (cell.Length == 0)
        {
            return;
        }

        // Spaces at an end belong to the cell, which not every reader knows of a bare one.
        var isQuoted = cell.AsSpan().IndexOfAny(",\"") >= 0 || cell[0] == ' ' || cell[^1] == ' ';
        if (Formula.Contains(cell[0], StringComparison.Ordinal))
        {
            cell = "'" + cell;
        }

        Encoding.UTF8.GetBytes(isQuoted ? $"\"{cell.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : cell, lines);
    }
}
