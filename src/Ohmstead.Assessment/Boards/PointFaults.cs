using Ohmstead.Assessment.Verdicts;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Boards;

/// <summary>
/// Test points whose reading failed. It stands until a later reading or proof of the same quantity at that point decides otherwise, or a test there is
/// passed: work alone answers nothing, since nobody looked whether it helped. A reading comes before the proof of its visit, and is no proof itself.
/// </summary>
internal static class PointFaults
{
    internal static IEnumerable<Reason> Of(BoardAssessment board)
    {
        var points = board.Readings.Where(reading => reading is { Reading: { Point: not null, Part: null, Lot: null } }).GroupBy(reading => reading.Reading.Point!.Value, StringComparer.Ordinal);
        foreach (var point in points)
        {
            var proofs = board.Proofs.Where(proof => proof.Proof.Point.Value == point.Key).ToArray();
            if (Standing(point, proofs) is { } failed)
            {
                yield return new(BoardState.FaultStands, point.Key, failed, "find the fault, mend it, and measure it again there");
            }
        }
    }

    // What a failed proof says is told as a proof.
    private static string? Standing(IEnumerable<AssessedReading> readings, AssessedProof[] proofs)
    {
        var failed = new Dictionary<Measured, Verdict>();
        string? test = null;
        var entries = readings.Select(reading => (reading.VisitOrder, IsProof: false, reading.Verdicts, reading.Reading.Result))
            .Concat(proofs.Select(proof => (proof.VisitOrder, IsProof: true, proof.Verdicts, proof.Proof.Result)))
            .OrderBy(entry => entry.VisitOrder).ThenBy(entry => entry.IsProof);
        foreach (var (_, isProof, verdicts, result) in entries)
        {
            if (result is { Value: "pass" })
            {
                failed.Clear();
            }

            test = result is null ? test : result.Value == "pass" || isProof ? null : "its test failed";
            foreach (var verdict in verdicts.Where(verdict => verdict.Outcome is VerdictOutcome.Inside or VerdictOutcome.Outside))
            {
                failed.Remove(verdict.Measured);
                if (verdict.Outcome == VerdictOutcome.Outside && !isProof)
                {
                    failed.Add(verdict.Measured, verdict);
                }
            }
        }

        return failed.Count > 0 ? failed.MinBy(pair => pair.Key).Value.Why : test;
    }
}
