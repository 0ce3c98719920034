using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.Boards;

/// <summary>What can hurt comes before everything else, and nobody can decide it away. Defer to local codes and licensed
/// practice.</summary>
public sealed class MakeSafeTests
{
    private const string Cell = "hazards:\n  - { hazard: leaking cell, at: BT1 }\n";
    private const string Proof = "\n    proof:\n      - { point: lamp, result: pass }";

    [Fact]
    public void A_leaking_cell_keeps_a_board_from_running()
    {
        var reason = Assert.Single(Worked.Board(Cell + Visit("found", "{ at: J3, what: dust, severity: note }") + Proof).Reasons);
        Assert.Equal((BoardState.MakeSafe, "BT1", "leaking cell not made safe"), (reason.State, reason.At, reason.Text));
    }

    [Theory]
    [InlineData("{ part: BT1, did: removed }")]
    [InlineData("{ at: BT1, did: replaced }")]
    [InlineData("{ did: removed, hazard: leaking cell }")]
    public void A_leaking_cell_that_was_taken_out_hurts_no_more(string work)
    {
        var board = Worked.Board(
            "hazards:\n  - { hazard: leaking cell"
                + (work.Contains("BT1", StringComparison.Ordinal) ? ", at: BT1" : string.Empty)
                + " }\n"
                + Visit("work", work)
                + Proof
        );
        Assert.Equal(BoardState.FitToRun, board.State);
    }

    [Theory]
    [InlineData("{ at: BT1, did: left alone }")]
    [InlineData("{ at: BT1, did: left alone, hazard: leaking cell }")]
    [InlineData("{ at: BT1, did: cleaned }")]
    [InlineData("{ at: BT1, did: cleaned, hazard: leaking cell }")]
    [InlineData("{ at: BT1, did: made safe }")]
    [InlineData("{ at: G2, did: removed, hazard: leaking cell }")]
    public void A_leaking_cell_that_was_left_there_still_hurts(string work) =>
        Assert.Equal(BoardState.MakeSafe, Worked.Board(Cell + Visit("work", work) + Proof).State);

    [Fact]
    public void Mains_stay_and_are_cautioned_against() =>
        Assert.Equal(
            BoardState.FitToRun,
            Worked
                .Board(
                    "hazards:\n  - { hazard: mains, at: T1, voltage: 230 V }\n"
                        + Visit("found", "{ at: J3, what: dust, severity: note }")
                        + Proof
                )
                .State
        );

    [Theory]
    [InlineData("decided", "{ at: J3, decision: leave alone, because: nobody touches it }")]
    [InlineData("work", "{ at: J3, did: left alone }")]
    public void A_safety_finding_cannot_be_decided_away(string list, string entry) =>
        Assert.Equal(
            BoardState.MakeSafe,
            Worked
                .Board(Visit("found", "{ at: J3, what: bare mains wire, severity: safety }") + $"\n    {list}:\n      - {entry}" + Proof)
                .State
        );

    [Fact]
    public void A_safety_finding_is_answered_by_work_at_its_place() =>
        Assert.Equal(
            BoardState.FitToRun,
            Worked
                .Board(
                    Visit("found", "{ at: J3, what: bare mains wire, severity: safety }")
                        + "\n    work:\n      - { at: J3, did: made safe }"
                        + Proof
                )
                .State
        );

    private static string Visit(string list, string entry) => $"bench:\n  - date: 2026-03-14\n    {list}:\n      - {entry}";
}
