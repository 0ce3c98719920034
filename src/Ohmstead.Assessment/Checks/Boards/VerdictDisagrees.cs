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
        var written = board.Assessment.Readings.Where(reading => reading.EmptiedOn is null && !IsToldAsUnknown(board, reading)).Select(reading => (reading.Reading.Verdict, reading.Overall, reading.Verdicts))
            .Concat(board.Assessment.Proofs.Select(proof => (proof.Proof.Verdict, Overall: proof.Outcome, proof.Verdicts)));
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

    // That nothing can be judged has a cause of its own when the part is not in the list, or could not be read.
    private static bool IsToldAsUnknown(BoardUnderCheck board, AssessedReading reading) =>
        reading is { Reading.Part: { } part, Place: null } && (board.Assessment.Places.Count > 0 || board.MayBeUnreadPart(part.Value));
}
