using System.Globalization;
using Ohmstead.Prompt;

namespace Ohmstead.Tests.Support;

/// <summary>What a terminal shows after what was sent to it: the few motions that a VT100 knows. Any other sequence fails.</summary>
/// <param name="columns">How many columns it has.</param>
/// <param name="wraps">True to go on in the next row where a row is full, as terminals do; else that fails.</param>
internal sealed class TerminalScreen(int columns, bool wraps = false)
{
    private readonly List<List<string>> rows =
    [
        [],
    ];
    private int row;
    private int column;

    /// <summary>The rows, without spaces at their ends.</summary>
    public IReadOnlyList<string> Rows => [.. rows.Select(cells => string.Concat(cells).TrimEnd())];

    /// <summary>Row and column of the cursor.</summary>
    public (int Row, int Column) Cursor => (row, column);

    /// <summary>Takes what is sent.</summary>
    public TerminalScreen Take(string sent)
    {
        var at = 0;
        while (at < sent.Length)
        {
            switch (sent[at])
            {
                case '\r':
                    column = 0;
                    at++;
                    break;
                case '\n':
                    Down(1);
                    at++;
                    break;
                case '\a':
                    at++;
                    break;
                case '\e':
                    at = Sequence(sent, at + 2);
                    break;
                default:
                    var (shown, length, cells) = CellWidth.Characters(sent[at..]).First();
                    Put(shown, cells);
                    at += length;
                    break;
            }
        }

        return this;
    }

    private int Sequence(string sent, int start)
    {
        Assert.Equal('[', sent[start - 1]);
        var end = start;
        while (!char.IsAsciiLetter(sent[end]))
        {
            end++;
        }

        var count = int.TryParse(sent[start..end], NumberStyles.None, CultureInfo.InvariantCulture, out var said) ? said : 1;
        switch (sent[end])
        {
            case 'A':
                row = Math.Max(row - count, 0);
                break;
            case 'B':
                Down(count);
                break;
            case 'C':
                column = Math.Min(column + count, columns - 1);
                break;
            case 'J':
                rows.RemoveRange(row + 1, rows.Count - row - 1);
                rows[row].RemoveRange(Math.Min(column, rows[row].Count), Math.Max(rows[row].Count - column, 0));
                break;
            case 'm':
            case 'h':
            case 'l':
                break;
            default:
                Assert.Fail($"no VT100 knows {sent[(start - 2)..(end + 1)].Replace('\e', '^')}");
                break;
        }

        return end + 1;
    }

    private void Put(string shown, int cells)
    {
        if (wraps && column + cells > columns)
        {
            column = 0;
            Down(1);
        }

        Assert.InRange(column + cells, 0, columns);
        var line = rows[row];
        if (cells == 0 && column > 0)
        {
            line[column - 1] += shown;
            return;
        }

        while (line.Count < column + cells)
        {
            line.Add(" ");
        }

        line[column] = shown;
        for (var more = 1; more < cells; more++)
        {
            line[column + more] = string.Empty;
        }

        column += cells;
    }

    private void Down(int count)
    {
        row += count;
        while (rows.Count <= row)
        {
            rows.Add([]);
        }
    }
}
