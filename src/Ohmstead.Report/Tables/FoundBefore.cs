using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Records.Model;

namespace Ohmstead.Report.Tables;

/// <summary>What was last read of the part that sat in a place before the one that sits there now.</summary>
internal static class FoundBefore
{
    private static readonly Dictionary<Measured, Verdict> None = [];

    /// <summary>For each quantity that was read of what sits there now, the last verdict on the part before; a reading that proves nothing
    /// only where there is no other.</summary>
    public static IReadOnlyDictionary<Measured, Verdict> Find(PlaceHistory place)
    {
        if (place.ChangedAt is not { } order || place.Standing.Length == 0)
        {
            return None;
        }

        var found = new SortedDictionary<Measured, Verdict>();
        foreach (var reading in place.Readings)
        {
            if (
                reading.IsNew
                || reading.EmptiedOn is not null
                || (place.FittedLot is not null && ReferenceEquals(reading.Lot, place.FittedLot))
                || reading.VisitOrder > order
                || (reading.VisitOrder == order && reading.Reading.State is { Value: ReadingState.AsLeft })
            )
            {
                continue;
            }

            foreach (var verdict in reading.Verdicts)
            {
                if (
                    IsReadNow(place, verdict.Measured)
                    && (
                        verdict.Outcome != VerdictOutcome.ProvesNothing
                        || !found.TryGetValue(verdict.Measured, out var known)
                        || known.Outcome == VerdictOutcome.ProvesNothing
                    )
                )
                {
                    found[verdict.Measured] = verdict;
                }
            }
        }

        return found;
    }

    private static bool IsReadNow(PlaceHistory place, Measured measured)
    {
        foreach (var verdict in place.Standing)
        {
            if (verdict.Measured == measured)
            {
                return true;
            }
        }

        return false;
    }
}
