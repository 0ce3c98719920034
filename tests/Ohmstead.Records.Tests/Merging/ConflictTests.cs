using static Ohmstead.Records.Tests.Merging.Merges;

namespace Ohmstead.Records.Tests.Merging;

/// <summary>What both changed in different ways is left to a person: that entry alone, with the reason told beside it.</summary>
public sealed class ConflictTests
{
    private const string LastOfVisits = "      - { part: C1, did: removed, kept: bag 1 }";

    [Fact]
    public void A_reading_that_became_two_figures_stands_between_marks_and_nothing_else_does()
    {
        const string late = "  - date: 2026-11-20\n    by: RK\n    readings:\n      - { part: R1, resistance: 10 kΩ }\n";
        var merged = Of(Board, Board.With("31.8", "38.1").Behind(LastOfVisits, late), Board.With("31.8", "41.8"));
        const string conflict = """
            <<<<<<< RK 2026-11-20
                  # with a leg lifted
                  - { part: C3, circuit: out, frequency: 120 Hz, capacitance: 38.1 µF, esr: 9.4 Ω }
            =======
                  # with a leg lifted
                  - { part: C3, circuit: out, frequency: 120 Hz, capacitance: 41.8 µF, esr: 9.4 Ω }
            >>>>>>> below

            """;
        const string entry =
            "      # with a leg lifted\n      - { part: C3, circuit: out, frequency: 120 Hz, capacitance: 31.8 µF, esr: 9.4 Ω }\n";
        Assert.Equal(Board.With(entry, conflict).Behind(LastOfVisits, late), TextOf(merged));
        Assert.Equal(
            "RK 2026-02-28: reading C3: capacitance: '31.8 µF' became '38.1 µF' above and '41.8 µF' below; "
                + "a reading is one fact: look at the notebook",
            Assert.Single(merged.Reasons)
        );
    }

    [Theory]
    [InlineData("esr: 9.4 Ω }", "esr: 9.9 Ω }", "capacitance: 31.8 µF", "capacitance: 38.1 µF")]
    [InlineData(
        "frequency: 120 Hz, capacitance: 31.8",
        "frequency: 100 Hz, capacitance: 31.8",
        "capacitance: 31.8 µF",
        "capacitance: 38.1 µF"
    )]
    [InlineData(
        "circuit: out, frequency: 120 Hz, capacitance: 31.8",
        "circuit: in, frequency: 120 Hz, capacitance: 31.8",
        "esr: 9.4 Ω }",
        "esr: 9.9 Ω }"
    )]
    [InlineData("did: removed", "did: replaced", "C1, did: removed", "C1, did: re-soldered")]
    [InlineData("did: removed", "did: replaced", "did: removed,", "did: removed, polarity: schematic,")]
    [InlineData("esr: 9.4 Ω }", "esr: 9.9 Ω }", "esr: 9.4 Ω }", "esr: 9.4 Ω, method: four-wire }")]
    [InlineData("severity: safety", "severity: minor", "what: crazed,", "what: scratched,")]
    [InlineData("order: PO-03", "order: PO-04", "order: PO-03", "order: PO-05")]
    [InlineData("title: Tide-gauge logger", "title: Tide logger", "title: Tide-gauge logger", "title: Logger")]
    public void Two_changes_of_one_fact_are_a_conflict_though_they_are_of_two_keys(string old, string put, string otherOld, string otherPut)
    {
        foreach (
            var (one, other) in new[]
            {
                (Board.With(old, put), Board.With(otherOld, otherPut)),
                (Board.With(otherOld, otherPut), Board.With(old, put)),
            }
        )
        {
            var merged = Of(Board, one, other);
            Assert.Equal(1, merged.Conflicts);
            Assert.NotEmpty(merged.Reasons);
        }
    }

    [Theory]
    [InlineData("esr: 9.4 Ω }", "esr: 9.9 Ω }", "esr: 9.4 Ω }", "esr: 9.4 Ω, note: warm }", "esr: 9.9 Ω, note: warm }")]
    [InlineData("did: removed", "did: replaced", "kept: bag 1", "kept: bag 2", "did: replaced, kept: bag 2")]
    [InlineData("PO-03 }", "PO-03, until: 2026-04-10 }", "PO-03 }", "PO-03, blocks: soak }", "PO-03, blocks: soak, until: 2026-04-10 }")]
    [InlineData("title: Tide-gauge", "title: Tide gauge", "title: Tide-gauge", "title: Tide gauge", "title: Tide gauge")]
    public void Changes_that_are_of_different_facts_both_stay(string old, string put, string otherOld, string otherPut, string both)
    {
        foreach (
            var (one, other) in new[]
            {
                (Board.With(old, put), Board.With(otherOld, otherPut)),
                (Board.With(otherOld, otherPut), Board.With(old, put)),
            }
        )
        {
            var merged = Of(Board, one, other);
            Assert.Equal(0, merged.Conflicts);
            Assert.Contains(both, TextOf(merged), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Two_corrections_of_one_reading_do_not_both_stay_without_a_word()
    {
        static string Visit(string day, string by, string value) =>
            $"  - date: {day}\n    by: {by}\n    readings:\n"
            + $"      - {{ part: C3, capacitance: {value}, corrects: 2026-02-28, because: misread }}\n";
        var merged = Of(
            Board,
            Board.Behind(LastOfVisits, Visit("2026-11-20", "RK", "38.1 µF")),
            Board.Behind(LastOfVisits, Visit("2026-11-21", "MT", "41.8 µF"))
        );
        Assert.Equal(2, merged.Conflicts);
        Assert.Contains(
            "C3 of 2026-02-28: corrected on 2026-11-20 (RK) and on 2026-11-21 (MT)",
            Assert.Single(merged.Reasons),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_piece_that_both_replaced_is_left_to_a_person()
    {
        static string Visit(string day, string by) =>
            $"  - date: {day}\n    by: {by}\n    work:\n      - {{ part: C3, did: replaced, lot: L-018 }}\n";
        var merged = Of(
            Board,
            Board.Behind(LastOfVisits, Visit("2026-11-20", "RK")),
            Board.Behind(LastOfVisits, Visit("2026-11-21", "MT"))
        );
        Assert.Equal(2, merged.Conflicts);
        Assert.Contains("neither knew of the other", Assert.Single(merged.Reasons), StringComparison.Ordinal);
    }

    [Fact]
    public void Work_and_a_proof_of_one_day_are_not_put_in_an_order_that_nobody_told()
    {
        const string rk = "  - date: 2026-11-20\n    by: RK\n    work:\n      - { part: C4, did: re-soldered }\n";
        const string mt = "  - date: 2026-11-20\n    by: MT\n    proof:\n      - { point: +5V, voltage: 5.01 V }\n";
        var merged = Of(Board, Board.Behind(LastOfVisits, rk), Board.Behind(LastOfVisits, mt));
        Assert.Equal(Board.Behind(LastOfVisits, $"<<<<<<< RK 2026-11-20\n{rk}=======\n{mt}>>>>>>> MT 2026-11-20\n"), TextOf(merged));
        Assert.Contains(
            "nothing tells whether the work of C4 (RK) or the proof of +5V (MT) came first",
            Assert.Single(merged.Reasons),
            StringComparison.Ordinal
        );

        // A day later it is told.
        Assert.Equal(0, Of(Board, Board.Behind(LastOfVisits, rk), Board.Behind(LastOfVisits, mt.With("20", "21"))).Conflicts);
    }

    [Fact]
    public void One_person_has_no_two_figures_for_one_reading_of_a_day()
    {
        static string Visit(string value) =>
            $"  - date: 2026-11-20\n    by: RK\n    readings:\n      - {{ part: C3, capacitance: {value} }}\n";
        var merged = Of(Board, Board.Behind(LastOfVisits, Visit("38.1 µF")), Board.Behind(LastOfVisits, Visit("41.8 µF")));
        Assert.Equal(2, merged.Conflicts);
        Assert.Contains("RK has two figures for one reading", Assert.Single(merged.Reasons), StringComparison.Ordinal);
    }

    [Fact]
    public void A_new_lot_or_order_of_one_name_is_not_two()
    {
        const string last = "  - { lot: L-002, kind: cell, quantity: 4 }";
        static string Lot(string kind) => $"  - {{ lot: L-003, kind: {kind}, quantity: 2 }}\n";
        var merged = Of(Stock, Stock.Behind(last, Lot("cell")), Stock.Behind(last, Lot("fuse")), "stock");
        Assert.Equal(Stock.Behind(last, $"<<<<<<< above\n{Lot("cell")}=======\n{Lot("fuse")}>>>>>>> below\n"), TextOf(merged));
        Assert.Equal("lot L-003: kind: 'cell' above and 'fuse' below; keep one", Assert.Single(merged.Reasons));

        var different = Of(Stock, Stock.Behind(last, Lot("cell")), Stock.Behind(last, Lot("fuse").With("L-003", "L-004")), "stock");
        Assert.Equal((0, Stock.Behind(last, Lot("cell") + Lot("fuse").With("L-003", "L-004"))), (different.Conflicts, TextOf(different)));
    }

    [Fact]
    public void An_order_has_one_end()
    {
        var came = Stock.With("for: cells }", "for: cells, received: 2026-02-02 }");
        Assert.Equal(1, Of(Stock, came, Stock.With("for: cells }", "for: cells, lost: 2026-02-03 }"), "stock").Conflicts);
        Assert.Equal(1, Of(Stock, came, Stock.With("for: cells }", "for: cells, received: 2026-02-03 }"), "stock").Conflicts);
        var part = Of(Stock, came, Stock.With("for: cells }", "for: cells, part_received: 2026-01-30 }"), "stock");
        Assert.Equal((0, came.With("received:", "part_received: 2026-01-30, received:")), (part.Conflicts, TextOf(part)));
    }

    [Fact]
    public void Two_boards_that_began_under_one_number_are_not_mixed()
    {
        const string one = "---\nboard: SP-0021\ntitle: Clock\nserial: \"1\"\n---\n";
        var merged = Of(null, one, one.With("Clock", "Barograph"));
        Assert.True(merged.Conflicts > 0);
        Assert.Contains("two records of one name tell of two things", Assert.Single(merged.Reasons), StringComparison.Ordinal);
    }

    [Fact]
    public void The_marks_are_as_long_as_they_are_asked_for()
    {
        var text = TextOf(Of(Board, Board.With("31.8", "38.1"), Board.With("31.8", "41.8"), size: 9));
        Assert.Contains("\n<<<<<<<<< above\n", text, StringComparison.Ordinal);
        Assert.Contains("\n=========\n", text, StringComparison.Ordinal);
        Assert.Contains("\n>>>>>>>>> below\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Initials_of_a_stranger_begin_no_line_behind_a_mark()
    {
        static string Visit(string by, string did) => $"  - date: 2026-11-20\n    by: \"{by}\"\n    {did}\n";
        var merged = Of(
            Board,
            Board.Behind(LastOfVisits, Visit("R\\nK: no", "work:\n      - { part: C4, did: re-soldered }")),
            Board.Behind(LastOfVisits, Visit("MT", "proof:\n      - { point: +5V, voltage: 5.01 V }"))
        );
        Assert.Contains("<<<<<<< R K: no 2026-11-20\n", TextOf(merged), StringComparison.Ordinal);
    }
}
