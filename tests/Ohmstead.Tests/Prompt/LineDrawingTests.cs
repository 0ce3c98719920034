using Ohmstead.Prompt;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Prompt;

/// <summary>What stands on a terminal once a line was drawn over another, in wide and in narrow ones.</summary>
public sealed class LineDrawingTests
{
    private static readonly PromptText Prompt = new("C1 [nF] > ", "\e[1m", "\e[0m");

    [Theory]
    [InlineData(80)]
    [InlineData(40)]
    [InlineData(12)]
    public void A_line_is_drawn_over_the_one_before_whatever_their_lengths(int columns)
    {
        string[] lines =
        [
            "391 1.4",
            new string('9', 100),
            "測定測定測定測定測定測定測定測定測定測定",
            "e\u0301 👍🏽 391",
            string.Empty,
            "47",
        ];
        var screen = new TerminalScreen(columns);
        screen.Take("above\r\n");
        var drawn = Drawn.Nothing;
        foreach (var line in lines)
        {
            for (var cursor = 0; cursor <= line.Length; cursor = cursor == line.Length ? cursor + 1 : new EditLine(line, cursor).Right)
            {
                var (sent, now) = LineDrawing.Draw(Prompt, new(line, cursor), (columns, 100), drawn);
                drawn = now;
                screen.Take(sent);
                Assert.Equal("above", screen.Rows[0]);
                Assert.Equal(NoSpaces(Prompt.Text + line), NoSpaces(string.Concat(screen.Rows.Skip(1))));
                var cells = CellWidth.Measure(Prompt.Text) + CellWidth.Measure(line[..cursor]);
                if (columns == 80 && CellWidth.Measure(line) < 60)
                {
                    Assert.Equal((1, cells), screen.Cursor);
                }
            }
        }
    }

    // A space that a row ends with is not seen.
    private static string NoSpaces(string text) => text.Replace(" ", string.Empty, StringComparison.Ordinal);

    [Fact]
    public void A_line_taller_than_the_terminal_shows_the_rows_about_the_cursor()
    {
        var line = new EditLine(string.Concat(Enumerable.Range(0, 30).Select(row => $"<{row:00}>     ")), 0);
        var (sent, drawn) = LineDrawing.Draw(new("> "), line, (10, 5), Drawn.Nothing);
        Assert.Equal(4, drawn.Rows);
        Assert.StartsWith("> <00>", new TerminalScreen(10).Take(sent).Rows[0], StringComparison.Ordinal);
        var (end, atEnd) = LineDrawing.Draw(new("> "), line.At(line.Text.Length), (10, 5), Drawn.Nothing);
        Assert.Equal((4, 3), (atEnd.Rows, atEnd.CursorRow));
        Assert.Contains("<29>", string.Concat(new TerminalScreen(10).Take(end).Rows), StringComparison.Ordinal);
    }

    [Fact]
    public void What_nobody_could_see_is_written_out()
    {
        var (sent, _) = LineDrawing.Draw(new("> "), EditLine.For("39\u202E1"), (80, 24), Drawn.Nothing);
        Assert.Contains("39<U+202E>1", sent, StringComparison.Ordinal);
    }

    // Unicode 15.1, EastAsianWidth.txt: W and F take two cells; U+0301 combines; U+00B5 and U+03A9 are taken as one, as Western
    // terminals do.
    [Theory]
    [InlineData("391 µF Ω", 8)]
    [InlineData("測定", 4)]
    [InlineData("ｱ", 1)]
    [InlineData("Ａ", 2)]
    [InlineData("e\u0301", 1)]
    [InlineData("👍", 2)]
    [InlineData("👍🏽", 2)]
    public void Characters_take_the_cells_that_the_standard_gives_them(string text, int cells) =>
        Assert.Equal(cells, CellWidth.Measure(text));

    [Fact]
    public void A_choice_stands_in_columns_and_says_what_it_leaves_out()
    {
        Assert.Equal("C1   C2\r\nC13\r\n", ChoiceTable.For(["C1", "C2", "C13"], 12));
        var table = ChoiceTable.For([.. Enumerable.Range(1, 100).Select(part => $"R{part}")], 40);
        Assert.EndsWith(" more\r\n", table, StringComparison.Ordinal);
        Assert.All(table.Split("\r\n"), row => Assert.InRange(row.Length, 0, 39));
    }
}
