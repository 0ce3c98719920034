using Ohmstead.Records.Editing;
using Ohmstead.Records.Editing.Edits;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Shapes;
using Ohmstead.Yaml;

namespace Ohmstead.Records.Tests.Editing;

public sealed class RecordEditorTests
{
    private const string Reading = "{ part: C12, esr: 1.4 Ω }";

    private const string OneVisit =
        $"---\nboard: SP-0001\ntitle: Tide-gauge logger\nbench:\n  - date: 2026-02-14\n    readings:\n      - {Reading}\n---\n";

    [Fact]
    public void A_reading_joins_the_readings_of_its_day_as_one_line_and_nothing_else_changes()
    {
        const string before = """
            ---
            board: SP-0001   # the one from the east well
            title: Tide-gauge logger
            bench:
              - date: 2026-02-14
                by: RK
                readings:
                  - { part: C1, esr: 62 mΩ }   # warm
                  # the next one was hard to reach
                  - { part: C2, esr: 3.92 Ω }

                work:
                  - { part: C2, did: removed }
            # waits come last
            waiting: []
            ---
            ## Story
            """;
        Assert.Equal(
            before.Replace("{ part: C2, esr: 3.92 Ω }\n", "{ part: C2, esr: 3.92 Ω }\n      - " + Reading + "\n", StringComparison.Ordinal),
            Enter(before, "2026-02-14")
        );
    }

    [Fact]
    public void A_day_without_readings_gets_its_list_where_readings_belong()
    {
        const string before = """
            ---
            board: SP-0001
            title: Tide-gauge logger
            bench:
              - date: 2026-02-14
                found:
                  - { at: G1, what: crust, severity: note }
                work:
                  - { at: G1, did: removed }
            ---
            """;
        Assert.Equal(
            before.Replace("    work:\n", "    readings:\n      - " + Reading + "\n    work:\n", StringComparison.Ordinal),
            Enter(before, "2026-02-14")
        );
    }

    [Fact]
    public void A_long_entry_is_folded_in_a_record_that_is_tidy_and_left_as_it_is_in_one_that_is_not()
    {
        const string before = """
            ---
            board: SP-0001
            bench:
              - date: 2026-02-14
                readings:
                  - { part: C1, esr: 62 mΩ }
            ---
            """;
        var note = new string('x', 110);
        var reading = $"{{ part: C12, esr: 1.4 Ω, note: {note} }}";
        Assert.Equal(
            before.Replace(
                "62 mΩ }\n",
                "62 mΩ }\n      - " + reading.Replace(", note:", ",\n          note:", StringComparison.Ordinal) + "\n",
                StringComparison.Ordinal
            ) + "\n",
            Enter(before + "\n", "2026-02-14", reading)
        );
        var untidy = before.Replace("board: ", "board:   ", StringComparison.Ordinal) + "\n";
        Assert.Equal(
            untidy.Replace("62 mΩ }\n", $"62 mΩ }}\n      - {reading}\n", StringComparison.Ordinal),
            Enter(untidy, "2026-02-14", reading)
        );
    }

    [Fact]
    public void Another_day_is_a_new_visit_at_the_end_of_the_bench()
    {
        const string before = """
            ---
            board: SP-0001
            title: Tide-gauge logger
            bench:
            - date: 2026-02-14
              note: |
                two lines
                of words
            waiting:
            - { since: 2026-02-15, for: cell }
            ---
            """;
        const string visit = "- date: 2026-02-21\n  by: RK\n  readings:\n    - " + Reading + "\n";
        Assert.Equal(before.Replace("waiting:\n", visit + "waiting:\n", StringComparison.Ordinal), Enter(before, "2026-02-21"));
    }

    [Theory]
    [InlineData(
        "---\nboard: SP-0001\ntitle: Logger\n---\n",
        "---\nboard: SP-0001\ntitle: Logger\nbench:\n  - date: 2026-02-14\n    by: RK\n    readings:\n      - { part: C12, esr: 1.4 Ω "
            + "}\n---\n"
    )]
    [InlineData(
        "---\nboard: SP-0001\ntitle: Logger\nbench: []\nnote: n\n---\n",
        "---\nboard: SP-0001\ntitle: Logger\nbench:\n  - date: 2026-02-14\n    by: RK\n    readings:\n      - { part: C12, esr: 1.4 Ω "
            + "}\nnote: n\n---\n"
    )]
    [InlineData(
        "---\nboard: SP-0001\ntitle: Logger\nbench:\nnote: n\n---\n",
        "---\nboard: SP-0001\ntitle: Logger\nbench:\n  - date: 2026-02-14\n    by: RK\n    readings:\n      - { part: C12, esr: 1.4 Ω "
            + "}\nnote: n\n---\n"
    )]
    [InlineData(
        "---\r\nboard: SP-0001\r\ntitle: Logger\r\nbench:\r\n  - date: 2026-02-14\r\n---\r\nx",
        "---\r\nboard: SP-0001\r\ntitle: Logger\r\nbench:\r\n  - date: 2026-02-14\r\n    readings:\r\n      - { part: C12, esr: 1.4 Ω "
            + "}\r\n---\r\nx"
    )]
    public void A_first_reading_begins_the_lists_it_needs_with_the_line_ends_of_the_file(string before, string after) =>
        Assert.Equal(after, Enter(before, "2026-02-14"));

    [Fact]
    public void A_plain_yaml_file_without_a_last_line_end_keeps_its_lines_apart()
    {
        var editor = Open("lots:\n  - { lot: L-1, kind: fuse }", FileForm.Yaml);
        Assert.Equal(
            "lots:\n  - { lot: L-1, kind: fuse }\n  - { lot: L-2, kind: fuse }",
            editor.Append(FileShapes.Stock, "lots", "{ lot: L-2, kind: fuse }").Text
        );
    }

    [Fact]
    public void A_list_in_brackets_is_left_to_the_person_with_the_line_to_write()
    {
        var outcome = Open("---\nboard: SP-0001\ntitle: Logger\nwaiting: [{ since: 2026-02-15, for: cell }]\n---\n")
            .Append(FileShapes.Board, "waiting", "{ since: 2026-03-01, for: fuse }");
        Assert.Null(outcome.Text);
        Assert.Equal("the list 'waiting' on line 4 stands in brackets", outcome.Refusal!.Message);
        Assert.Contains("{ since: 2026-03-01, for: fuse }", outcome.Refusal.NextStep, StringComparison.Ordinal);
    }

    [Fact]
    public void The_day_a_wait_ended_goes_inside_its_braces()
    {
        const string before =
            "---\nboard: SP-0001\ntitle: Logger\nwaiting:\n  - { since: 2026-02-15, for: \"cell, three\" }  # PO-03 }\n  - { since: "
            + "2026-02-16, for: fuse }\n---\n";
        Assert.Equal(
            before.Replace("fuse }", "fuse, until: 2026-03-01 }", StringComparison.Ordinal),
            Open(before).Add("waiting", 1, "until", "2026-03-01").Text
        );
    }

    [Fact]
    public void A_remark_with_a_brace_cannot_take_a_value_away_from_its_entry()
    {
        const string before = "---\nboard: SP-0001\ntitle: Logger\nwaiting:\n  - { since: 2026-02-15, for: cell }  # see PO-03 }\n---\n";
        Assert.Equal(
            before.Replace("cell }", "cell, until: 2026-03-01 }", StringComparison.Ordinal),
            Open(before).Add("waiting", 0, "until", "2026-03-01").Text
        );
    }

    [Theory]
    [InlineData("  - { since: 2026-02-15,\n      for: cell }\n", "  - { since: 2026-02-15,\n      for: cell, until: 2026-03-01 }\n")]
    [InlineData("  - { since: 2026-02-15, for: cell\n    }\n", "  - { since: 2026-02-15, for: cell, until: 2026-03-01\n    }\n")]
    [InlineData(
        "  - since: 2026-02-15  # PO-03\n    for: cell\n\n",
        "  - since: 2026-02-15  # PO-03\n    for: cell\n    until: 2026-03-01\n\n"
    )]
    public void An_item_of_any_form_takes_one_more_value(string item, string more)
    {
        const string head = "---\nboard: SP-0001\ntitle: Logger\nwaiting:\n";
        Assert.Equal($"{head}{more}---\n", Open($"{head}{item}---\n").Add("waiting", 0, "until", "2026-03-01").Text);
    }

    [Theory]
    [InlineData("print says +, pad says -")]
    [InlineData("a \"quoted\" word: and a # sign")]
    [InlineData("-15V")]
    [InlineData("+15V")]
    [InlineData("{x}")]
    [InlineData("0412")]
    [InlineData("~")]
    [InlineData("naïve Ω µF  ")]
    [InlineData("ends with a colon:")]
    [InlineData("- dash")]
    [InlineData("two\nlines")]
    public void Every_text_that_is_written_is_read_back_as_it_was(string text)
    {
        var yaml = "note: x\nlots:\n  - " + FlowText.Mapping([("lot", "L-1"), ("kind", null), ("note", text)]) + "\n";
        var reading = new YamlNodeReader().Read("stock.yaml", System.Text.Encoding.UTF8.GetBytes(yaml), FileForm.Yaml, ReadingLimits.Usual);
        var lots = Assert.IsType<SequenceNode>(reading.Root!.Entries[1].Value);
        var lot = Assert.IsType<MappingNode>(Assert.Single(lots.Items));
        Assert.Equal(["lot", "note"], lot.Entries.Select(entry => entry.Key));
        Assert.Equal(text, Assert.IsType<ScalarNode>(lot.Entries[1].Value).Text);
    }

    [Theory]
    [InlineData(
        "---\nboard: SP-0001\ntitle: Logger\nparts:\n  - { ref: C1, kind: mica }   # old\n# end\n---\n",
        "  - { ref: C1, kind: mica }   # old\n"
    )]
    [InlineData(
        "---\nboard: SP-0001\ntitle: Logger\nparts:\n  - { ref: C1, kind: mica }\nbench: []\n---\n",
        "  - { ref: C1, kind: mica }\n"
    )]
    [InlineData("---\nboard: SP-0001\ntitle: Logger\nparts: []\n---\n", "parts:")]
    public void Several_items_join_a_list_in_their_order(string before, string behind)
    {
        var start = before.IndexOf(behind, StringComparison.Ordinal) + behind.Length;
        var added = "  - { ref: C2, kind: mica }\n  - { ref: C3, kind: mica }\n";
        var expected =
            behind == "parts:" ? before.Replace("parts: []\n", "parts:\n" + added, StringComparison.Ordinal) : before.Insert(start, added);
        Assert.Equal(
            expected,
            Open(before).AppendAll(FileShapes.Board, "parts", ["{ ref: C2, kind: mica }", "{ ref: C3, kind: mica }"]).Text
        );
    }

    [Theory]
    [InlineData("0412", "\"0412\"")]
    [InlineData("7834", "\"7834\"")]
    [InlineData("1E3", "\"1E3\"")]
    [InlineData("1978-03-01", "\"1978-03-01\"")]
    [InlineData("no", "\"no\"")]
    [InlineData("WX-A1", "WX-A1")]
    [InlineData("4066 B", "4066 B")]
    [InlineData("a: b", "\"a: b\"")]
    public void Text_that_another_reader_would_take_for_something_else_is_quoted(string text, string yaml) =>
        Assert.Equal(yaml, FlowText.TextScalar(text));

    // Two entries may say the same; only its place tells which of them is the new one.
    [Theory]
    [InlineData("2026-02-14", 8)]
    [InlineData("2026-03-01", 11)]
    public void The_place_of_an_entry_is_told_as_it_stands_in_the_text(string date, int line)
    {
        var outcome = Enter(Open(OneVisit), date, Reading);
        Assert.Equal((line, 9), (outcome.Entry.Line, outcome.Entry.Column));
        Assert.Equal("      - " + Reading, outcome.Text!.Split('\n')[line - 1]);
    }

    [Fact]
    public void An_entry_that_was_folded_stands_where_the_fold_put_it()
    {
        var note = string.Join(' ', Enumerable.Repeat("measured twice", 12));
        var reading = $"{{ part: C2, esr: 3.92 Ω, note: {note} }}";
        var outcome = Enter(Open(OneVisit), "2026-02-14", reading);
        Assert.DoesNotContain(reading, outcome.Text, StringComparison.Ordinal);
        Assert.StartsWith("      - { part: C2, esr: 3.92 Ω,", outcome.Text!.Split('\n')[outcome.Entry.Line - 1], StringComparison.Ordinal);
    }

    private static RecordEditor Open(string text, FileForm form = FileForm.Markdown)
    {
        var editor = RecordEditor.Open("boards/SP-0001.md", text, form, new YamlNodeReader(), out var findings);
        Assert.True(editor is not null, string.Join('\n', findings.Select(finding => finding.Message)));
        return editor;
    }

    private static string? Enter(string before, string date, string reading = Reading) => Enter(Open(before), date, reading).Text;

    private static EditOutcome Enter(RecordEditor editor, string date, string reading) =>
        editor.AppendToVisit(FileShapes.Board, visit => visit["date"] == date, [("date", date), ("by", "RK")], "readings", reading);
}
