using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Shelf.Ages;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Shelf;

/// <summary>What speaks against fitting a part of a lot as it lies.</summary>
/// <param name="FailedOn">The visit of the first incoming reading of a piece that failed and still lies with the others, or null.</param>
/// <param name="IsUnread">True when none of what lies there was measured.</param>
/// <param name="Over">Its shelf life when that is over, or null.</param>
/// <param name="Doubted">The pieces of the lot where so many were bad that it is doubted as a whole, or null.</param>
public readonly record struct LotDoubts(BenchVisit? FailedOn, bool IsUnread, ShelfLife? Over, LotPieces? Doubted)
{
    /// <summary>The doubts of a lot in the drawer.</summary>
    /// <param name="workshop">The drawer.</param>
    /// <param name="judge">Judges what was read.</param>
    /// <param name="lot">The lot.</param>
    /// <param name="today">The day to judge shelf life by.</param>
    /// <param name="goodOnBoards">How many of it were read for the place that they went to, and did not fail.</param>
    internal static LotDoubts For(Workshop workshop, ReadingJudge judge, Lot lot, DateOnly today, int goodOnBoards = 0) =>
        For(LotPieces.Gather(workshop, judge, lot.Id.Value, goodOnBoards), ShelfLife.For(lot, today), today);

    /// <summary>The doubts that follow from pieces and age.</summary>
    internal static LotDoubts For(LotPieces pieces, ShelfLife? shelf, DateOnly today) =>
        new(
            pieces.FailedOn,
            !pieces.StillThere.Any(),
            shelf is not null && shelf.IsOverOn(today) ? shelf : null,
            pieces.IsDoubted ? pieces : null
        );
}
