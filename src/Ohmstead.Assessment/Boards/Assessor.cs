using System.Collections.Immutable;
using Ohmstead.Assessment.Fit;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Life;
using Ohmstead.Assessment.Limits;
using Ohmstead.Assessment.Shelf;
using Ohmstead.Assessment.Shelf.Ages;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Electronics.Uncertainty;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Boards;

/// <summary>Computes everything about a board from its record and the workshop's. What it says of a board depends on no other.</summary>
/// <remarks>It keeps what is the same for many boards in mind, so an instance is used by one thread at a time; each worker has its
/// own.</remarks>
/// <param name="workshop">What boards refer to.</param>
public sealed class Assessor(Workshop workshop)
{
    // Most readings of a visit are taken in one and the same way.
    private ReadingConditions? lastHow;

    // And with one instrument, whose calibration is looked up once for all of them.
    private (Instrument? Instrument, DateOnly Day, DateOnly? Since) lastLapse;

    // The same marks come on all boards.
    private readonly LimitMemo limitsKnown = new();

    private readonly FittedValues fitted = new();
    private readonly LotDatesMemo lotDates = new();

    // Lots are few, and their parts go to many boards.
    private readonly Dictionary<string, LotPieces> pieces = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string?> doubts = new(StringComparer.Ordinal);
    private readonly Dictionary<string, IReadOnlyList<PassedPiece>> passed = new(StringComparer.Ordinal);

    // A lot is measured once when it comes, and its parts go to many boards.
    private readonly Dictionary<Reading, AssessedReading> incoming = new(ReferenceEqualityComparer.Instance);

    /// <summary>Assesses one board.</summary>
    public BoardAssessment Assess(BoardFile board)
    {
        var design = board.Design is { } name ? workshop.Designs.GetValueOrDefault(name.Value) : null;
        var parts = PartsList.Merge(board.Parts, design?.Parts ?? []);
        var points = PartsList.Merge(board.Points, design?.Points ?? []);
        var visits = InOrder(board.Bench);
        var timeline = new Timeline(visits, parts);
        var readings = ReadingsOf(visits, timeline, parts, points);
        var proofs = ProofsOf(visits, points);
        var pointsRead = PointStanding.Of(readings, proofs);
        var builder = new PlaceBuilder(workshop, timeline, this, readings);
        ImmutableArray<PlaceHistory> places = [.. parts.Values.Select(builder.Build)];
        var hazards = BoardHazards.Of(board, design, visits, timeline, places);
        var found = AnsweredFinding.Of(visits, timeline, parts);
        ImmutableArray<Wait> waits = [.. board.Waiting.Where(wait => wait.Until is null)];
        var (claims, sitting) = new BoardClaims(board, timeline, readings, workshop).Of(FittedPiece.On(places, lotDates.Of));
        var assessment = new BoardAssessment(board, design, visits, places, readings, [.. points.Values], proofs, found, hazards, waits)
        {
            LastWork = timeline.LastWork.Visit < 0 ? null : visits[timeline.LastWork.Visit].Date.Value,
            LastWorkAt = timeline.LastWork,
            PointsRead = pointsRead,
            Claims = claims,
            Fitted = Doubted(Shared(sitting, PieceShares.Of(claims, PassedPieces))),
            LookAgain = LookAgainAfter(visits),
            Lives = PartLife.Of(places, BoardDuty.Of(board, workshop.Collection), board.Made ?? design?.Made),
        };
        // What follows from the rest is worked out here, once for checks, pages and what is kept of the board.
        return assessment with { Replacements = Replacement.Of(assessment, workshop), Drifts = [.. BoardDrifts.Of(assessment)] };
    }

    // Most records are written day after day, and then nothing moves.
    private static ImmutableArray<BenchVisit> InOrder(ImmutableArray<BenchVisit> bench)
    {
        for (var at = 1; at < bench.Length; at++)
        {
            if (bench[at].Date.Value < bench[at - 1].Date.Value)
            {
                return [.. bench.OrderBy(visit => visit.Date.Value)];
            }
        }

        return bench;
    }

    /// <summary>The pieces that sit on a board, each with what it gets of its lot.</summary>
    internal static ImmutableArray<FittedPiece> Shared(ImmutableArray<FittedPiece> all, PieceShares shares) =>
        shares.IsEmpty ? all : [.. all.Select(piece => piece.Claim is { } claim ? piece with { Share = shares.Of(claim) } : piece)];

    /// <summary>
    /// The pieces of a lot that were read in the drawer after it came, passed and are not in the bin, in order of the day on which they
    /// passed.
    /// </summary>
    internal IReadOnlyList<PassedPiece> PassedPieces(string lot)
    {
        if (!passed.TryGetValue(lot, out var known))
        {
            passed[lot] = known = workshop.Lots.TryGetValue(lot, out var of) ? [.. Passed(of).OrderBy(one => one.By.Visit.Date.Value)] : [];
        }

        return known;
    }

    private IEnumerable<PassedPiece> Passed(Lot lot)
    {
        var (came, kind) = (lot.Received?.Value.Earliest ?? DateOnly.MinValue, lot.Values.Kind.Value);
        bool IsPass(AssessedReading reading) => reading.Visit.Date.Value >= came && FittedPiece.Passes(reading, kind);
        foreach (var piece in PiecesOf(lot.Id.Value).Pieces)
        {
            if (!piece.IsScrapped && piece.Readings.FirstOrDefault(IsPass) is { } by)
            {
                yield return new(by.Reading.Piece?.Value, by);
            }
        }
    }

    private ImmutableArray<FittedPiece> Doubted(ImmutableArray<FittedPiece> all) =>
        all.Any(piece => piece.Work.Lot is { } lot && DoubtOf(lot.Value) is not null)
            ? [.. all.Select(piece => piece with { LotDoubt = piece.Work.Lot is { } lot ? DoubtOf(lot.Value) : null })]
            : all;

    private string? DoubtOf(string lot)
    {
        if (!doubts.TryGetValue(lot, out var doubt))
        {
            doubts[lot] = doubt = PiecesOf(lot) is { IsDoubted: true } doubted ? doubted.DoubtInWords : null;
        }

        return doubt;
    }

    private LotPieces PiecesOf(string lot)
    {
        if (!pieces.TryGetValue(lot, out var known))
        {
            pieces[lot] = known = LotPieces.Of(workshop, this, lot);
        }

        return known;
    }

    /// <summary>The verdicts on a reading of a lot that lies in the drawer.</summary>
    public AssessedReading AssessIncoming(BenchVisit visit, Reading reading)
    {
        if (!incoming.TryGetValue(reading, out var assessed))
        {
            incoming[reading] = assessed = Incoming(visit, reading);
        }

        return assessed;
    }

    private AssessedReading Incoming(BenchVisit visit, Reading reading)
    {
        var lot = reading.Lot is { } name ? workshop.Lots.GetValueOrDefault(name.Value) : null;
        return new(visit, -1, reading, null, lot, lot is null ? [] : Verdicts(visit, reading, lot.Values, null, isNew: true));
    }

    internal ImmutableArray<Verdict> Verdicts(BenchVisit visit, Reading reading, PartValues values, string? place, bool isNew)
    {
        var how = lastHow = ReadingConditions.Of(
            isNew,
            reading,
            reading.Temperature ?? visit.RoomTemperature,
            IsJunction(values) ? reading.Values.FirstOrDefault(value => value.Measured == Measured.Current)?.Exact : null,
            lastHow
        );
        var instrument = InstrumentOf(visit, reading.Instrument);

        // What has not been fitted yet lies on the bench where nothing else is written.
        var circuit = reading.Circuit?.Value ?? (isNew ? Circuit.Out : null);
        var read = ValuesOf(reading, values);
        var verdicts = ImmutableArray.CreateBuilder<Verdict>(read.Length);
        for (var at = 0; at < read.Length; at++)
        {
            var value = read[at];
            var limits = limitsKnown.For(values, place, value.Measured, how);
            var verdict = Judge.Decide(value, limits, circuit, MeterOf(instrument, value, visit), RuleFor(values), values);
            verdicts.Add(
                verdict.Outcome == VerdictOutcome.NoLimit && UsualWords.Of(values) is { } usual
                    ? verdict with
                    {
                        Remarks = [.. verdict.Remarks, usual],
                    }
                    : verdict
            );
        }

        return verdicts.MoveToImmutable();
    }

    // A part that people rely on not to be hurt is not kept on a doubt, however rare it is.
    private DecisionRule RuleFor(PartValues values) =>
        workshop.Rule.GuardShare < 0m && PartKind.IsSafetyRelevant(values) ? DecisionRule.Guarded : workshop.Rule;

    // The frequency of a crystal is what was measured; of any other part it is how it was measured.
    private static ImmutableArray<ReadValue> ValuesOf(Reading reading, PartValues values) =>
        reading.Frequency is { } frequency && values.Kind.Value.Family == PartFamily.Crystal
            ? [.. reading.Values, ReadValue.Of(Measured.Frequency, frequency)]
        : reading.Values.Length > 1 && IsJunction(values) ? [.. reading.Values.Where(value => value.Measured != Measured.Current)]
        : reading.Values;

    // The current through a junction is how its voltage was measured.
    private static bool IsJunction(PartValues values) => values.Kind.Value.Junction is Junction.Rectifying or Junction.Breakdown;

    private MeterReach MeterOf(Instrument? instrument, ReadValue value, BenchVisit visit) =>
        instrument is null ? default : MeterReach.Of(instrument, value.Measured, value.Value.Value, LapsedOn(instrument, visit.Date.Value));

    private DateOnly? LapsedOn(Instrument instrument, DateOnly day)
    {
        if (!ReferenceEquals(lastLapse.Instrument, instrument) || lastLapse.Day != day)
        {
            lastLapse = (instrument, day, MeterDoubt.LongLapsed(instrument, day));
        }

        return lastLapse.Since;
    }

    private ImmutableArray<AssessedReading> ReadingsOf(
        ImmutableArray<BenchVisit> visits,
        Timeline timeline,
        IReadOnlyDictionary<string, Part> parts,
        IReadOnlyDictionary<string, TestPoint> points
    )
    {
        var result = ImmutableArray.CreateBuilder<AssessedReading>(visits.Sum(visit => visit.Readings.Length));
        for (var order = 0; order < visits.Length; order++)
        {
            foreach (var reading in visits[order].Readings)
            {
                // A reading that names a part is judged as the part's, wherever the probe was held.
                result.Add(
                    reading is { Point: { } point, Part: null, Lot: null }
                        ? AssessAtPoint(visits[order], order, reading, points.GetValueOrDefault(point.Value))
                        : AssessReading(visits[order], order, reading, timeline, parts)
                );
            }
        }

        return result.MoveToImmutable();
    }

    private AssessedReading AssessAtPoint(BenchVisit visit, int order, Reading reading, TestPoint? point)
    {
        var instrument = InstrumentOf(visit, reading.Instrument);
        var values = point?.Measures switch
        {
            PointMeasure.Frequency when reading.Frequency is { } read => reading.Values.Append(ReadValue.Of(Measured.Frequency, read)),
            PointMeasure.Temperature when reading.Temperature is { } read => reading.Values.Append(
                ReadValue.Of(Measured.Temperature, read)
            ),
            _ => reading.Values,
        };
        return new(
            visit,
            order,
            reading,
            null,
            null,
            PointJudge.Decide(values, point, value => MeterOf(instrument, value, visit), workshop.Rule)
        )
        {
            Point = point,
            At = reading.State is { Value: ReadingState.AsLeft }
                ? Timeline.AfterWorkOf(visit, order, reading.Spot)
                : Moment.Of(order, reading.Spot),
        };
    }

    private AssessedReading AssessReading(
        BenchVisit visit,
        int order,
        Reading reading,
        Timeline timeline,
        IReadOnlyDictionary<string, Part> parts
    )
    {
        var part = reading.Part is { } reference ? parts.GetValueOrDefault(reference.Value) : null;
        var afterWork = reading.State is { Value: ReadingState.AsLeft };
        // A reading that names another lot than the one that sits there is of a part that does not sit there, whatever it says or leaves
        // out.
        var isNew =
            reading.State is { Value: ReadingState.New }
            || (
                part is not null && reading.Lot is { } of && timeline.PieceAt(part.Ref.Value, order, afterWork)?.Work.Lot?.Value != of.Value
            );
        if (part is not null && reading.Lot is null && !isNew && timeline.EmptiedAt(part.Ref.Value, order, afterWork) is { } emptied)
        {
            return new(visit, order, reading, part, null, []) { EmptiedOn = emptied };
        }

        // A new part that came from no lot is what the work that put it in says.
        var piece =
            part is null ? null
            : isNew ? timeline.NextFitting(part.Ref.Value, Moment.Of(order, visit.Spot))
            : timeline.PieceAt(part.Ref.Value, order, afterWork);
        var lotName = reading.Lot?.Value ?? (isNew ? null : piece?.Work.Lot?.Value);
        var lot = lotName is null ? null : workshop.Lots.GetValueOrDefault(lotName);
        var values = lotName is not null
            ? lot is null
                ? part?.Values
                : fitted.Of(lot.Values, part?.Values)
            : piece?.Work.NewPart is { } newPart
                ? fitted.Of(newPart, part?.Values)
                : part?.Values;
        var verdicts = values is null
            ? []
            : Verdicts(visit, reading, values, part is null ? null : PlaceOrigin(part), isNew || (lotName is not null && part is null));
        return new(visit, order, reading, part, lot, verdicts)
        {
            IsNew = isNew,
            At = afterWork ? Timeline.AfterWorkOf(visit, order, reading.Spot) : Moment.Of(order, reading.Spot),
        };
    }

    internal static string PlaceOrigin(Part part) => part.FromDesign is null ? "this board's record" : "the design";

    private ImmutableArray<AssessedProof> ProofsOf(ImmutableArray<BenchVisit> visits, IReadOnlyDictionary<string, TestPoint> points) =>
        [
            .. visits.SelectMany(
                (visit, order) =>
                    visit.Proofs.Select(proof =>
                    {
                        var (point, instrument) = (points.GetValueOrDefault(proof.Point.Value), InstrumentOf(visit, proof.Instrument));
                        return new AssessedProof(
                            visit,
                            order,
                            proof,
                            point,
                            PointJudge.Decide(proof.Values, point, value => MeterOf(instrument, value, visit), workshop.Rule)
                        );
                    })
            ),
        ];

    private Instrument? InstrumentOf(BenchVisit visit, Written<string>? own) =>
        (own ?? visit.Instrument) is { } name ? workshop.Instruments.GetValueOrDefault(name.Value) : null;

    private DateOnly? LookAgainAfter(ImmutableArray<BenchVisit> visits) =>
        visits.Length > 0 && workshop.Collection.LookEvery is { } every
            ? CalendarSpan.After(visits[^1].Date.Value, every.Value.Value)
            : null;
}
