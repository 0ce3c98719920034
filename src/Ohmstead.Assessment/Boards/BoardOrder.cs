using Ohmstead.Assessment.History;
using Ohmstead.Electronics;

namespace Ohmstead.Assessment.Boards;

/// <summary>In which order boards are told.</summary>
public enum BoardOrder
{
    /// <summary>What presses most first.</summary>
    State,

    /// <summary>By number.</summary>
    Board,

    /// <summary>By what they are.</summary>
    Title,

    /// <summary>What nobody has seen for longest first.</summary>
    Seen,

    /// <summary>What is to be looked at soonest first.</summary>
    Look,
}

/// <summary>Orders as people ask for them.</summary>
public static class BoardOrders
{
    /// <summary>The word of each.</summary>
    public static WordList<BoardOrder> Words { get; } =
        new(
            (BoardOrder.State, "state"),
            (BoardOrder.Board, "board"),
            (BoardOrder.Title, "title"),
            (BoardOrder.Seen, "seen"),
            (BoardOrder.Look, "look")
        );

    /// <summary>Puts boards in order; equal ones stand by number.</summary>
    public static IEnumerable<BoardSummary> Sorted(IEnumerable<BoardSummary> boards, BoardOrder order) =>
        Weighed(boards, order).ThenBy(board => board.Id.Value, StringComparer.Ordinal).ThenBy(board => board.Path, StringComparer.Ordinal);

    // A board that nobody saw was not seen for longest; one with no day to look at it again comes behind those that have one.
    private static IOrderedEnumerable<BoardSummary> Weighed(IEnumerable<BoardSummary> boards, BoardOrder order) =>
        order switch
        {
            BoardOrder.State => boards.OrderBy(board => BoardStates.Place(board.State)),
            BoardOrder.Board => boards.OrderBy(board => board.Id.Value, StringComparer.Ordinal),
            BoardOrder.Title => boards.OrderBy(board => board.Title, StringComparer.OrdinalIgnoreCase),
            BoardOrder.Seen => boards.OrderBy(board => board.LastSeen ?? DateOnly.MinValue),
            BoardOrder.Look => boards.OrderBy(board => board.LookAgain ?? DateOnly.MaxValue),
        };
}
