using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Shelf;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Boards;

/// <summary>Gathers the history of one place: what sits there and which verdicts on it stand.</summary>
/// <param name="workshop">What boards refer to.</param>
/// <param name="timeline">What sat where and when.</param>
/// <param name="judge">Judges what was read of a lot in the drawer.</param>
/// <param name="readings">All readings of the board, oldest first.</param>
internal sealed class PlaceBuilder(Workshop workshop, Timeline timeline, ReadingJudge judge, ImmutableArray<AssessedReading> readings)
{
    private readonly Dictionary<string, List<AssessedReading>> byPlace = ByPlace(readings);

    // For the place that is looked at: one list, of which each place takes what stands.
    private readonly List<StandingVerdict> standing = new(2);

    internal PlaceHistory Build(Part part)
    {
        var reference = part.Ref.Value;
        var change = timeline.LastChange(reference);
        var piece = change?.PutIn;
        var lotName = piece?.Work.Lot?.Value;
        var lot = lotName is null ? null : workshop.Lots.GetValueOrDefault(lotName);
        ImmutableArray<AssessedReading> own = byPlace.TryGetValue(reference, out var ofPlace) ? [.. ofPlace] : [];
        ImmutableArray<AssessedReading> counting =
            change is { IsEmpty: true } || (own.Length == 0 && lotName is null) ? [] : Counting(reference, own, piece, lotName);

        // What failed once is no pass by being read again, where somebody's life hangs on it: it goes.
        var isFinal = PartKind.IsSafetyRelevant(part.Values) || (lot is not null && PartKind.IsSafetyRelevant(lot.Values));
        standing.Clear();
        AssessedReading? tested = null;
        foreach (var reading in counting)
        {
            for (var at = 0; at < reading.Verdicts.Length; at++)
            {
                Weigh(new(reading.Verdicts[at], reading), isFinal);
            }

            tested = reading.Reading.Result is null || (isFinal && tested is { Reading.Result.Value: TestResult.Fail }) ? tested : reading;
        }

        // What was decided about a part that has gone since says nothing about the one that sits there now.
        // A piece that was put back is the one that was decided about.
        var since =
            change is null ? Moment.AsItCame
            : change.IsEmpty ? change.At
            : piece?.At ?? Moment.AsItCame;
        var decided = timeline.DecisionOn(reference) is { } said && said.At > since ? said : ((Moment At, Decision Decision)?)null;
        ImmutableArray<StandingVerdict> stoodBy = [.. standing];
        return new PlaceHistory(part, lot, piece?.Work, change?.Visit, own, Verdicts(stoodBy), decided?.Decision)
        {
            StoodBy = stoodBy,
            Change = change,
            Counting = counting,
            IsEmpty = change is { IsEmpty: true },
            Tested = tested,
            DecidedAt = decided?.At ?? Moment.AsItCame,
            IsToBeReplaced = decided is { Decision.What.Value: DecisionKind.Replace } wish && wish.At.Visit > since.Visit,
        };
    }

    private static ImmutableArray<Verdict> Verdicts(ImmutableArray<StandingVerdict> stoodBy)
    {
        var verdicts = ImmutableArray.CreateBuilder<Verdict>(stoodBy.Length);
        for (var at = 0; at < stoodBy.Length; at++)
        {
            verdicts.Add(stoodBy[at].Verdict);
        }

        return verdicts.MoveToImmutable();
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
    private void Weigh(StandingVerdict later, bool isFinal)
    {
        var at = 0;
        while (at < standing.Count && standing[at].Verdict.Measured < later.Verdict.Measured)
        {
            at++;
        }

        if (at == standing.Count || standing[at].Verdict.Measured != later.Verdict.Measured)
        {
            standing.Insert(at, later);
        }
        else if (
            Outcomes.Outweighs(later.Verdict.Outcome, standing[at].Verdict.Outcome)
            && !(isFinal && standing[at].Verdict.Outcome == VerdictOutcome.Outside && later.Verdict.Outcome != VerdictOutcome.Outside)
        )
        {
            standing[at] = later;
        }
    }

    // A piece that went to the bin says nothing of the one that was fitted.
    private IEnumerable<AssessedReading> LotReadings(string lot) =>
        workshop.Scrapped.Contains(lot)
            ? LotPieces.Gather(workshop, judge, lot).StillThere
            : workshop.IncomingReadings[lot].Select(pair => judge.AssessIncoming(pair.Visit, pair.Reading));

    // Readings of what sits there now: of the piece before it went in (here, or its lot's in the drawer), and of the place while it sat
    // there.
    private ImmutableArray<AssessedReading> Counting(
        string reference,
        ImmutableArray<AssessedReading> own,
        PlaceChange? piece,
        string? lotName
    )
    {
        if (piece is null && AreAllOf(own, reference))
        {
            return own;
        }

        var counting = ImmutableArray.CreateBuilder<AssessedReading>(own.Length);
        if (piece is not null)
        {
            counting.AddRange(BeforeItWentIn(own, piece, lotName, timeline.ChangedBefore(reference, piece)));
        }

        foreach (var reading in own)
        {
            if (!reading.IsNew && Sat(reading, reference, piece))
            {
                counting.Add(reading);
            }
        }

        return counting.DrainToImmutable();
    }

    private bool AreAllOf(ImmutableArray<AssessedReading> own, string reference)
    {
        for (var at = 0; at < own.Length; at++)
        {
            if (own[at].IsNew || !Sat(own[at], reference, piece: null))
            {
                return false;
            }
        }

        return true;
    }

    private IEnumerable<AssessedReading> BeforeItWentIn(
        ImmutableArray<AssessedReading> own,
        PlaceChange piece,
        string? lotName,
        Moment after
    )
    {
        // A reading of an earlier part of the same lot is not of this one.
        var fresh = own.Where(reading =>
            reading.IsNew && reading.Reading.Lot?.Value == lotName && reading.At > after && reading.At.Visit <= piece.At.Visit
        );
        if (lotName is null || fresh.Any())
        {
            return fresh;
        }

        var ofLot = LotReadings(lotName).Where(reading => reading.Visit.Date.Value <= piece.Visit.Date.Value);
        return ofLot.Concat(
            readings.Where(reading => reading.Place is null && reading.Reading.Lot?.Value == lotName && reading.At.Visit <= piece.At.Visit)
        );
    }

    // A reading belongs to what sat there at that moment. One that stands behind the work of its visit and does not say whether it is of
    // the old part or of the new one counts for the old one; where it speaks against the part it counts for both.
    private bool Sat(AssessedReading reading, string reference, PlaceChange? piece) =>
        reading.EmptiedOn is null
        && (
            ReferenceEquals(timeline.PieceAt(reference, reading.VisitOrder, reading.Reading.State is { Value: ReadingState.AsLeft }), piece)
            || (
                reading.Reading.State is null
                && reading.Overall is VerdictOutcome.Outside or VerdictOutcome.Undecided
                && IsBehindTheWork(reading, reference, piece)
            )
        );

    private bool IsBehindTheWork(AssessedReading reading, string reference, PlaceChange? piece) =>
        ReferenceEquals(timeline.PieceAt(reference, reading.VisitOrder, afterWork: true), piece)
        && timeline.LastChange(reference) is { IsEmpty: false } last
        && last.At.Visit == reading.VisitOrder
        && last.At < reading.At;
}
