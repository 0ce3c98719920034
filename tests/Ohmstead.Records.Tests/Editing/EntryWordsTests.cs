using Ohmstead.Records.Editing;
using Ohmstead.Records.Editing.Edits;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Shapes;
using Ohmstead.Records.Text;
using Ohmstead.Yaml;

namespace Ohmstead.Records.Tests.Editing;

public sealed class EntryWordsTests
{
    private const string Record = """
        ---
        board: SP-0001
        bench:
          - date: 2026-02-14
            readings:
              - { part: C1, esr: 62 mΩ }   # warm
              - { part: C2, esr: 3.9 Ω, verdict: in, note: a }
              - { part: C3, polarity: [a, b],
                  note: c }
              - part: C4
                esr: 1 Ω   # at last
                note: |
                  d
              - part: C5
                verdict: in
        ---
        """;

    [Fact]
    public void A_word_stands_behind_the_keys_that_come_before_it() =>
        Assert.Equal(Record.Replace("62 mΩ }", "62 mΩ, verdict: out }", StringComparison.Ordinal), Set(6, 9, "out").Text);

    [Fact]
    public void A_word_takes_the_place_of_another() =>
        Assert.Equal(Record.Replace("verdict: in, note: a", "verdict: out, note: a", StringComparison.Ordinal), Set(7, 9, "out").Text);

    [Fact]
    public void A_word_is_taken_out() =>
        Assert.Equal(Record.Replace(", verdict: in, note: a", ", note: a", StringComparison.Ordinal), Set(7, 9, null).Text);

    [Fact]
    public void An_entry_over_several_lines_keeps_its_folds() =>
        Assert.Equal(Record.Replace("part: C3,", "part: C3, verdict: out,", StringComparison.Ordinal), Set(8, 9, "out").Text);

    [Fact]
    public void An_entry_without_braces_gets_a_line_and_remarks_stay_on_theirs() =>
        Assert.Equal(Record.Replace("# at last\n", "# at last\n        verdict: out\n", StringComparison.Ordinal), Set(10, 9, "out").Text);

    [Fact]
    public void A_line_with_the_word_alone_is_taken_out() =>
        Assert.Equal(Record.Replace("part: C5\n        verdict: in\n", "part: C5\n", StringComparison.Ordinal), Set(14, 9, null).Text);

    [Fact]
    public void A_place_where_no_entry_stands_is_refused() => Assert.NotNull(Set(5, 9, "out").Refusal);

    [Fact]
    public void A_word_whose_line_holds_a_remark_is_not_taken_out()
    {
        var text = Record.Replace("verdict: in\n", "verdict: in   # by eye\n", StringComparison.Ordinal);
        Assert.NotNull(Set(14, 9, null, text).Refusal);
    }

    private static EditOutcome Set(int line, int column, string? word, string text = Record)
    {
        // In braces the place is the brace itself, one character long.
        var length = text.Split('\n')[line - 1].Contains('{', StringComparison.Ordinal) ? 1 : 0;
        return EntryWords.Set(
            "boards/SP-0001.md",
            text,
            FileForm.Markdown,
            new YamlNodeReader(),
            [new EntryWord(new Spot(line, column, length), BenchShape.Reading, "verdict", word)]
        );
    }
}
