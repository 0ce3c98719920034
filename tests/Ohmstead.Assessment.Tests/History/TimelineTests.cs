using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Tests.Support;
using Ohmstead.Assessment.Verdicts;

namespace Ohmstead.Assessment.Tests.History;

/// <summary>What sat in a place and when: what was put back, what that undid, and what a reading of that day was of.</summary>
public sealed class TimelineTests
{
    private const string Removed = "{ part: C12, did: removed }";
    private const string PutBack = "{ part: C12, did: put back, polarity: photograph before removal }";
    private const string New = "{ part: C12, did: replaced, lot: L-031, polarity: schematic }";
    private const string Newer = "{ part: C12, did: replaced, lot: L-032, polarity: schematic }";
    private const string Fitted = "{ part: C12, did: fitted, lot: L-031, polarity: schematic }";

    // The original is told by the lot that does not sit there.
    [Theory]
    [InlineData("the original", Removed, PutBack)]
    [InlineData("L-031", New)]
    [InlineData("L-031", Removed, Fitted)]
    [InlineData("L-032", New, Newer)]
    [InlineData("L-031", New, Removed, PutBack)]
    [InlineData("L-031", New, Newer, PutBack)]
    [InlineData("nothing", Removed)]
    [InlineData("nothing", New, Removed)]
    [InlineData("nothing", Removed, PutBack, Removed)]
    [InlineData("the original", New, PutBack)]
    [InlineData("the original", Removed, Fitted, PutBack)]
    [InlineData("the original", Removed, PutBack, Removed, PutBack)]
    [InlineData("the original", New, Newer, PutBack, PutBack)]
    public void What_sits_there_follows_from_what_was_put_in_taken_out_and_put_back(string expected, params string[] work)
    {
        var place = C12(work).Place("C12")!;
        Assert.Equal(expected, place.IsEmpty ? "nothing" : place.FittedLot?.Id.Value ?? "the original");
    }

    [Theory]
    [InlineData(true, Removed)]
    [InlineData(false, Removed, PutBack)]
    [InlineData(true, New)]
    [InlineData(false, New, PutBack)]
    [InlineData(true, Removed, Fitted)]
    [InlineData(false, Removed, Fitted, PutBack)]
    [InlineData(true, Removed, PutBack, Removed)]
    public void What_was_put_back_undoes_what_its_removal_answered(bool isAnswered, params string[] work) =>
        Assert.Equal(isAnswered, !Assert.Single(C12(work).Findings).IsOpen);

    [Fact]
    public void Work_on_another_part_is_not_undone() =>
        Assert.False(
            Assert.Single(C12(New, "{ part: C13, did: removed }", "{ part: C13, did: put back, polarity: schematic }").Findings).IsOpen
        );

    // A later reading of the piece that was put back belongs to the original, and so do its readings from before.
    [Fact]
    public void The_readings_of_the_piece_that_was_put_back_count_again()
    {
        var board = Board(
            "  - date: 2026-03-14\n    readings:\n      - { part: C12, circuit: out, frequency: 120 Hz, capacitance: 301 µF }\n    "
                + "work:\n      - "
                + Removed
                + "\n  - date: 2026-03-15\n    work:\n      - "
                + PutBack
        );
        Assert.True(board.Place("C12")!.HasFailed);
    }

    [Fact]
    public void A_reading_as_left_is_of_what_the_work_of_that_visit_put_in()
    {
        const string AsLeft =
            "    readings:\n      - { part: C12, state: as left, circuit: out, frequency: 120 Hz, capacitance: 301 µF }\n";
        Assert.True(Board("  - date: 2026-03-14\n" + AsLeft + "    work:\n      - " + New).Place("C12")!.HasFailed);
        Assert.False(
            Board(
                    "  - date: 2026-03-14\n"
                        + AsLeft.Replace("state: as left, ", string.Empty, StringComparison.Ordinal)
                        + "    work:\n      - "
                        + New
                )
                .Place("C12")!
                .HasFailed
        );
    }

    [Fact]
    public void A_reading_as_left_is_later_than_the_work_of_its_visit()
    {
        var board = Board(
            "  - date: 2026-03-14\n    readings:\n      - { part: C12, state: as left, circuit: out, frequency: 120 Hz, capacitance: "
                + "466 µF }\n    work:\n      - "
                + New
        );
        Assert.True(Assert.Single(board.Readings).At > board.LastWorkAt);
    }

    [Fact]
    public void Two_visits_of_one_day_keep_the_order_of_the_file()
    {
        const string Proof = "  - date: 2026-03-14\n    proof:\n      - { point: lamp, result: pass }\n";
        const string Work = "  - date: 2026-03-14\n    work:\n      - { at: J3, did: re-soldered }\n";
        Assert.True(Board(Work + Proof).Proofs.Single().At > Board(Work + Proof).LastWorkAt);
        Assert.True(Board(Proof + Work).Proofs.Single().At < Board(Proof + Work).LastWorkAt);
    }

    [Fact]
    public void Visits_of_different_days_stand_in_order_of_time_wherever_they_are_written()
    {
        var board = Board(
            "  - date: 2026-03-20\n    proof:\n      - { point: lamp, result: pass }\n  - date: 2026-03-14\n    work:\n      - { at: "
                + "J3, did: re-soldered }\n"
        );
        Assert.True(board.Proofs.Single().At > board.LastWorkAt);
    }

    [Fact]
    public void A_reading_of_an_empty_place_is_of_nothing()
    {
        var board = Board(
            "  - date: 2026-03-14\n    work:\n      - "
                + Removed
                + "\n  - date: 2026-03-15\n    readings:\n      - { part: C12, circuit: out, frequency: 120 Hz, capacitance: 461 µF }"
        );
        var reading = Assert.Single(board.Readings);
        Assert.Equal(VerdictOutcome.NoLimit, reading.Overall);
        Assert.Equal(new DateOnly(2026, 3, 14), reading.EmptiedOn?.Date.Value);
    }

    [Fact]
    public void A_decision_about_a_part_that_has_gone_says_nothing_of_the_next() =>
        Assert.Null(
            Board(
                    "  - date: 2026-03-14\n    decided:\n      - { part: C12, decision: keep, because: it works }\n  - date: "
                        + "2026-03-15\n    work:\n      - "
                        + New
                )
                .Place("C12")!
                .Decision
        );

    private static JudgedBoard C12(params string[] work) =>
        Board(
            "  - date: 2026-03-13\n    found:\n      - { at: C12, what: the can bulges, severity: major }\n"
                + string.Concat(work.Select((entry, day) => $"  - date: 2026-03-{14 + day}\n    work:\n      - {entry}\n"))
        );

    private static JudgedBoard Board(string visits) =>
        Worked.Board(
            "parts:\n  - { ref: C12, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: 20 %, rated_voltage: 25 V }\n"
                + "  - { ref: C13, kind: aluminium electrolytic, capacitance: 100 µF, rated_voltage: 25 V }\nbench:\n"
                + visits.TrimEnd(),
            """
            lots:
              - { lot: L-031, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: 20 %, rated_voltage: 35 V, quantity: 10 }
              - { lot: L-032, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: 20 %, rated_voltage: 35 V, quantity: 10 }
            """
        );
}
