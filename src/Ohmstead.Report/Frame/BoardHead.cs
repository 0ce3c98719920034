using System.Globalization;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Report.Addresses;

namespace Ohmstead.Report.Frame;

/// <summary>What a page or a sheet about a board says of itself.</summary>
internal static class BoardHead
{
    /// <summary>The head of the page.</summary>
    public static PageHead Of(ReportContext context, JudgedBoard board) =>
        new(SiteAddress.Board(board.Board.Id.Value), $"{board.Board.Id.Value} {board.Board.Title.Value}", Sentence(board))
        {
            Picture = context.Published is null ? null : LatestPicture(context, board),
        };

    /// <summary>The state first, as it is told everywhere, so that nobody who reads no further misses that a board is to be made safe; then
    /// what it is, and how many places are not as they should be.</summary>
    public static string Sentence(JudgedBoard board)
    {
        var state = BoardStates.Told(board.State, board.OverdueSince);
        return $"{char.ToUpperInvariant(state[0])}{state[1..]}: {board.Board.Title.Value}; {Counts(HoldsNow.Of(board))}.";
    }

    private static string Counts(HoldsNow now)
    {
        var words = new List<string>(3);
        Add(now.Outside.Length, "outside now");
        Add(now.Kept.Length, "outside and kept by a decision");
        Add(now.Undecided.Length, "too close to call");
        return words.Count > 0 ? string.Join(", ", words)
            : now.Inside == 0 ? "nothing that sits in it now was read against a limit"
            : "nothing that sits in it now reads outside its limits";

        void Add(int count, string what)
        {
            if (count > 0)
            {
                words.Add(string.Create(CultureInfo.InvariantCulture, $"{count} {what}"));
            }
        }
    }

    private static string? LatestPicture(ReportContext context, JudgedBoard board) =>
        board
            .Visits.Reverse()
            .SelectMany(visit => visit.Photos.Reverse())
            .Where(photo => PictureNames.IsSafe(photo.File.Value))
            .Select(photo => context.Pictures?.Find(photo.File.Value)?.Large.Path)
            .FirstOrDefault(path => path is not null);
}
