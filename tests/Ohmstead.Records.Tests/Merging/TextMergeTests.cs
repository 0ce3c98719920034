using System.Text;
using static Ohmstead.Records.Tests.Merging.Merges;

namespace Ohmstead.Records.Tests.Merging;

/// <summary>Bytes that are no entries: line ends, marks, remarks, folds, the story; and texts that cannot be read.</summary>
public sealed class TextMergeTests
{
    private const string LastOfVisits = "      - { part: C1, did: removed, kept: bag 1 }";
    private const string OfRk = "  - date: 2026-11-20\n    by: RK\n    readings:\n      - { part: R1, resistance: 10 kΩ }\n";
    private const string OfMt = "  - date: 2026-11-21\n    by: MT\n    found:\n      - { at: J1, what: green, severity: minor }\n";
    private static readonly string Rk = Board.Behind(LastOfVisits, OfRk);
    private static readonly string Mt = Board.Behind(LastOfVisits, OfMt);
    private static readonly string Both = Board.Behind(LastOfVisits, OfRk + OfMt);

    [Fact]
    public void Line_ends_of_two_letters_stay()
    {
        Assert.Equal(Two(Both), TextOf(Of(Two(Board), Two(Rk), Two(Mt))));

        // Where one side changed them, they are changed, and that is no change of each line.
        Assert.Equal(Two(Both), TextOf(Of(Board, Two(Rk), Mt)));
        Assert.Equal(Both, TextOf(Of(Two(Board), Two(Rk), Mt)));
    }

    [Fact]
    public void The_mark_at_the_beginning_of_a_file_stays()
    {
        Assert.Equal("\uFEFF" + Both, TextOf(Of("\uFEFF" + Board, "\uFEFF" + Rk, "\uFEFF" + Mt)));
        Assert.Equal("\uFEFF" + Both, TextOf(Of(Board, "\uFEFF" + Rk, Mt)));
    }

    [Fact]
    public void A_last_line_without_an_end_keeps_none()
    {
        const string stock = "lots:\n  - { lot: L-001, kind: cell, quantity: 6 }";
        var (one, other) = (
            stock + "\n  - { lot: L-002, kind: fuse, quantity: 1 }",
            stock + "\n  - { lot: L-003, kind: fuse, quantity: 1 }"
        );
        Assert.Equal(one + "\n  - { lot: L-003, kind: fuse, quantity: 1 }", TextOf(Of(stock, one, other, "stock")));
        Assert.Equal(Both.TrimEnd('\n'), TextOf(Of(Board.TrimEnd('\n'), Rk.TrimEnd('\n'), Mt.TrimEnd('\n'))));
    }

    [Fact]
    public void Remarks_between_entries_stay_where_they_stand()
    {
        var one = Rk.With("waiting:\n", "# posted, and never came\nwaiting:   # two of them\n");
        var other = Mt.With("      # with a leg lifted\n", "      # with a leg lifted, and warm\n");
        Assert.Equal(
            Both.With("waiting:\n", "# posted, and never came\nwaiting:   # two of them\n")
                .With("      # with a leg lifted\n", "      # with a leg lifted, and warm\n"),
            TextOf(Of(Board, one, other))
        );
    }

    [Fact]
    public void Remarks_that_both_wrote_above_one_entry_both_stay()
    {
        var text = TextOf(
            Of(
                Board,
                Board.With("      # with a leg lifted\n", "      # with both legs lifted\n"),
                Board.With("      # with a leg lifted\n", "      # lifted at the minus\n")
            )
        );
        Assert.Contains("      # with both legs lifted\n      # lifted at the minus\n      - { part: C3", text, StringComparison.Ordinal);
    }

    [Fact]
    public void An_entry_that_is_folded_stays_folded()
    {
        var note = new string('x', 60);
        var folded = OfRk.With(
            "resistance: 10 kΩ }",
            $"circuit: out, frequency: 1 kHz, resistance: 10 kΩ, method: four-wire,\n          note: {note} {note} }}"
        );
        Assert.Equal(Board.Behind(LastOfVisits, folded + OfMt), TextOf(Of(Board, Board.Behind(LastOfVisits, folded), Mt)));
    }

    [Fact]
    public void A_record_that_one_side_brought_into_layout_is_merged_in_layout()
    {
        var untidy = Board.With(
            "      - { part: C4, circuit: out, frequency: 120 Hz, capacitance: 34.4 µF }\n",
            "      - {part: C4,   circuit: out, frequency: 120 Hz, capacitance: 34.4 µF}\n"
        );
        Assert.Equal(Both, TextOf(Of(untidy, untidy.Behind(LastOfVisits, OfRk), Mt)));

        // Two blanks less for everything in the visits: no line of the one side is a line of the other.
        var flat = Board.With("\n  ", "\n").With("\n    ", "\n  ");
        var merged = Of(Board, Rk, Board);
        Assert.Equal(Rk, TextOf(merged));
        Assert.Equal(0, Of(flat, flat, Mt).Conflicts);
    }

    [Fact]
    public void A_story_is_merged_by_its_lines_and_its_marks_stand_in_it_alone()
    {
        var one = Rk.With("The smell was C1.\n", "The smell was C1, crazed.\n");
        var other = Mt.With("signals room.\n", "signals room for years.\n");
        Assert.Equal(
            Both.With("The smell was C1.\n", "The smell was C1, crazed.\n").With("signals room.\n", "signals room for years.\n"),
            TextOf(Of(Board, one, other))
        );

        var merged = Of(Board, one, Mt.With("The smell was C1.\n", "The smell came from C1.\n"));
        Assert.Equal(
            Both.With(
                "The smell was C1.\n",
                "<<<<<<< RK 2026-11-20\nThe smell was C1, crazed.\n=======\nThe smell came from C1.\n>>>>>>> MT 2026-11-21\n"
            ),
            TextOf(merged)
        );
        Assert.Equal("the story: both changed the same lines", Assert.Single(merged.Reasons));
    }

    [Fact]
    public void What_both_began_from_may_hold_marks_and_then_nothing_is_lost()
    {
        var marked = Board.With(
            "  - date: 2026-02-28\n",
            "<<<<<<<<< ours\n  - date: 2026-02-28\n=========\n  - date: 2026-02-27\n>>>>>>>>> theirs\n"
        );
        var merged = Of(marked, Rk, Mt);
        Assert.Equal((0, Both), (merged.Conflicts, TextOf(merged)));
        Assert.True(Of(marked, Rk.With("31.8", "38.1"), Mt.With("31.8", "41.8")).Conflicts > 0);
    }

    [Fact]
    public void A_side_that_cannot_be_read_is_merged_by_lines_and_that_is_told()
    {
        var broken = Rk.With("    temperature: 19 °C\n", "    temperature: 19 °C: warm\n");
        var merged = Of(Board, broken, Board.With("signals room.\n", "signals room for years.\n"));
        Assert.Equal((0, true), (merged.Conflicts, merged.IsByLines));
        Assert.Equal(broken.With("signals room.\n", "signals room for years.\n"), TextOf(merged));
        Assert.Contains("one side cannot be read, so it was merged line by line", Assert.Single(merged.Reasons), StringComparison.Ordinal);
        Assert.Equal(1, Of(Board, broken, Mt).Conflicts);
    }

    [Fact]
    public void A_record_of_a_newer_format_is_merged_by_lines_for_nobody_here_knows_what_it_means()
    {
        var newer = Rk.With("title:", "format: 2\ntitle:");
        Assert.True(Of(Board, newer, Board.With("signals room.\n", "signals room for years.\n")).IsByLines);
        Assert.Equal(1, Of(Board, newer, Mt).Conflicts);
    }

    [Fact]
    public void Meters_are_merged_as_text()
    {
        const string meters = "meters:\n  - meter: a\n    instrument: bridge-1\n    talks: lines\n";
        Assert.Equal(1, Of(meters, meters + "    separator: spaces\n", meters + "    overload: OL\n", "meters").Conflicts);
    }

    [Fact]
    public void What_is_no_text_is_not_merged() =>
        Assert.Null(OfBytes(Encoding.UTF8.GetBytes(Board), [0xFF, 0xFE, 0x00], Encoding.UTF8.GetBytes(Mt)));

    private static string Two(string text) => text.Replace("\n", "\r\n", StringComparison.Ordinal);
}
