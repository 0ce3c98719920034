using System.Collections.Immutable;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.History;

/// <summary>
/// What the readings at a test point say that stands today. A failed one stands until a later reading or proof of the same quantity at that
/// point decides otherwise, or a test of function there is passed: work alone answers nothing, since nobody looked whether it helped. A
/// reading is no proof itself; what a proof says is told as a proof.
/// </summary>
/// <param name="Name">The point.</param>
/// <param name="Read">For each quantity the verdict that stands, where a reading gave it.</param>
/// <param name="HasFailedTest">True when the last test was a reading and failed.</param>
internal sealed record PointStanding(string Name, ImmutableArray<Verdict> Read, bool HasFailedTest)
{
    /// <summary>Why the point counts as failed, or null.</summary>
    internal string? Fault =>
        Read.FirstOrDefault(verdict => verdict.Outcome == VerdictOutcome.Outside)?.Why.Text ?? (HasFailedTest ? "its test failed" : null);

    internal static ImmutableArray<PointStanding> For(ImmutableArray<AssessedReading> readings, ImmutableArray<AssessedProof> proofs) =>
        readings.Any(static reading => reading.Reading is { Point: not null, Part: null, Lot: null })
            ? OfPoints(readings, proofs.ToLookup(static proof => proof.Proof.Point.Value, StringComparer.Ordinal))
            : [];

    private static ImmutableArray<PointStanding> OfPoints(
        ImmutableArray<AssessedReading> readings,
        ILookup<string, AssessedProof> proofs
    ) =>
        [
            .. readings
                .Where(reading => reading.Reading is { Point: not null, Part: null, Lot: null })
                .GroupBy(reading => reading.Reading.Point!.Value, StringComparer.Ordinal)
                .Select(point => For(point.Key, point, proofs[point.Key])),
        ];

    private static PointStanding For(string name, IEnumerable<AssessedReading> readings, IEnumerable<AssessedProof> proofs)
    {
        var standing = new SortedDictionary<Measured, (Verdict Verdict, bool IsProof)>();
        var hasFailedTest = false;
        var entries = readings
            .Select(reading => (reading.At, reading.Point, IsProof: false, reading.Verdicts, reading.Reading.Result))
            .Concat(proofs.Select(proof => (proof.At, proof.Point, IsProof: true, proof.Verdicts, proof.Proof.Result)))
            .OrderBy(entry => entry.At);
        foreach (var (_, point, isProof, verdicts, result) in entries)
        {
            // A word answers a test of function; a value is answered by a value.
            if (result is { Value: TestResult.Pass } && point is null or { Measures: PointMeasure.Result })
            {
                standing.Clear();
            }

            hasFailedTest = result is null ? hasFailedTest : result.Value == TestResult.Fail && !isProof;
            foreach (var verdict in verdicts)
            {
                if (
                    !standing.TryGetValue(verdict.Measured, out var earlier) || Outcomes.Outweighs(verdict.Outcome, earlier.Verdict.Outcome)
                )
                {
                    standing[verdict.Measured] = (verdict, isProof);
                }
            }
        }

        return new(name, [.. standing.Values.Where(entry => !entry.IsProof).Select(entry => entry.Verdict)], hasFailedTest);
    }
}
