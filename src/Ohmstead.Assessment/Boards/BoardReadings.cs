using System.Collections.Immutable;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Boards;

/// <summary>The readings and proofs of one board, each with what it was taken of and what it says.</summary>
/// <param name="workshop">What boards refer to.</param>
/// <param name="judge">Holds values against their limits.</param>
/// <param name="timeline">What sat where and when.</param>
/// <param name="parts">The parts of the board and of its design.</param>
/// <param name="points">Their test points.</param>
/// <param name="bench">What was written at the bench, each correction in the place of what it corrects.</param>
internal sealed class BoardReadings(
    Workshop workshop,
    ReadingJudge judge,
    Timeline timeline,
    IReadOnlyDictionary<string, Part> parts,
    IReadOnlyDictionary<string, TestPoint> points,
    CorrectedBench bench
)
{
    /// <summary>All readings, oldest first.</summary>
    internal ImmutableArray<AssessedReading> Readings()
    {
        var visits = bench.Visits;
        var result = ImmutableArray.CreateBuilder<AssessedReading>(visits.Sum(visit => visit.Readings.Length));
        for (var order = 0; order < visits.Length; order++)
        {
            foreach (var reading in visits[order].Readings)
            {
                result.Add(
                    reading.InsteadOf is null
                        ? Judged(visits[order], order, reading)
                        : Judged(visits[order], order, reading) with
                        {
                            Corrects = Judged(visits[order], order, reading.InsteadOf),
                            Known = bench.KnownAt(reading),
                        }
                );
            }
        }

        return result.MoveToImmutable();
    }

    /// <summary>All proofs, oldest first.</summary>
    internal ImmutableArray<AssessedProof> Proofs() =>
        [
            .. bench.Visits.SelectMany(
                (visit, order) =>
                    visit.Proofs.Select(proof =>
                        proof.InsteadOf is null
                            ? Judged(visit, order, proof)
                            : Judged(visit, order, proof) with
                            {
                                Corrects = Judged(visit, order, proof.InsteadOf),
                            }
                    )
            ),
        ];

    private AssessedProof Judged(BenchVisit visit, int order, Proof proof)
    {
        var point = points.GetValueOrDefault(proof.Point.Value);
        return new(visit, order, proof, point, judge.AtPoint(visit, proof.Values, point, proof.Instrument, proof.Range));
    }

    // A reading that names a part is judged as the part's, wherever the probe was held.
    private AssessedReading Judged(BenchVisit visit, int order, Reading reading) =>
        reading is { Point: { } point, Part: null, Lot: null }
            ? AtPoint(visit, order, reading, points.GetValueOrDefault(point.Value))
            : OfPart(visit, order, reading);

    private AssessedReading AtPoint(BenchVisit visit, int order, Reading reading, TestPoint? point)
    {
        var values = point?.Measures switch
        {
            PointMeasure.Frequency when reading.Frequency is { } read => reading.Values.Add(ReadValue.From(Measured.Frequency, read)),
            PointMeasure.Temperature when reading.Temperature is { } read => reading.Values.Add(ReadValue.From(Measured.Temperature, read)),
            _ => reading.Values,
        };
        return new(visit, order, reading, null, null, judge.AtPoint(visit, values, point, reading.Instrument, reading.Range))
        {
            Point = point,
            At = reading.State is { Value: ReadingState.AsLeft }
                ? Timeline.AfterWorkOf(visit, order, reading.TakenAt)
                : Moment.At(order, reading.TakenAt),
        };
    }

    private AssessedReading OfPart(BenchVisit visit, int order, Reading reading)
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
            : isNew ? timeline.NextFitting(part.Ref.Value, Moment.At(order, visit.Spot))
            : timeline.PieceAt(part.Ref.Value, order, afterWork);
        var lotName = reading.Lot?.Value ?? (isNew ? null : piece?.Work.Lot?.Value);
        var lot = lotName is null ? null : workshop.Lots.GetValueOrDefault(lotName);
        var values = lotName is not null
            ? lot is null
                ? part?.Values
                : judge.InPlace(lot.Values, part?.Values)
            : piece?.Work.NewPart is { } newPart
                ? judge.InPlace(newPart, part?.Values)
                : part?.Values;
        var verdicts = values is null
            ? []
            : judge.Verdicts(
                visit,
                reading,
                values,
                part is null ? null : PartWords.ListedIn(part),
                isNew || (lotName is not null && part is null)
            );
        return new(visit, order, reading, part, lot, verdicts)
        {
            IsNew = isNew,
            At = afterWork ? Timeline.AfterWorkOf(visit, order, reading.TakenAt) : Moment.At(order, reading.TakenAt),
        };
    }
}
