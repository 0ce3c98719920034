using Ohmstead.Assessment.Verdicts;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Boards;

/// <summary>Gathers the history of one place: what sits there and which verdicts on it stand.</summary>
internal sealed class PlaceBuilder(Workshop workshop, Timeline timeline, Assessor assessor)
{
    internal PlaceHistory Build(Part part, IReadOnlyList<AssessedReading> readings)
    {
        var reference = part.Ref.Value;
        var change = timeline.LastChange(reference);
        var lotName = change?.Work.Lot?.Value;
        var lot = lotName is null ? null : workshop.Lots.GetValueOrDefault(lotName);
        var own = readings.Where(reading => reading.Place is not null && reading.Place.Ref.Value == reference).ToList();
        var latest = new Dictionary<Measured, Verdict>();
        bool? passed = null;
        foreach (var reading in Relevant(own, readings, change, lotName))
        {
            foreach (var verdict in reading.Verdicts)
            {
                if (!latest.TryGetValue(verdict.Measured, out var earlier) || Outcomes.Outweighs(verdict.Outcome, earlier.Outcome))
                {
                    latest[verdict.Measured] = verdict;
                }
            }

            passed = reading.Reading.Result is { } result ? result.Value == "pass" : passed;
        }

        // What was decided about a part that has gone since says nothing about the one that sits there now.
        var decided = timeline.DecisionOn(reference) is { } said && said.Order >= (change?.Order ?? -1) ? said : ((int Order, Decision Decision)?)null;
        return new PlaceHistory(part, lot, change is { Work.PutsAPartIn: true } ? change.Value.Work : null, change?.Visit, own, [.. latest.OrderBy(pair => pair.Key).Select(pair => pair.Value)], decided?.Decision, decided?.Order ?? -1)
        {
            IsEmpty = change is { Work.Did.Value: "removed" },
            PassedTest = passed,
            IsToBeReplaced = decided is { Decision.What.Value: "replace" } wish && wish.Order > (change?.Order ?? -1),
        };
    }

    // Readings of what sits there now: those of the lot before it was fitted (here or in the drawer), and those of the place since.
    private IEnumerable<AssessedReading> Relevant(
        List<AssessedReading> own, IReadOnlyList<AssessedReading> all, (int Order, BenchVisit Visit, WorkEntry Work)? change, string? lotName)
    {
        if (change is null)
        {
            return own.Where(reading => !reading.IsNew);
        }

        var ofLot = lotName is null ? [] : workshop.IncomingReadings[lotName].Where(pair => pair.Visit.Date.Value <= change.Value.Visit.Date.Value).Select(pair => assessor.AssessIncoming(pair.Visit, pair.Reading));
        var fresh = own.Where(reading => reading.IsNew && reading.Reading.Lot?.Value == lotName && reading.VisitOrder <= change.Value.Order);
        var lotAlone = all.Where(reading => reading.Place is null && lotName is not null && reading.Reading.Lot?.Value == lotName && reading.VisitOrder <= change.Value.Order);
        var since = own.Where(reading => !reading.IsNew && reading.EmptiedOn is null && (reading.VisitOrder > change.Value.Order || (reading.VisitOrder == change.Value.Order && reading.Reading.State is { Value: "as left" })));
        var before = fresh.Any() ? fresh : ofLot.Concat(lotAlone);
        return before.Concat(since);
    }
}
