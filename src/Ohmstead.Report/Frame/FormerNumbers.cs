using Ohmstead.Assessment.Boards;

namespace Ohmstead.Report.Frame;

/// <summary>The numbers that boards had before.</summary>
public static class FormerNumbers
{
    /// <summary>The former numbers that lead somewhere, each with its board. One that a board has is that board's; one that two had is
    /// the first one's.</summary>
    /// <param name="boards">All boards, in order of path.</param>
    public static IEnumerable<(string Number, BoardSummary Board)> Leading(IReadOnlyList<BoardSummary> boards)
    {
        var taken = boards.Select(board => board.Id.Value).ToHashSet(StringComparer.OrdinalIgnoreCase);
        return boards.SelectMany(board => board.Formerly.Select(former => (former.Value, board))).Where(former => taken.Add(former.Value));
    }
}
