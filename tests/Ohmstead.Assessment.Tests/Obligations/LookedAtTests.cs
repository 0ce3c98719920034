using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.Obligations;

public sealed class LookedAtTests
{
    [Fact]
    public void A_board_that_just_came_was_not_looked_at() =>
        new ObligedBoard("looked-at", "made: 1984").Open(
            null,
            BoardState.NotLookedAt,
            "nothing was looked at since it came",
            "inspect it, make it safe, measure as found"
        );

    [Fact]
    public void The_first_visit_is_a_look() =>
        new ObligedBoard("looked-at", "bench:\n  - date: 2026-03-15\n    by: MH\n  - date: 2026-03-14\n    by: EK").Met(
            null,
            "it was looked at",
            "on the bench",
            "2026-03-14",
            "date: 2026-03-14"
        );

    // What nobody has looked at is told as that, and not as points that were never proved.
    [Fact]
    public void It_is_the_only_thing_that_such_a_board_owes()
    {
        var board = new ObligedBoard("looked-at", "points:\n  - { point: +5V, nominal: 5 V, tolerance: 5 % }").Board;
        Assert.Equal(BoardState.NotLookedAt, Assert.Single(board.Reasons).State);
    }
}
