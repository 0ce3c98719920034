using System.Buffers;
using System.Text;

namespace Ohmstead.Output;

/// <summary>Rows of a table as CSV (RFC 4180, UTF-8). A cell that a spreadsheet would take for a formula is made text.</summary>
/// <remarks>A large collection has a million of them, so they are written straight into bytes.</remarks>
internal static class CsvRows
{
    // What spreadsheets take for the start of a formula; line ends and tabs are written out before.
    private const string Formula = "=+-@";

    // Neither hidden nor with a meaning in CSV, wherever in a cell.
    private static readonly SearchValues<char> Plain = SearchValues.Create("0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz .:;/%()+-_=@µ±°Ω…");

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

            Cell(lines, cells[at]);
        }

        lines.Write("\r\n"u8);
    }

    private static void Cell(IBufferWriter<byte> lines, string? cell)
    {
        if (string.IsNullOrEmpty(cell))
        {
            return;
        }

        // Nearly every cell is plain: it is looked at once.
        var isPlain = !cell.AsSpan().ContainsAnyExcept(Plain);
        var text = isPlain ? cell : Printable.Of(cell);

        // Spaces at an end belong to the cell, which not every reader knows of a bare one.
        var isQuoted = (!isPlain && text.AsSpan().IndexOfAny(",\"") >= 0) || text[0] == ' ' || text[^1] == ' ';
        if (isQuoted)
        {
            lines.Write("\""u8);
        }

        if (Formula.Contains(text[0], StringComparison.Ordinal))
        {
            lines.Write("'"u8);
        }

        Encoding.UTF8.GetBytes(isPlain || !isQuoted ? text : text.Replace("\"", "\"\"", StringComparison.Ordinal), lines);
        if (isQuoted)
        {
            lines.Write("\""u8);
        }
    }
}
