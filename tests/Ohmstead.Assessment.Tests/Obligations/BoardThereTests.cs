using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.Obligations;

/// <summary>The board is there to be switched on. The run is on 2026-11-25.</summary>
public sealed class BoardThereTests
{
    private const string While = "nothing while it is away; should it return, enter that it came back";

    [Theory]
    [InlineData("did: sold, to: Lantern Yard Spares", "sold to Lantern Yard Spares on 2026-05-02")]
    [InlineData("did: given away", "given away on 2026-05-02")]
    [InlineData("did: lost", "lost on 2026-05-02")]
    public void What_is_gone_is_gone_whatever_was_proved(string did, string told) =>
        Board($"{{ date: 2026-05-02, {did} }}").Open(null, BoardState.Gone, told, While);

    [Fact]
    public void What_was_broken_up_is_no_board() =>
        Board("{ date: 2026-05-02, did: broken up }")
            .Open(
                null,
                BoardState.BrokenUp,
                "broken up for parts on 2026-05-02",
                "nothing: what was taken from it is judged where it sits now"
            );

    [Fact]
    public void What_is_kept_for_show_is_not_switched_on() =>
        Board("{ date: 2026-05-02, did: retired }")
            .Open(
                null,
                BoardState.Retired,
                "kept for show since 2026-05-02",
                "nothing while it is kept as it is; should it run again, enter that it is used again"
            );

    [Theory]
    [InlineData("{ date: 2026-05-02, did: lent, to: Two Weirs museum }")]
    [InlineData("{ date: 2026-05-02, did: moved, at: store }")]
    [InlineData("{ date: 2026-05-02, did: changed hands, owner: harbour office }")]
    public void What_is_lent_moved_or_somebody_elses_is_as_it_was(string step)
    {
        var board = Board(step);
        board.AsksNothing(null);
        Assert.Equal(BoardState.FitToRun, board.Board.State);
    }

    // Glass does not stop a cell that leaks.
    [Fact]
    public void A_hazard_on_what_is_kept_for_show_still_has_to_go()
    {
        var board = new ObligedBoard(
            "board-there",
            "hazards:\n  - { hazard: leaking cell, at: BT1 }\nwhereabouts:\n  - { date: 2026-05-02, did: retired }"
        );
        Assert.Equal(BoardState.MakeSafe, board.Board.State);
    }

    [Fact]
    public void On_what_is_gone_a_hazard_does_not_hide_that_it_is_gone()
    {
        var board = new ObligedBoard(
            "board-there",
            "hazards:\n  - { hazard: leaking cell, at: BT1 }\nwhereabouts:\n  - { date: 2026-05-02, did: sold }"
        );
        Assert.Equal(BoardState.Gone, board.Board.State);
        Assert.Contains(board.Board.Reasons, reason => reason.State == BoardState.MakeSafe);
    }

    private static ObligedBoard Board(string step) =>
        new(
            "board-there",
            "points:\n  - { point: lamp, measures: result }\nbench:\n  - date: 2026-03-14\n    proof:\n"
                + $"      - {{ point: lamp, result: pass }}\nwhereabouts:\n  - {step}"
        );
}
