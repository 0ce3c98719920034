using System.Collections.Immutable;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Checks;
using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Obligations.Basis;
using Ohmstead.Assessment.Shelf;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Obligations;

/// <summary>
/// What only all boards together show: a number twice, a lot overdrawn, one piece of a lot that is to sit in two places. Boards are judged
/// before it is known, and those on which it changes anything are judged again with it.
/// </summary>
public sealed class BoardsTogether
{
    private readonly SharedFaults faults;
    private readonly HashSet<string> otherwise;

    private BoardsTogether(ImmutableArray<Finding> findings, SharedFaults faults, PieceShares pieces, HashSet<string> otherwise) =>
        (Findings, this.faults, Pieces, this.otherwise) = (findings, faults, pieces, otherwise);

    /// <summary>What the checks of all boards found.</summary>
    public ImmutableArray<Finding> Findings { get; }

    /// <summary>Which fitting has which piece of a lot.</summary>
    public PieceShares Pieces { get; }

    /// <summary>Compares boards.</summary>
    /// <param name="workshop">What they refer to.</param>
    /// <param name="boards">What was kept of each, in order of path.</param>
    /// <param name="today">The day of this run.</param>
    public static BoardsTogether Compare(Workshop workshop, IReadOnlyList<BoardSummary> boards, DateOnly today)
    {
        var under = CollectionUnderCheck.From(workshop, boards, today);
        ImmutableArray<Finding> findings = [.. CheckCatalogue.Together.SelectMany(check => check.Look(under))];
        var pieces = PieceShares.ShareOut(workshop, [.. boards.SelectMany(board => board.Claims)]);
        return new(findings, SharedFaults.From(workshop, findings), pieces, Otherwise(workshop, boards, pieces));
    }

    /// <summary>Whether a board that was judged by itself must be judged again with this.</summary>
    public bool Changes(BoardSummary board) =>
        otherwise.Contains(board.Path)
        || faults.OfBoard(board.Path).Any()
        || board.Fittings.Any(fitted => fitted.Fitting.IsThere && faults.OfLot(fitted.Lot).Any());

    // A board by itself takes the pieces that it asks for. Where nobody else asks for one of the same lot that is how it stays.
    private static HashSet<string> Otherwise(Workshop workshop, IReadOnlyList<BoardSummary> boards, PieceShares pieces)
    {
        var changed = new HashSet<string>(StringComparer.Ordinal);
        var lots = new LotPiecesMemo(workshop, new ReadingJudge(workshop));
        var asked = boards
            .SelectMany(board => board.Claims)
            .GroupBy(claim => claim.Lot, StringComparer.Ordinal)
            .Where(claims => claims.Any(claim => claim.Path != claims.First().Path));
        foreach (var byBoard in asked.SelectMany(claims => claims.GroupBy(claim => claim.Path, StringComparer.Ordinal)))
        {
            PieceClaim[] claims = [.. byBoard];
            var alone = PieceShares.ShareOut(claims, lots.Passed);
            if (claims.Any(claim => pieces.For(claim) is not { } share || !share.IsLike(alone.For(claim))))
            {
                changed.Add(byBoard.Key);
            }
        }

        return changed;
    }
}
