using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A verdict written beside a reading is not the one that is computed.</summary>
public sealed class VerdictDisagrees : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new("verdict-disagrees", Severity.Error, "a verdict written beside a reading is not the one that is computed");

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        // A limit or an accuracy that could not be read was told in its own file; what is computed without it is no reproach to a verdict.
        if (!board.HasAllThatItIsJudgedBy)
        {
            yield break;
        }

        // A part, lot or point that is not known is told by its own check; nothing can be computed for it.
        var written = board.Assessment.Readings.Where(reading => reading.EmptiedOn is null && !IsToldAsUnknown(board, reading)).Select(reading => (reading.Reading.Verdict, reading.Overall, reading.Verdicts))
            .Concat(board.Assessment.Proofs.Where(proof => proof.Point is not null || board.Assessment.Points.Count == 0).Select(proof => (proof.Proof.Verdict, Overall: proof.Outcome, proof.Verdicts)));
        foreach (var (verdict, overall, verdicts) in written)
        {
            if (verdict is null || VerdictWords.InRecord(overall) == verdict.Value)
            {
                continue;
            }

            var why = verdicts.FirstOrDefault(value => value.Outcome == overall)?.Why ?? "nothing here can be judged";
            var computed = VerdictWords.InRecord(overall);
            yield return board.Finding(
                Description,
                verdict.Spot,
                $"the verdict is written as '{verdict.Value}' but computed as '{VerdictWords.Of(overall)}': {why}",
                computed is null ? "leave the verdict out" : $"write verdict: {computed}, or mend the reading");
        }
    }

    // That nothing can be judged has a cause of its own when the lot or the part is not known, or could not be read.
    private static bool IsToldAsUnknown(BoardUnderCheck board, AssessedReading reading) =>
        (reading.Reading.Lot is { } lot && !board.Workshop.Lots.ContainsKey(lot.Value))
        || (reading is { Reading.Part: { } part, Place: null, Lot: null } && (board.Assessment.Places.Count > 0 || board.MayBeUnreadPart(part.Value)));
}
