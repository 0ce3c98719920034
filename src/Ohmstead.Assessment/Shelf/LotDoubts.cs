using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Shelf;

/// <summary>What speaks against fitting a part of a lot as it lies.</summary>
/// <param name="FailedOn">The visit of its first incoming reading that is outside, or null.</param>
/// <param name="IsUnread">True when none of it was measured.</param>
/// <param name="Over">Its shelf life when that is over, or null.</param>
public readonly record struct LotDoubts(BenchVisit? FailedOn, bool IsUnread, ShelfLife? Over)
{
    /// <summary>The doubts of a lot in the drawer.</summary>
    internal static LotDoubts Of(Workshop workshop, Assessor assessor, Lot lot, DateOnly today) =>
        Of(workshop.IncomingReadings[lot.Id.Value].Select(pair => assessor.AssessIncoming(pair.Visit, pair.Reading)), ShelfLife.Of(lot, today), today);

    /// <summary>The doubts that follow from readings and age.</summary>
    internal static LotDoubts Of(IEnumerable<AssessedReading> incoming, ShelfLife? shelf, DateOnly today)
    {
        var isUnread = true;
        BenchVisit? failed = null;
        foreach (var reading in incoming)
        {
            isUnread = false;
            if (reading.Overall == VerdictOutcome.Outside)
            {
                failed = reading.Visit;
                break;
            }
        }

        return new(failed, isUnread, shelf is not null && shelf.IsOverOn(today) ? shelf : null);
    }
}
