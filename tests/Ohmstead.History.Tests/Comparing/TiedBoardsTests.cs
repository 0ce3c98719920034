using Ohmstead.Assessment.Changes;
using Ohmstead.Collections;
using Ohmstead.Comparing;
using Ohmstead.Records.Nodes;

namespace Ohmstead.History.Tests.Comparing;

/// <summary>Boards that nobody touched are judged otherwise where another board takes pieces of the lot that theirs came from.</summary>
public sealed class TiedBoardsTests
{
    private const string Visits = "bench:\n";
    private const string Eight = "boards/SP-0008.md";
    private const string Fifteen = "boards/SP-0015.md";

    private static readonly DateOnly Today = new(2026, 11, 25);
    private static readonly RunOptions Options = new(Today, IsThorough: false, Workers: 1, ReadingLimits.Usual);

    [Fact]
    public void A_piece_too_many_of_a_lot_is_told_of_each_board_that_has_one()
    {
        using var states = new TwoStates();
        // All that came sit on SP-0007, so that what SP-0008 takes was never there.
        states.Edit(
            "stock.yaml",
            "quantity: 4, order: PO-02, shelf_life: 36 months }\n  - { lot: L-019",
            "quantity: 2 }\n  - { lot: L-019"
        );
        states.Keep();
        states.Edit(Eight, Visits, Visits + Fitted("2026-11-01", "C3"));

        var told = Compare(states);

        Assert.Contains("SP-0007", told.Boards.Select(board => board.Number));
        Assert.Contains(ToldChanges.Findings(told), finding => finding.Contains("[lot-overdrawn]", StringComparison.Ordinal));
    }

    [Fact]
    public void A_piece_that_was_read_in_the_drawer_goes_to_whoever_took_it_first()
    {
        using var states = new TwoStates();
        states.Edit(Eight, Visits, Visits + Fitted("2026-11-01", "C3"));
        states.Keep();
        // A month before, SP-0015 took all pieces that were read.
        states.Edit(Fifteen, Visits, Visits + Fitted("2026-10-01", "C1", "C2", "C3", "C4"));

        var told = Compare(states);

        Assert.Contains("SP-0008", told.Boards.Select(board => board.Number));
    }

    [Fact]
    public void A_board_that_differs_in_something_else_is_held_back_by_its_lot_as_it_was()
    {
        using var states = new TwoStates();
        states.Edit(
            "stock.yaml",
            "quantity: 4, order: PO-02, shelf_life: 36 months }\n  - { lot: L-019",
            "quantity: 2 }\n  - { lot: L-019"
        );
        states.Edit(Fifteen, Visits, Visits + Fitted("2026-11-01", "C3"));
        states.Keep();
        states.Edit("boards/SP-0007.md", "title: ", "title: Old ");

        var told = Compare(states);

        Assert.Equal([("SP-0007", "proof due")], told.Boards.Select(board => (board.Number, board.State)));
    }

    private static string Fitted(string day, params string[] parts) =>
        $"  - date: {day}\n    by: MB\n    work:\n"
        + string.Concat(parts.Select(part => $"      - {{ part: {part}, did: replaced, lot: L-018, polarity: schematic }}\n"));

    // Looking only at what can differ, which must say what judging all says.
    private static CollectionChanges Compare(TwoStates states)
    {
        var told = Run(states, isWhole: false);
        Assert.Equal(ToldChanges.Lines(Run(states, isWhole: true)), ToldChanges.Lines(told));
        return told;
    }

    private static CollectionChanges Run(TwoStates states, bool isWhole)
    {
        using var before = new ComparedSide("was", CollectionFolder.Open(states.Was.Root), null);
        using var after = new ComparedSide("now", CollectionFolder.Open(states.Now.Root), null);
        return new ChangesRun(before, after, Options, Today) { IsWhole = isWhole }.Run();
    }
}
