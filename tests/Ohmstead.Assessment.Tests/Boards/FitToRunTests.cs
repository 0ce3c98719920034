using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.Boards;

/// <summary>When a board is fit to run, and every reason why it is not.</summary>
public sealed class FitToRunTests
{
    private const string Parts = """
        parts:
          - { ref: C12, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: 20 %, rated_voltage: 25 V }
        points:
          - { point: +5V, nominal: 5 V, tolerance: 5 % }

        """;

    private const string Stock = """
        lots:
          - { lot: L-031, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: 20 %, rated_voltage: 25 V, quantity: 10 }
        """;

    private const string Proved = """

          - date: 2026-03-20
            proof:
              - { point: +5V, voltage: 5.02 V }
        """;

    [Fact]
    public void A_board_with_a_good_part_and_a_proof_is_fit_to_run()
    {
        var board = Visits(First("readings", "{ part: C12, circuit: out, capacitance: 461 µF }") + Proved);
        Assert.Empty(board.Reasons);
        Assert.Equal(BoardState.FitToRun, board.State);
    }

    [Fact]
    public void A_board_that_just_came_was_not_looked_at_yet() =>
        Assert.Equal((BoardState.NotLookedAt, "nothing was looked at since it came"), Only(Worked.Board(Parts)));

    [Fact]
    public void A_point_that_was_never_proved_is_due() =>
        Assert.Equal((BoardState.ProofDue, "point +5V was never proved"), Only(Visits(First("found", Seen("minor")))));

    [Fact]
    public void A_point_that_is_not_required_need_not_be_proved() =>
        Assert.Equal(
            BoardState.FitToRun,
            Worked.Board(Parts + "  - { point: lamp, measures: result, required: no }\n" + "bench:" + Proved).State
        );

    [Fact]
    public void A_board_without_points_needs_some_proof()
    {
        Assert.Equal((BoardState.ProofDue, "nothing proves it"), Only(Worked.Board("bench:\n" + First("found", Seen("minor")))));
        Assert.Equal(BoardState.FitToRun, Worked.Board("bench:\n" + First("proof", "{ point: lamp, result: pass }")).State);
    }

    [Fact]
    public void A_failed_test_stands_as_a_fault_even_when_no_design_asks_for_it() =>
        Assert.Contains(Worked.Board("bench:\n" + First("proof", "{ point: lamp, result: fail }")).Reasons, reason =>
            (reason.State, reason.Text) == (BoardState.FaultStands, "lamp failed its test")
        );

    [Fact]
    public void A_proof_of_the_same_visit_as_the_work_counts() =>
        Assert.Equal(
            BoardState.FitToRun,
            Visits(First("work", "{ at: J3, did: re-soldered }") + "\n    proof:\n      - { point: +5V, voltage: 5.02 V }").State
        );

    [Fact]
    public void A_proof_of_an_earlier_visit_than_the_work_does_not_count() =>
        Assert.Equal(
            (BoardState.ProofDue, "the proof of +5V of 2026-03-20 is older than the last work of 2026-04-02"),
            Only(Visits(First("found", Seen("minor")) + Proved + Later("work", "{ at: J3, did: re-soldered }")))
        );

    [Fact]
    public void Leaving_something_alone_is_no_work() =>
        Assert.Equal(
            BoardState.FitToRun,
            Visits(First("found", Seen("minor")) + Proved + Later("work", "{ at: J3, did: left alone }")).State
        );

    [Fact]
    public void A_rail_outside_its_limit_is_a_fault() =>
        Assert.Equal((BoardState.FaultStands, "+5V"), Where(Visits(First("proof", "{ point: +5V, voltage: 4.60 V }"))));

    [Fact]
    public void A_rail_too_close_to_call_is_not_proved() =>
        Assert.Equal((BoardState.ProofDue, "+5V"), Where(Visits(First("proof", "{ point: +5V, voltage: 4.78 V, instrument: meter-1 }"))));

    [Fact]
    public void Only_the_last_proof_of_a_point_counts() =>
        Assert.Equal(BoardState.FitToRun, Visits(First("proof", "{ point: +5V, voltage: 4.60 V }") + Proved).State);

    [Fact]
    public void A_part_outside_its_limit_is_a_fault() =>
        Assert.Equal(
            (BoardState.FaultStands, "C12"),
            Where(Visits(First("readings", "{ part: C12, circuit: out, capacitance: 301 µF }") + Proved))
        );

    [Fact]
    public void A_part_that_failed_its_test_is_a_fault() =>
        Assert.Equal((BoardState.FaultStands, "its test failed"), Only(Visits(First("readings", "{ part: C12, result: fail }") + Proved)));

    [Fact]
    public void An_empty_place_is_a_fault() =>
        Assert.Equal((BoardState.FaultStands, "the place is empty"), Only(Visits(First("work", "{ part: C12, did: removed }") + Proved)));

    [Fact]
    public void A_part_that_is_to_be_replaced_is_a_fault_until_it_is()
    {
        var decided = First("decided", "{ part: C12, decision: replace, because: this family fails shorted }");
        Assert.Equal((BoardState.FaultStands, "decided to be replaced: this family fails shorted"), Only(Visits(decided + Proved)));
        Assert.Equal(
            BoardState.FitToRun,
            Visits(
                decided
                    + "\n    readings:\n      - { part: C12, lot: L-031, state: new, capacitance: 472 µF }\n    work:\n      - { part: "
                    + "C12, did: replaced, lot: L-031, polarity: schematic }"
                    + Proved
            ).State
        );
    }

    [Fact]
    public void A_major_finding_is_a_fault_until_work_or_a_decision_answers_it()
    {
        Assert.Equal((BoardState.FaultStands, "a lifted pad"), Only(Visits(First("found", Seen("major")) + Proved)));
        Assert.Equal(
            BoardState.FitToRun,
            Visits(First("found", Seen("major")) + "\n    work:\n      - { at: J3, did: repaired }" + Proved).State
        );
        Assert.Equal(
            BoardState.FitToRun,
            Visits(
                First("found", Seen("major"))
                    + "\n    decided:\n      - { at: J3, decision: leave alone, because: the pad is not used }"
                    + Proved
            ).State
        );
        Assert.Equal(
            BoardState.FitToRun,
            Visits(
                First("found", Seen("major")) + "\n    work:\n      - { at: the edge connector, did: repaired, clears: J3 }" + Proved
            ).State
        );
    }

    [Fact]
    public void Open_waits_keep_a_board_from_running_until_they_end()
    {
        var visits = Parts + "bench:\n" + First("found", Seen("minor")) + Proved;
        Assert.Equal(
            (BoardState.Waiting, "waits since 2026-03-16 for a pen motor belt"),
            Only(Worked.Board(visits + "\nwaiting:\n  - { since: 2026-03-16, for: a pen motor belt }"))
        );
        Assert.Equal(
            BoardState.FitToRun,
            Worked.Board(visits + "\nwaiting:\n  - { since: 2026-03-16, for: a pen motor belt, until: 2026-03-19 }").State
        );
    }

    [Fact]
    public void The_worst_reason_gives_the_state_and_stands_first()
    {
        var board = Visits(First("found", Seen("safety")) + "\n    readings:\n      - { part: C12, circuit: out, capacitance: 301 µF }");
        Assert.Equal(BoardState.MakeSafe, board.State);
        Assert.Equal([BoardState.MakeSafe, BoardState.FaultStands, BoardState.ProofDue], board.Reasons.Select(reason => reason.State));
    }

    private static JudgedBoard Visits(string visits) => Worked.Board(Parts + "bench:\n" + visits, Stock);

    private static string First(string list, string entry) => $"  - date: 2026-03-14\n    {list}:\n      - {entry}";

    private static string Later(string list, string entry) => $"\n  - date: 2026-04-02\n    {list}:\n      - {entry}";

    private static string Seen(string severity) => $"{{ at: J3, what: a lifted pad, severity: {severity} }}";

    private static (BoardState State, string Text) Only(JudgedBoard board)
    {
        var reason = Assert.Single(board.Reasons);
        Assert.NotEmpty(reason.NextStep);
        return (reason.State, reason.Text);
    }

    private static (BoardState State, string? At) Where(JudgedBoard board)
    {
        var reason = Assert.Single(board.Reasons);
        return (reason.State, reason.At);
    }
}
