using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Shelf.Ages;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Shelf;

/// <summary>One lot of the drawer with what is left of it and what is to be done about it.</summary>
/// <param name="Lot">The lot as written.</param>
/// <param name="Fitted">How many of it were fitted on boards.</param>
/// <param name="IsHere">False while the order it belongs to has not come.</param>
/// <param name="Shelf">How long it has lain and until when it may, or null when that is not known or does not matter.</param>
/// <param name="ToDo">What is to be done before a part of it is fitted, the weightiest first; empty when nothing is.</param>
public sealed record DrawerLine(Lot Lot, int Fitted, bool IsHere, ShelfLife? Shelf, IReadOnlyList<string> ToDo)
{
    /// <summary>How many came, or null when the record does not say.</summary>
    public int? Came => Lot.Quantity?.Value;

    /// <summary>How many went to the bin.</summary>
    public int Scrapped { get; init; }

    /// <summary>The share of bad pieces in words, or null when none was bad.</summary>
    public string? BadInWords { get; init; }

    /// <summary>How many are left: computed, never typed; null when the record does not say how many came.</summary>
    public int? Left => Came - Fitted - Scrapped;
}

/// <summary>The drawer as a list: every lot, the used up ones too.</summary>
public static class DrawerList
{
    /// <summary>The list, in order of the lots' names.</summary>
    /// <param name="workshop">The drawer.</param>
    /// <param name="use">What all boards took of it.</param>
    /// <param name="today">The day to judge shelf life by.</param>
    public static IReadOnlyList<DrawerLine> List(Workshop workshop, LotUse use, DateOnly today)
    {
        var judge = new ReadingJudge(workshop);
        return
        [
            .. workshop
                .Lots.Values.OrderBy(lot => lot.Id.Value, StringComparer.Ordinal)
                .Select(lot =>
                    Line(
                        workshop,
                        LotPieces.Gather(workshop, judge, lot.Id.Value, use.ReadGood(lot.Id.Value)),
                        lot,
                        use.Fitted(lot.Id.Value),
                        today
                    )
                ),
        ];
    }

    private static DrawerLine Line(Workshop workshop, LotPieces pieces, Lot lot, int fitted, DateOnly today)
    {
        var shelf = ShelfLife.For(lot, today);
        var isHere = workshop.HasCome(lot);
        var left = lot.Quantity?.Value - fitted - pieces.Scrapped;
        return new(lot, fitted, isHere, shelf, left is 0 || !isHere ? [] : [.. ToDo(LotDoubts.For(pieces, shelf, today), lot, left)])
        {
            Scrapped = pieces.Scrapped,
            BadInWords = pieces.ShareInWords,
        };
    }

    private static IEnumerable<string> ToDo(LotDoubts doubts, Lot lot, int? left)
    {
        if (left < 0)
        {
            yield return "more were fitted and scrapped than came: count again";
        }

        if (doubts.FailedOn is { } visit)
        {
            yield return $"failed its incoming reading of {visit.Date.Text}: scrap the piece, or fit none";
        }
        else if (doubts.IsUnread)
        {
            yield return "measure one before any is fitted";
        }

        if (doubts.Doubted is not null)
        {
            yield return "doubt all of it, so many were bad: measure each piece, or send it back";
        }

        if (doubts.Over is not null)
        {
            yield return lot.Values.Kind.Value.DriesOut
                ? "form again before any is fitted: 'why' of the lot has the plan"
                : "too long on the shelf: test before any is fitted";
        }
    }
}
