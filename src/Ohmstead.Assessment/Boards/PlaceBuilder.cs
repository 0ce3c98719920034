using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Boards;

/// <summary>Gathers the history of one place: what sits there and which verdicts on it stand.</summary>
/// <param name="workshop">What boards refer to.</param>
/// <param name="timeline">What sat where and when.</param>
/// <param name="assessor">Judges what was read of a lot in the drawer.</param>
/// <param name="readings">All readings of the board, oldest first.</param>
internal sealed class PlaceBuilder(Workshop workshop, Timeline timeline, Assessor assessor, ImmutableArray<AssessedReading> readings)
{
    private readonly Dictionary<string, List<AssessedReading>> byPlace = ByPlace(readings);

    internal PlaceHistory Build(Part part)
    {
        var reference = part.Ref.Value;
        var change = timeline.LastChange(reference);
        var lotName = change?.Work.Lot?.Value;
        var lot = lotName is null ? null : workshop.Lots.GetValueOrDefault(lotName);
        ImmutableArray<AssessedReading> own = byPlace.TryGetValue(reference, out var ofPlace) ? [.. ofPlace] : [];
        var latest = new List<Verdict>(2);
        bool? passed = null;
        foreach (var reading in change is null ? own : Fitted(own, change.Value, lotName))
        {
            // What was read of a part that was never fitted says nothing about the original.
            if (change is null && reading.IsNew)
            {
                continue;
            }

            for (var at = 0; at < reading.Verdicts.Length; at++)
            {
                Weigh(latest, reading.Verdicts[at]);
            }

            passed = reading.Reading.Result is { } result ? result.Value == TestResult.Pass : passed;
        }

        // What was decided about a part that has gone since says nothing about the one that sits there now.
        var decided = timeline.DecisionOn(reference) is { } said && said.Order >= (change?.Order ?? -1) ? said : ((int Order, Decision Decision)?)null;
        return new PlaceHistory(part, lot, change is { Work.PutsAPartIn: true } ? change.Value.Work : null, change?.Visit, own, [.. latest], decided?.Decision, decided?.Order ?? -1)
        {
            IsEmpty = change is { Work.Did.Value: WorkKind.Removed },
            PassedTest = passed,
            IsToBeReplaced = decided is { Decision.What.Value: DecisionKind.Replace } wish && wish.Order > (change?.Order ?? -1),
        };
    }

    private static Dictionary<string, List<AssessedReading>> ByPlace(ImmutableArray<AssessedReading> readings)
    {
        var grouped = new Dictionary<string, List<AssessedReading>>(readings.Length, StringComparer.Ordinal);
        for (var at = 0; at < readings.Length; at++)
        {
            if (readings[at].Place is { Ref.Value: var reference })
            {
                ref var own = ref CollectionsMarshal.GetValueRefOrAddDefault(grouped, reference, out _);
                (own ??= []).Add(readings[at]);
            }
        }

        return grouped;
    }

    // Keeps for each quantity the verdict that stands, in order of the quantities: a handful at most.
    private static void Weigh(List<Verdict> latest, Verdict verdict)
    {
        var at = 0;
        while (at < latest.Count && latest[at].Measured < verdict.Measured)
        {
            at++;
        }

        if (at == latest.Count || latest[at].Measured != verdict.Measured)
        {
            latest.Insert(at, verdict);
        }
        else if (Outcomes.Outweighs(verdict.Outcome, latest[at].Outcome))
        {
            latest[at] = verdict;
        }
    }

    // Readings of what sits there now: those of the lot before it was fitted (here or in the drawer), and those of the place since.
    private IEnumerable<AssessedReading> Fitted(ImmutableArray<AssessedReading> own, (int Order, BenchVisit Visit, WorkEntry Work) change, string? lotName)
    {
        var ofLot = lotName is null ? [] : workshop.IncomingReadings[lotName].Where(pair => pair.Visit.Date.Value <= change.Visit.Date.Value).Select(pair => assessor.AssessIncoming(pair.Visit, pair.Reading));
        var fresh = own.Where(reading => reading.IsNew && reading.Reading.Lot?.Value == lotName && reading.VisitOrder <= change.Order);
        var lotAlone = readings.Where(reading => reading.Place is null && lotName is not null && reading.Reading.Lot?.Value == lotName && reading.VisitOrder <= change.Order);
        var since = own.Where(reading => !reading.IsNew && reading.EmptiedOn is null && (reading.VisitOrder > change.Order || (reading.VisitOrder == change.Order && reading.Reading.State is { Value: ReadingState.AsLeft })));
        var before = fresh.Any() ? fresh : ofLot.Concat(lotAlone);
        return before.Concat(since);
    }
}
