using System.Globalization;
using System.Text;

namespace Ohmstead.Prompt;

/// <summary>What stands on the terminal of a line: how many rows, and in which of them the cursor is.</summary>
/// <param name="CursorRow">The row of the cursor, from the first one of the line.</param>
/// <param name="Rows">How many rows are taken.</param>
internal readonly record struct Drawn(int CursorRow, int Rows)
{
    /// <summary>Nothing yet.</summary>
    public static Drawn Nothing { get; } = new(0, 1);
}

/// <summary>Draws a prompt and its line over what was drawn before, however many rows they take.</summary>
/// <remarks>Four motions that every terminal since the VT100 knows: up, right, to the beginning, and clear to the end of the screen. The
/// last
/// column is left free, since terminals do not agree what happens there.</remarks>
internal static class LineDrawing
{
    /// <summary>Draws.</summary>
    /// <param name="prompt">What stands in front of the line; it may carry colours.</param>
    /// <param name="line">The line.</param>
    /// <param name="size">Columns and rows of the terminal.</param>
    /// <param name="before">What was drawn before.</param>
    /// <returns>What is sent, and what stands there then.</returns>
    public static (string Sent, Drawn Drawn) Draw(PromptText prompt, EditLine line, (int Columns, int Rows) size, Drawn before)
    {
        var room = Math.Max(size.Columns - 1, 2);
        var rows = new List<StringBuilder> { new() };
        var used = 0;
        var (cursorRow, cursorColumn) = (0, 0);
        foreach (var (shown, _, cells) in CellWidth.Characters(prompt.Text))
        {
            Add(shown, cells);
        }

        var at = 0;
        (cursorRow, cursorColumn) = (rows.Count - 1, used);
        foreach (var (shown, length, cells) in CellWidth.Characters(line.Text))
        {
            var isHere = at == line.Cursor;
            foreach (var part in cells > 2 ? shown.Select(unit => unit.ToString()) : [shown])
            {
                Add(part, Math.Min(cells, cells > 2 ? 1 : cells));
                if (isHere)
                {
                    (cursorRow, cursorColumn) = (rows.Count - 1, used - (cells > 2 ? 1 : cells));
                    isHere = false;
                }
            }

            at += length;
            if (at == line.Cursor)
            {
                (cursorRow, cursorColumn) = (rows.Count - 1, used);
            }
        }

        return Sent(rows, size.Rows, cursorRow, cursorColumn, before, prompt);

        void Add(string shown, int cells)
        {
            if (used + cells > room)
            {
                rows.Add(new());
                used = 0;
            }

            rows[^1].Append(shown);
            used += cells;
        }
    }

    /// <summary>Goes below what was drawn, to the beginning of a new row.</summary>
    public static string Leave(Drawn drawn) => Down(drawn.Rows - 1 - drawn.CursorRow) + "\r\n";

    /// <summary>Takes away what was drawn, and stands where it began.</summary>
    public static string Take(Drawn drawn) => Up(drawn.CursorRow) + "\r\e[J";

    private static (string Sent, Drawn Drawn) Sent(
        List<StringBuilder> rows,
        int height,
        int cursorRow,
        int cursorColumn,
        Drawn before,
        PromptText prompt
    )
    {
        // A line that is taller than the terminal shows the rows about the cursor.
        var shownRows = Math.Min(rows.Count, Math.Max(height - 1, 1));
        var first = Math.Clamp(cursorRow - shownRows + 1, 0, rows.Count - shownRows);
        var sent = new StringBuilder(Take(before));
        for (var row = 0; row < shownRows; row++)
        {
            var text = rows[first + row].ToString();
            sent.Append(row > 0 ? "\r\n" : string.Empty).Append(first + row == 0 ? prompt.Coloured(text) : text);
        }

        sent.Append(Up(shownRows - 1 - (cursorRow - first))).Append('\r').Append(Motion(cursorColumn, 'C'));
        return (sent.ToString(), new(cursorRow - first, shownRows));
    }

    private static string Up(int rows) => Motion(rows, 'A');

    private static string Down(int rows) => Motion(rows, 'B');

    private static string Motion(int count, char letter) =>
        count > 0 ? string.Create(CultureInfo.InvariantCulture, $"\e[{count}{letter}") : string.Empty;
}

/// <summary>What stands in front of a line.</summary>
/// <param name="Text">The words, safe to print.</param>
/// <param name="Colour">What is sent in front of them, and nothing where there are no colours.</param>
/// <param name="Plain">What ends the colour.</param>
internal readonly record struct PromptText(string Text, string Colour = "", string Plain = "")
{
    /// <summary>The first row with the prompt in its colour.</summary>
    public string Coloured(string row) =>
        Colour.Length > 0 && row.StartsWith(Text, StringComparison.Ordinal) ? Colour + Text + Plain + row[Text.Length..] : row;
}
