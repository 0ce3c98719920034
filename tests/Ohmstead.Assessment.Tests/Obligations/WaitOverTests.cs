using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.Obligations;

/// <summary>Nothing that the work waits for is outstanding. The run is on 2026-11-25.</summary>
public sealed class WaitOverTests
{
    [Fact]
    public void A_wait_without_an_end_is_open() =>
        Board("{ since: 2026-03-16, for: a pen motor belt }")
            .Open(null, BoardState.Waiting, "waits since 2026-03-16 for a pen motor belt", "order it, or end the wait with a date");

    [Fact]
    public void What_it_blocks_and_the_order_are_told() =>
        Board("{ since: 2026-03-16, for: a pen motor belt, blocks: the soak, order: PO-12 }")
            .Open(null, BoardState.Waiting, "waits since 2026-03-16 for a pen motor belt, which blocks the soak", "see order PO-12");

    [Fact]
    public void A_wait_that_ended_is_over() =>
        Board("{ since: 2026-03-16, for: a pen motor belt, until: 2026-03-19 }")
            .Met(
                null,
                "waited for a pen motor belt",
                "that is over",
                "2026-03-19",
                "{ since: 2026-03-16, for: a pen motor belt, until: 2026-03-19 }"
            );

    [Theory]
    [InlineData("2026-03-16", false)]
    [InlineData("2026-03-15", true)]
    [InlineData("2026-11-25", false)]
    [InlineData("2026-11-26", true)]
    public void A_wait_ends_neither_before_it_began_nor_tomorrow(string until, bool isOpen) =>
        Assert.Equal(isOpen, Board($"{{ since: 2026-03-16, for: a belt, until: {until} }}").IsOpen(null));

    [Fact]
    public void An_end_that_cannot_be_is_told_as_that() =>
        Board("{ since: 2026-03-16, for: a belt, until: 2026-03-15 }")
            .Open(
                null,
                BoardState.Waiting,
                "the wait since 2026-03-16 for a belt is said to have ended on 2026-03-15, which cannot be",
                "mend the date, or take it out until the wait is over"
            );

    [Fact]
    public void A_board_that_waits_for_nothing_owes_nothing_here() =>
        new ObligedBoard("wait-over", "bench:\n  - date: 2026-03-14").AsksNothing(null);

    private static ObligedBoard Board(string wait) =>
        new(
            "wait-over",
            $"waiting:\n  - {wait}\nbench:\n  - date: 2026-03-14",
            "orders:\n  - { order: PO-12, placed: 2026-03-17, for: a pen motor belt }"
        );
}
