using Ohmstead.Records.Editing;
using Ohmstead.Records.Nodes;
using Ohmstead.Yaml;

namespace Ohmstead.Records.Tests.Editing;

/// <summary>A board taken apart into its design and itself.</summary>
public sealed class DesignSplitterTests
{
    [Fact]
    public void Lines_move_as_they_stand_with_the_remarks_above_them_and_all_else_stays()
    {
        const string before = """
            ---
            # the keeper's own remark
            board: SP-0030
            title: Tide clock   # as on the lid
            serial: "0412"
            # as printed on the board
            parts:   # from the sheet
              # the supply
              - { ref: C1, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: -10/+50 %,
                  rated_voltage: 25 V }   # hot
              - ref: U1
                kind: integrated circuit
                # read with a glass
                type: WX-A1
            hazards:
              - { hazard: mains, at: T1 }
              - { hazard: leaking cell, at: G1 }
            bench:
              - { date: 2026-02-14, by: RK, note: lid off }
            ---
            ## Story
            """;
        var split = Split(before);
        Assert.Equal(
            """
            ---
            # the keeper's own remark
            board: SP-0030
            title: Tide clock   # as on the lid
            design: tide-clock
            serial: "0412"
            # as printed on the board
            hazards:
              - { hazard: leaking cell, at: G1 }
            bench:
              - { date: 2026-02-14, by: RK, note: lid off }
            ---
            ## Story
            """,
            split.Board
        );
        Assert.Equal(
            """
            ---
            design: tide-clock
            title: Tide clock
            parts:   # from the sheet
              # the supply
              - { ref: C1, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: -10/+50 %,
                  rated_voltage: 25 V }   # hot
              - ref: U1
                kind: integrated circuit
                # read with a glass
                type: WX-A1
            hazards:
              - { hazard: mains, at: T1 }
            format: 1
            ---

            ## The design

            """,
            split.Design
        );
        Assert.Equal((2, 0, 1), (split.Parts, split.Points, split.Hazards));
    }

    [Theory]
    [InlineData("  - { ref: C1, kind: mica, date_code: \"7834\" }\n", "  - { ref: C1, kind: mica }\n")]
    [InlineData("  - { ref: C1, date_code: \"78 # 34\", kind: mica }   # old\n", "  - { ref: C1, kind: mica }   # old\n")]
    [InlineData("  - { date_code: 7834, ref: C1, kind: mica }\n", "  - { ref: C1, kind: mica }\n")]
    [InlineData("  - { ref: C1, kind: mica,\n      date_code: 7834, note: x }\n", "  - { ref: C1, kind: mica, note: x }\n")]
    [InlineData("  - ref: C1\n    date_code: 7834   # on the side\n    kind: mica\n", "  - ref: C1\n    kind: mica\n")]
    public void A_part_with_a_date_code_stays_on_the_board_and_the_design_has_it_without(string part, string shared)
    {
        var before = "---\nboard: SP-0030\ntitle: Clock\nparts:\n" + part + "  - { ref: C2, kind: mica }\n---\n";
        var split = Split(before);
        Assert.Equal(
            before
                .Replace("  - { ref: C2, kind: mica }\n", string.Empty, StringComparison.Ordinal)
                .Replace("title: Clock\n", "title: Clock\ndesign: tide-clock\n", StringComparison.Ordinal),
            split.Board
        );
        Assert.Contains("parts:\n" + shared + "  - { ref: C2, kind: mica }\nformat: 1\n", split.Design, StringComparison.Ordinal);
        Assert.Equal(["C1"], split.Kept);
    }

    [Theory]
    [InlineData("parts: [{ ref: C1, kind: mica }]\n", "the list 'parts' on line 4 stands in brackets")]
    [InlineData("design: other\nparts:\n  - { ref: C1, kind: mica }\n", "the board has the design 'other' already")]
    [InlineData("serial: x\n", "the board lists no parts and no points of its own")]
    [InlineData("parts: []\n", "the board lists no parts and no points of its own")]
    public void What_cannot_be_moved_safely_is_refused_with_the_reason(string lines, string message)
    {
        var split = Split("---\nboard: SP-0030\ntitle: Clock\n" + lines + "---\n");
        Assert.Equal((null, null, message), (split.Board, split.Design, split.Refusal?.Message));
        Assert.NotEqual(string.Empty, split.Refusal?.NextStep);
    }

    [Fact]
    public void Windows_line_ends_stay_on_both_sides()
    {
        var split = Split("---\r\nboard: SP-0030\r\ntitle: Clock\r\nparts:\r\n- { ref: C1, kind: mica }\r\n---\r\n");
        Assert.Equal("---\r\nboard: SP-0030\r\ntitle: Clock\r\ndesign: tide-clock\r\n---\r\n", split.Board);
        Assert.Equal(
            "---\r\ndesign: tide-clock\r\ntitle: Tide clock\r\nparts:\r\n- { ref: C1, kind: mica }\r\nformat: 1\r\n---\r\n"
                + "\r\n## The design\r\n",
            split.Design
        );
    }

    private static DesignSplit Split(string text)
    {
        var editor = RecordEditor.Open("boards/SP-0030.md", text, FileForm.Markdown, new YamlNodeReader(), out var findings);
        Assert.True(editor is not null, string.Join('\n', findings.Select(finding => finding.Message)));
        return DesignSplitter.Split(editor, "tide-clock", "Tide clock", null, new YamlNodeReader());
    }
}
