using System.Collections.Immutable;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Boards;

/// <summary>A new piece that was put into a place and sits there.</summary>
/// <param name="Place">The place.</param>
/// <param name="Work">The work that put it in.</param>
/// <param name="Visit">The visit of that work.</param>
public sealed record FittedPiece(PlaceHistory Place, WorkEntry Work, BenchVisit Visit)
{
    /// <summary>When it was put in.</summary>
    internal Moment At { get; init; }

    /// <summary>What it is, by its lot or by the work; null when the record does not say.</summary>
    public PartValues? Values => Place.Sitting?.Values ?? Work.NewPart;

    /// <summary>The reading that measured this very piece and passed it, before it was fitted or since; null when there is none.</summary>
    public AssessedReading? MeasuredBy { get; private init; }

    /// <summary>The place for which a piece of the same name of the same lot was read already, so that it cannot be this one; null when there is none.</summary>
    public string? PieceIsAt { get; private init; }

    /// <summary>Why its lot is doubted as a whole, in words; null when it is not.</summary>
    public string? LotDoubt { get; private init; }

    /// <summary>True when a bench measures parts of its kind one by one; others are proved by the board that works with them.</summary>
    public bool IsMeasured { get; private init; }

    /// <summary>
    /// The pieces that sit on a board, in order of the parts list. A reading of a lot is of one piece: it serves one fitting of that lot, the earliest that has no
    /// reading of its own.
    /// </summary>
    /// <param name="places">The places of the board.</param>
    /// <param name="timeline">What sat where and when.</param>
    /// <param name="doubtOfLot">Why a lot is doubted as a whole, or null.</param>
    internal static ImmutableArray<FittedPiece> On(ImmutableArray<PlaceHistory> places, Timeline timeline, Func<string, string?> doubtOfLot)
    {
        var pieces = ImmutableArray.CreateBuilder<FittedPiece>();
        foreach (var place in places)
        {
            if (place is { FittedBy: { } work, IsEmpty: false, Change.PutIn: { } putIn })
            {
                pieces.Add(new(place, work, putIn.Visit) { At = putIn.At });
            }
        }

        HashSet<AssessedReading>? used = null;
        Dictionary<(string Lot, string Piece), string>? named = null;
        foreach (var piece in pieces.ToArray().OrderBy(piece => piece.At))
        {
            var at = pieces.IndexOf(piece);
            var kind = (piece.Values ?? piece.Place.Part.Values).Kind.Value;
            var by = Own(piece, kind) ?? OfLot(piece, kind, timeline, used ??= new(ReferenceEqualityComparer.Instance));
            var isAt = by is { Reading: { Piece: { } name, Lot: { } of } } && !(named ??= []).TryAdd((of.Value, name.Value), piece.Place.Part.Ref.Value) ? named[(of.Value, name.Value)] : null;
            pieces[at] = piece with
            {
                IsMeasured = kind.ProvedBy.Length > 0,
                MeasuredBy = isAt is null ? by : null,
                PieceIsAt = isAt,
                LotDoubt = piece.Work.Lot is { } lot ? doubtOfLot(lot.Value) : null,
            };
        }

        return pieces.DrainToImmutable();
    }

    // Read in this place, as a new part before it went in or as what sits there since.
    private static AssessedReading? Own(FittedPiece piece, PartKind kind) => piece.Place.Counting.LastOrDefault(reading => reading.Place is not null && Passes(reading, kind));

    // Where a piece of the lot was bad and nothing says which went in, what was read of another says nothing of this one; nor does what was read before it came.
    private static AssessedReading? OfLot(FittedPiece piece, PartKind kind, Timeline timeline, HashSet<AssessedReading> used)
    {
        if (piece.Work.Lot is null || piece.Place.Counting.Any(reading => reading.Place is null && reading.Overall == VerdictOutcome.Outside))
        {
            return null;
        }

        // A piece of the lot that has gone again had one of the readings, where it had none of its own.
        var gone = timeline.FittedBefore(piece.Place.Part.Ref.Value, piece.Work.Lot!.Value, piece.At)
            .Count(earlier => !piece.Place.Readings.Any(reading => reading.IsNew && reading.Reading.Lot?.Value == piece.Work.Lot.Value && reading.At < earlier.At));
        var came = piece.Place.Sitting?.Received?.Value.Earliest ?? DateOnly.MinValue;
        foreach (var reading in piece.Place.Counting)
        {
            if (reading.Place is null && reading.Visit.Date.Value >= came && Passes(reading, kind) && gone-- <= 0 && used.Add(reading))
            {
                return reading;
            }
        }

        return null;
    }

    private static bool Passes(AssessedReading reading, PartKind kind)
    {
        return kind.ProvedBy.Length == 0 ? reading.Overall == VerdictOutcome.Inside
            : HasInside(reading, kind.ProvedBy) || (kind.IsTestedByUse && reading.Reading.Result is { Value: TestResult.Pass });
    }

    private static bool HasInside(AssessedReading reading, ImmutableArray<Measured> quantities)
    {
        foreach (var verdict in reading.Verdicts)
        {
            if (verdict.Outcome == VerdictOutcome.Inside && quantities.Contains(verdict.Measured))
            {
                return true;
            }
        }

        return false;
    }
}
