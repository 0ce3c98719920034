using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Shelf.Ages;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Electronics.Life;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Shelf;

/// <summary>Everything computed about one lot in the drawer.</summary>
/// <param name="Lot">The lot as written.</param>
/// <param name="Dates">When its parts can have been made.</param>
/// <param name="Shelf">How long they have lain and when they are due, or null when that is not known or does not matter.</param>
/// <param name="Incoming">Readings of it that were taken in the drawer, oldest first.</param>
/// <param name="Fittings">Where its parts were fitted, oldest first.</param>
public sealed record LotStory(
    Lot Lot,
    LotDates Dates,
    ShelfLife? Shelf,
    IReadOnlyList<AssessedReading> Incoming,
    IReadOnlyList<LotFitting> Fittings
)
{
    /// <summary>How many are left, or null when the record does not say how many came.</summary>
    public int? Left => Lot.Quantity is { } came ? came.Value - Fittings.Count - Pieces.Scrapped : null;

    /// <summary>
    /// What makers say of parts of each age that these can have, the youngest first; counted from when they were made, or came when no code
    /// says more.
    /// Only for wet aluminium electrolytics.
    /// </summary>
    public IReadOnlyList<(DateOnly From, ShelfAge Age)> Ages { get; private init; } = [];

    /// <summary>Which of its pieces were read, which failed, and which went to the bin.</summary>
    public required LotPieces Pieces { get; init; }

    /// <summary>What went to the bin and why, in the order written.</summary>
    public IReadOnlyList<(BenchVisit Visit, Scrapped Scrapped)> Scraps { get; private init; } = [];

    /// <summary>What speaks against fitting a part of it as it lies.</summary>
    public LotDoubts Doubts { get; private init; }

    /// <summary>Gathers what is known of a lot.</summary>
    /// <param name="workshop">The drawer.</param>
    /// <param name="lot">The lot.</param>
    /// <param name="fittings">Where its parts were fitted, in any order.</param>
    /// <param name="today">The day of this run.</param>
    public static LotStory Gather(Workshop workshop, Lot lot, IEnumerable<LotFitting> fittings, DateOnly today)
    {
        var judge = new ReadingJudge(workshop);
        var dates = LotDates.Read(lot, today);
        var shelf = ShelfLife.For(lot, today);
        AssessedReading[] incoming =
        [
            .. workshop
                .IncomingReadings[lot.Id.Value]
                .OrderBy(pair => pair.Visit.Date.Value)
                .Select(pair => judge.AssessIncoming(pair.Visit, pair.Reading)),
        ];
        LotFitting[] taken =
        [
            .. fittings
                .OrderBy(fitting => fitting.Date)
                .ThenBy(fitting => fitting.Board, StringComparer.Ordinal)
                .ThenBy(fitting => fitting.Reference, StringComparer.Ordinal),
        ];
        var pieces = LotPieces.Gather(workshop, judge, lot.Id.Value, taken.Count(fitting => fitting.WasReadGood));
        return new(lot, dates, shelf, incoming, taken)
        {
            Pieces = pieces,
            Scraps = [.. workshop.Scrapped[lot.Id.Value]],
            Doubts = LotDoubts.For(pieces, shelf, today),
            Ages = lot.Values.Kind.Value.DriesOut ? AgesOf(lot, dates, today) : [],
        };
    }

    private static List<(DateOnly From, ShelfAge Age)> AgesOf(Lot lot, LotDates dates, DateOnly today)
    {
        IEnumerable<DateOnly> days =
            dates.Made.Count > 0 ? dates.Made.Select(reading => reading.Value.First).Distinct().OrderDescending()
            : lot.Received is { } received ? [received.Value.Earliest]
            : [];
        var ages = new List<(DateOnly, ShelfAge)>(1);
        foreach (var day in days)
        {
            if (ShelfAge.Compute(day, today).Is(out var age, out _))
            {
                ages.Add((day, age));
            }
        }

        return ages;
    }
}
