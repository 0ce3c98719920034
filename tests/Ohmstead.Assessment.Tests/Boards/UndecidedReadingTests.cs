using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.Boards;

/// <summary>What a reading that cannot decide means for the board. bridge-2 is good to 0.5 % and 5 steps of 0.1 µF: 377.5 µF is too close
/// to 376 µF.</summary>
public sealed class UndecidedReadingTests
{
    private const string Straddling = "{ part: C12, circuit: out, instrument: bridge-2, capacitance: 377.5 µF }";

    [Fact]
    public void A_part_too_close_to_call_is_listed_to_be_measured_again_and_blocks_nothing()
    {
        var board = Electrolytic(Straddling);
        Assert.Equal(BoardState.FitToRun, board.State);
        var open = Assert.Single(board.MeasureAgain);
        Assert.Equal("C12", open.At);
        Assert.StartsWith("capacitance 377.5 µF against 376 µF … 564 µF", open.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_suppression_capacitor_too_close_to_call_keeps_the_board_from_running()
    {
        var board = Suppressor("{ part: C2, circuit: out, instrument: bridge-2, capacitance: 0.8 µF }");
        var reason = Assert.Single(board.Reasons);
        Assert.Equal((BoardState.ProofDue, "C2"), (reason.State, reason.At));
        Assert.EndsWith("defer to local codes and licensed practice", reason.NextStep, StringComparison.Ordinal);
        Assert.Empty(board.MeasureAgain);
    }

    [Fact]
    public void A_reason_of_a_person_answers_for_an_ordinary_part_and_not_where_people_rely_on_it()
    {
        const string Decided = "\n    decided:\n      - { part: C12, decision: watch, because: the second bridge says 381 µF }";
        Assert.Empty(Electrolytic(Straddling + Decided).MeasureAgain);
        Assert.Equal(
            BoardState.ProofDue,
            Suppressor(
                "{ part: C2, circuit: out, instrument: bridge-2, capacitance: 0.8 µF }"
                    + Decided.Replace("C12", "C2", StringComparison.Ordinal)
            ).State
        );
    }

    [Fact]
    public void A_reading_in_circuit_that_can_prove_nothing_is_no_reason_and_is_not_listed()
    {
        var board = Electrolytic("{ part: C12, circuit: in, instrument: bridge-2, capacitance: 377.5 µF }");
        Assert.Equal(BoardState.FitToRun, board.State);
        Assert.Empty(board.MeasureAgain);
    }

    [Fact]
    public void A_later_reading_that_decides_ends_it() =>
        Assert.Empty(
            Electrolytic(
                Straddling + "\n      - { part: C12, state: again, circuit: out, instrument: bridge-2, capacitance: 391 µF }"
            ).MeasureAgain
        );

    [Fact]
    public void A_part_that_is_to_go_need_not_be_measured_again()
    {
        var board = Electrolytic(
            Straddling + "\n    decided:\n      - { part: C12, decision: replace, because: this family fails shorted }"
        );
        Assert.Equal(BoardState.FaultStands, Assert.Single(board.Reasons).State);
        Assert.Empty(board.MeasureAgain);
    }

    [Fact]
    public void A_point_read_too_close_to_call_is_listed_until_it_is_proved()
    {
        const string Read =
            "points:\n  - { point: +5V, nominal: 5 V, tolerance: 5 % }\nbench:\n  - date: 2026-03-14\n    readings:\n      - { point: "
            + "+5V, instrument: meter-1, voltage: 4.76 V }";
        Assert.Equal("+5V", Assert.Single(Worked.Board(Read).MeasureAgain).At);
        Assert.Empty(Worked.Board(Read + "\n    proof:\n      - { point: +5V, voltage: 5.02 V }").MeasureAgain);
    }

    private static JudgedBoard Electrolytic(string readings) =>
        Board("{ ref: C12, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: 20 %, rated_voltage: 25 V }", readings);

    private static JudgedBoard Suppressor(string readings) =>
        Board(
            "{ ref: C2, kind: suppression capacitor, capacitance: 1 µF, tolerance: 20 %, safety_class: X2, role: mains suppression }",
            readings
        );

    private static JudgedBoard Board(string part, string readings) =>
        Worked.Board(
            $"parts:\n  - {part}\nbench:\n  - date: 2026-03-14\n    readings:\n      - {readings}\n  - date: 2026-03-20\n    proof:\n   "
                + $"   - {{ point: lamp, result: pass }}"
        );
}
