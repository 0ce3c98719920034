using Ohmstead.Assessment.Families.Statistics;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Boards;

/// <summary>One part in a place, from when it came there until it went, with the readings of that time.</summary>
internal readonly struct SeatedPart
{
    private const int TestBit = 1 << 30;

    private readonly IReadOnlyList<AssessedReading> readings;
    private readonly DateOnly? fitted;

    private SeatedPart(PartValues values, DateOnly? fitted, IReadOnlyList<AssessedReading> readings)
    {
        Values = values;
        this.fitted = fitted;
        this.readings = readings;
    }

    /// <summary>What it is.</summary>
    internal PartValues Values { get; }

    /// <summary>True for the part that came with the board.</summary>
    internal bool IsOriginal => fitted is null;

    /// <summary>True when a reading in circuit proved it outside.</summary>
    internal bool FailedInCircuit
    {
        get
        {
            for (var at = 0; at < readings.Count; at++)
            {
                if (readings[at] is { Reading.Circuit.Value: Circuit.In, Overall: VerdictOutcome.Outside })
                {
                    return true;
                }
            }

            return false;
        }
    }

    /// <summary>The part that came with the board, in a place that was never worked on: nothing is to be told apart.</summary>
    internal static SeatedPart Original(PlaceHistory place) => new(place.Part.Values, null, InOrder(OfWhatSatThere(place.Readings)));

    /// <summary>The parts that were read in a place, the original first. One of a lot that is not known is left out: nothing says what it
    /// is.</summary>
    internal static IEnumerable<SeatedPart> Find(PlaceHistory place, IReadOnlyList<WorkMoment> work)
    {
        var all = OfWhatSatThere(place.Readings);
        int[] changes = [.. all.Select(reading => Changes(work, Moments.OfReading(reading)))];
        DateOnly? since = null;
        for (int change = 0, next = 0; ; change++)
        {
            AssessedReading[] read = [.. all.Where((_, at) => changes[at] == change)];
            if (read.Length > 0 && change == 0)
            {
                yield return new(place.Part.Values, null, InOrder(read));
            }
            else if (read.Length > 0 && InOrder(read) is var then && then[0].Lot is { } lot)
            {
                yield return new(lot.Values, since, then);
            }

            while (next < work.Count && !work[next].EndsWhatWasThere)
            {
                next++;
            }

            if (next == work.Count)
            {
                yield break;
            }

            since = work[next++].Day;
        }
    }

    // Nearly always that is all of them.
    private static IReadOnlyList<AssessedReading> OfWhatSatThere(IReadOnlyList<AssessedReading> readings)
    {
        for (var at = 0; at < readings.Count; at++)
        {
            if (!SatThere(readings[at]))
            {
                return [.. readings.Where(SatThere)];
            }
        }

        return readings;
    }

    private static bool SatThere(AssessedReading reading) => !reading.IsNew && reading.EmptiedOn is null;

    /// <summary>What the readings say about its life, or null when none decided.</summary>
    internal ObservedLife? Life(Part part, BoardHistory board, IReadOnlyList<WorkMoment> work)
    {
        DateOnly? first = null,
            good = null,
            failed = null;
        var (outside, failedAt) = (0, 0);
        for (int at = 0, next; at < readings.Count; at = next)
        {
            next = NextLook(at);
            var moment = Moments.OfReading(readings[at]);
            // A part that was worked on is not the one that failed: its own life ended there.
            if (failed is not null && WasWorkedOn(work, failedAt, moment))
            {
                break;
            }

            var hasDecided = false;
            for (var i = at; i < next; i++)
            {
                if (Decides(readings[i]))
                {
                    hasDecided = true;
                    outside = After(outside, readings[i]);
                }
            }

            if (!hasDecided)
            {
                continue;
            }

            var day = readings[at].Visit.Date.Value;
            first ??= day;
            if (outside == 0)
            {
                // Nothing was done and it reads right again: the earlier reading was mistaken.
                (failed, good) = (null, day);
            }
            else if (failed is null)
            {
                (failed, failedAt) = (day, moment);
            }
        }

        if (first is not { } looked)
        {
            return null;
        }

        return new(fitted ?? PartStart.Find(part, board.Board, board.Design, looked), IsOriginal, looked, good, failed);
    }

    // Those of one moment are one look.
    private int NextLook(int at)
    {
        var next = at + 1;
        while (next < readings.Count && Moments.OfReading(readings[next]) == Moments.OfReading(readings[at]))
        {
            next++;
        }

        return next;
    }

    private static bool WasWorkedOn(IReadOnlyList<WorkMoment> work, int after, int before)
    {
        for (var i = 0; i < work.Count; i++)
        {
            if (work[i].Moment > after && work[i].Moment < before)
            {
                return true;
            }
        }

        return false;
    }

    // In order of time; those of one moment as they were written. Nearly all are so already.
    private static IReadOnlyList<AssessedReading> InOrder(IReadOnlyList<AssessedReading> readings)
    {
        for (var i = 1; i < readings.Count; i++)
        {
            if (Moments.OfReading(readings[i]) < Moments.OfReading(readings[i - 1]))
            {
                return [.. readings.OrderBy(Moments.OfReading)];
            }
        }

        return readings;
    }

    // In circuit a good part proves nothing and a bad one may: to count those would make every family look bad. A test of function decides
    // anywhere.
    private static bool Decides(AssessedReading reading) =>
        reading.Overall is VerdictOutcome.Inside or VerdictOutcome.Outside
        && (reading.Reading.Circuit is not { Value: Circuit.In } || reading.Reading.Result is not null);

    // One bit for each quantity that is outside as far as known.
    private static int After(int outside, AssessedReading reading)
    {
        if (reading.Reading.Result is { } result)
        {
            outside = result.Value == TestResult.Pass ? outside & ~TestBit : outside | TestBit;
        }

        if (reading.Reading.Circuit is { Value: Circuit.In })
        {
            return outside;
        }

        for (var at = 0; at < reading.Verdicts.Length; at++)
        {
            var verdict = reading.Verdicts[at];
            outside = verdict.Outcome switch
            {
                VerdictOutcome.Inside => outside & ~(1 << (int)verdict.Measured),
                VerdictOutcome.Outside => outside | (1 << (int)verdict.Measured),
                _ => outside,
            };
        }

        return outside;
    }

    private static int Changes(IReadOnlyList<WorkMoment> work, int moment)
    {
        var changes = 0;
        for (var at = 0; at < work.Count; at++)
        {
            changes += work[at].EndsWhatWasThere && work[at].Moment < moment ? 1 : 0;
        }

        return changes;
    }
}
