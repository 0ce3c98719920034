using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Shelf;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Electronics.Substitution;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Fit;

/// <summary>A lot with what is left of it, and what must be known before one is taken.</summary>
/// <param name="Lot">The lot.</param>
/// <param name="Left">How many are left; none when its quantity is not written.</param>
/// <param name="Doubts">What speaks against taking one: it failed its incoming reading, or it lay too long.</param>
public sealed record DrawerLot(Lot Lot, int Left, IReadOnlyList<FitReason> Doubts);

/// <summary>What lies in the drawer: the lots that have come, less what was fitted on all boards and what went to the bin.</summary>
public sealed class Drawer
{
    private readonly Workshop workshop;

    private Drawer(Workshop workshop, IReadOnlyList<DrawerLot> lots)
    {
        this.workshop = workshop;
        Lots = lots;
        LotGroups = AlikeLots.Group(lots.Select(lot => (lot, Offer(lot))));
    }

    /// <summary>The lots of which something is left, in order of name.</summary>
    public IReadOnlyList<DrawerLot> Lots { get; }

    /// <summary>The same lots, those together of which the same is to be said wherever they may go.</summary>
    internal IReadOnlyList<AlikeLots> LotGroups { get; }

    /// <summary>Counts the drawer of a collection.</summary>
    /// <param name="workshop">The lots and orders.</param>
    /// <param name="use">What all boards took of it.</param>
    /// <param name="today">The day to judge shelf life by.</param>
    public static Drawer Count(Workshop workshop, LotUse use, DateOnly today)
    {
        var judge = new ReadingJudge(workshop);
        return new(
            workshop,
            [
                .. workshop
                    .Lots.Values.Where(workshop.HasCome)
                    .Select(lot =>
                        (Lot: lot, Left: (lot.Quantity?.Value ?? 0) - use.Fitted(lot.Id.Value) - workshop.ScrappedOf(lot.Id.Value))
                    )
                    .Where(stock => stock.Left > 0)
                    .OrderBy(stock => stock.Lot.Id.Value, StringComparer.Ordinal)
                    .Select(stock => new DrawerLot(
                        stock.Lot,
                        stock.Left,
                        [.. Reasons(LotDoubts.For(workshop, judge, stock.Lot, today, use.ReadGood(stock.Lot.Id.Value)))]
                    )),
            ]
        );
    }

    /// <summary>A lot as an offer, with what was measured of it.</summary>
    public LotOffer Offer(DrawerLot lot) => MeasuredLots.Offer(workshop, lot.Lot);

    private static IEnumerable<FitReason> Reasons(LotDoubts doubts)
    {
        if (doubts.FailedOn is { } visit)
        {
            yield return FitReason.Against(FitAspects.Reading, () =>
                $"a piece failed its incoming reading of {visit.Date.Text} and was not scrapped"
            );
        }

        if (doubts.Doubted is { } pieces)
        {
            yield return FitReason.Doubt(FitAspects.Reading, () => pieces.DoubtInWords);
        }

        if (doubts.Over is { } shelf)
        {
            yield return FitReason.Doubt(FitAspects.Shelf, () =>
                $"{shelf.SinceWords}, longer ago than its shelf life of {shelf.LifeWords}: form it again, if it is an electrolytic, and "
                + "measure first"
            );
        }
    }
}
