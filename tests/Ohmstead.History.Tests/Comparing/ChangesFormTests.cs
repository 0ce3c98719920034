using System.Text;
using System.Text.Json;
using Ohmstead.Assessment.Changes;
using Ohmstead.Output.Changes;

namespace Ohmstead.History.Tests.Comparing;

/// <summary>What differs, in the forms for a pull request and for programs.</summary>
public sealed class ChangesFormTests
{
    [Fact]
    public void A_summary_names_counts_and_states_and_folds_the_rest()
    {
        using var states = new TwoStates();
        states.Do("work", "SP-0007", "replaced", "C4", "--lot", "L-018", "--polarity", "schematic", "--by", "RK");
        var text = states.Text("--form", "markdown");
        Assert.StartsWith(
            "**1 state, 1 day of the next look, 1 life, 1 lot in the drawer, 1 finding differ; 19 boards are as they were**\n",
            text,
            StringComparison.Ordinal
        );
        Assert.Contains("\n| ` SP-0007 ` | fit to run | proof due | work |\n", text, StringComparison.Ordinal);
        Assert.EndsWith("```\n\n</details>\n", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("```\n</details><script>alert(1)</script>\n@keeper closes #12")]
    [InlineData("a | b | c ` `` ``` ````")]
    [InlineData("\u001b[31mred\u202Eback\u0007")]
    public void Hostile_text_stays_text(string hostile)
    {
        var board = new BoardChanges(
            hostile,
            "boards/a.md",
            "boards/a.md",
            "fit to run",
            [new(ChangeKind.State, string.Empty, "fit to run", "proof due"), new(ChangeKind.Reason, string.Empty, null, hostile)],
            []
        );
        var text = Markdown(new([board], [], [], 0), ChangesMarkdown.Most);
        Assert.DoesNotContain('\u001b', text);
        Assert.DoesNotContain('\u202e', text);
        var lines = text.Split('\n');
        var row = Assert.Single(lines, line => line.StartsWith("| `", StringComparison.Ordinal));
        // Five bars of the table and no other that is not escaped: the number is one cell.
        Assert.Equal(5, row.Where((letter, at) => letter == '|' && (at == 0 || row[at - 1] != '\\')).Count());

        // All else stands between two fences longer than any run of their sign inside.
        var open = Array.FindIndex(lines, line => line.StartsWith("```", StringComparison.Ordinal));
        var fence = lines[open][..^"text".Length];
        var close = Array.FindIndex(lines, open + 1, line => line.StartsWith(fence, StringComparison.Ordinal));
        Assert.Equal(["", "</details>", ""], lines[(close + 1)..]);
        Assert.DoesNotContain("<script>", string.Join('\n', lines[..open].Where(line => line != row)), StringComparison.Ordinal);
    }

    [Fact]
    public void Ten_thousand_boards_fit_into_a_summary_that_says_what_it_left_out()
    {
        var boards = Enumerable
            .Range(1, 10_000)
            .Select(number => new BoardChanges(
                $"SP-{number:00000}",
                "boards/a.md",
                "boards/a.md",
                "proof due",
                [
                    new(ChangeKind.State, string.Empty, "fit to run", "proof due"),
                    new(ChangeKind.Reason, string.Empty, null, $"{number} {new string('µ', 200)}"),
                ],
                []
            ));
        var text = Markdown(new([.. boards], [], [], 0), ChangesMarkdown.Most);
        Assert.InRange(Encoding.UTF8.GetByteCount(text), ChangesMarkdown.Most / 2, ChangesMarkdown.Most);
        Assert.Matches("\nand [0-9]+ more lines, left out\n\n</details>\n$", text);
        // No half row and no half line.
        Assert.All(text.Split('\n').Where(line => line.StartsWith('|')), line => Assert.EndsWith("|", line, StringComparison.Ordinal));
        Assert.All(text.Split('\n').Where(line => line.Contains('µ', StringComparison.Ordinal)), line =>
            Assert.EndsWith("µ", line, StringComparison.Ordinal)
        );
    }

    [Fact]
    public void What_programs_read_says_where_each_entry_stood_and_stands()
    {
        using var states = new TwoStates();
        states.Edit("boards/SP-0007.md", "capacitance: 31.8 µF, esr: 9.4 Ω", "capacitance: 41.8 µF, esr: 9.4 Ω");
        var board = Assert.Single(states.Json().GetProperty("boards").EnumerateArray());
        var entry = Assert.Single(board.GetProperty("entries").EnumerateArray());
        Assert.Equal(
            ("reading", "C3", "2026-02-28", "changed"),
            (Text(entry, "kind"), Text(entry, "of"), Text(entry, "day"), Text(entry, "status"))
        );
        Assert.Equal("31.8 µF", entry.GetProperty("was").GetProperty("says").GetProperty("capacitance").GetString());
        Assert.Equal("41.8 µF", entry.GetProperty("now").GetProperty("says").GetProperty("capacitance").GetString());
        Assert.Equal(23, entry.GetProperty("now").GetProperty("line").GetInt32());
    }

    [Fact]
    public void What_programs_read_follows_its_schema()
    {
        var schema = new PublishedSchema("changes");
        using var states = new TwoStates();
        schema.Holds(states.Json());
        states.Do("work", "SP-0007", "replaced", "C4", "--lot", "L-018", "--polarity", "schematic", "--by", "RK");
        states.Edit("collection.yaml", "decision: guarded", "decision: simple");
        File.Delete(states.Now.At("boards/SP-0009.md"));
        states.Edit("boards/SP-0011.md", "board: SP-0011", "board: [");
        schema.Holds(states.Json());
    }

    private static string? Text(JsonElement element, string name) => element.GetProperty(name).GetString();

    private static string Markdown(CollectionChanges changes, int most)
    {
        using var text = new StringWriter { NewLine = "\n" };
        ChangesMarkdown.Write(text, changes, most);
        return text.ToString();
    }
}
