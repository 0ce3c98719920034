using System.Globalization;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Drawings;

namespace Ohmstead.Publishing;

/// <summary>The badges beside the pages: one for each board, one for the collection.</summary>
internal static class Badges
{
    /// <summary>Writes them.</summary>
    public static void Write(Draft draft, string collection, IReadOnlyList<BoardSummary> boards)
    {
        foreach (var board in boards)
        {
            Badge.Write(draft.Buffer, board.Id.Value, board.State, BoardStates.Told(board.State, board.OverdueSince));
            draft.Put(SiteAddress.Badge(board.Id.Value));
        }

        BoardSummary[] worked = [.. boards.Where(board => BoardStates.IsWorkedOn(board.State))];
        var fit = worked.Count(board => board.State == BoardState.FitToRun);
        var worst = worked.Length == 0 ? BoardState.NotLookedAt : worked.Max(board => board.State);
        var overdue = BoardStates.OverdueWords(boards.Count(board => board.IsFitButOverdue)) is { } beside ? ", " + beside : string.Empty;
        Badge.Write(
            draft.Buffer,
            collection,
            worst,
            string.Create(CultureInfo.InvariantCulture, $"{fit} of {worked.Length} fit to run{overdue}")
        );
        draft.Put(SiteAddress.CollectionBadge);
    }
}
