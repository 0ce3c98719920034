using System.Globalization;
using System.Text;
using Ohmstead.Report.Html;
using Ohmstead.Running;

namespace Ohmstead.Output;

/// <summary>Rows of a table as CSV (RFC 4180, UTF-8). A cell that a spreadsheet would take for a formula is made text.</summary>
/// <remarks>A large collection has a million of them, so they are written straight into bytes.</remarks>
internal static class CsvRows
{
    // What spreadsheets take for the start of a formula, with the forms of it that are as wide as a Chinese letter, which some take for it
    // too; line ends and tabs are written out before.
    private const string Formula = "=+-@＝＋－＠";

    // Neither hidden nor with a meaning in CSV, wherever in a cell but at its start.
    private static readonly PlainCharacters Plain = new(c =>
        char.IsAsciiLetterOrDigit(c) || " .:;/%()+-_=@µ±°Ω…".Contains(c, StringComparison.Ordinal)
    );

    /// <summary>Starts a file with the mark by which a spreadsheet knows UTF-8: without it Ω and µ are read as letters of the machine's own
    /// code page, and nobody is told. Every file has it, so that none is read otherwise than the one beside it. What goes to a terminal has
    /// none: there the next program would take it for a part of the first heading.</summary>
    public static void Begin(PageBuffer lines) => lines.Append("\uFEFF"u8);

    /// <summary>Writes a row.</summary>
    /// <param name="lines">Where it is written.</param>
    /// <param name="cells">Its cells; nothing where there is nothing to say.</param>
    public static void Append(PageBuffer lines, params ReadOnlySpan<string?> cells)
    {
        for (var at = 0; at < cells.Length; at++)
        {
            if (at > 0)
            {
                lines.Append(","u8);
            }

            Cell(lines, cells[at]);
        }

        lines.Append("\r\n"u8);
    }

    private static void Cell(PageBuffer lines, string? cell)
    {
        if (string.IsNullOrEmpty(cell))
        {
            return;
        }

        // Nearly every cell is plain: it is looked at once.
        var isFormula = StartsFormula(cell[0]) && !IsNegativeFigure(cell);
        var mayBegin = !isFormula && cell[0] != ' ' && cell[^1] != ' ';
        if (mayBegin && lines.TryAppendPlain(cell, Plain))
        {
            return;
        }

        // Spaces at an end belong to the cell, which not every reader knows of a bare one.
        var text = Printable.Escape(cell);
        var isQuoted = text.AsSpan().IndexOfAny(",\"") >= 0 || text[0] == ' ' || text[^1] == ' ';
        if (isQuoted)
        {
            lines.Append("\""u8);
        }

        if (isFormula)
        {
            lines.Append("'"u8);
        }

        Encoding.UTF8.GetBytes(isQuoted ? text.Replace("\"", "\"\"", StringComparison.Ordinal) : text, lines);
        if (isQuoted)
        {
            lines.Append("\""u8);
        }
    }

    private static bool StartsFormula(char first) => Formula.Contains(first, StringComparison.Ordinal);

    // A figure below zero is a figure: a quote before it would make it text.
    private static bool IsNegativeFigure(string cell) =>
        cell.Length > 1
        && cell[0] == '-'
        && char.IsAsciiDigit(cell[1])
        && decimal.TryParse(cell, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out _);
}
