using Ohmstead.Assessment.Verdicts;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

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
        var written = board.Assessment.Readings.Where(reading => reading.EmptiedOn is null && IsKnown(board, reading.Reading)).Select(reading => (reading.Reading.Verdict, reading.Overall, reading.Verdicts))
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

    private static bool IsKnown(BoardUnderCheck board, Reading reading) =>
        (reading.Part is not { } part || board.Assessment.Place(part.Value) is not null || reading.Lot is not null)
        && (reading.Lot is not { } lot || board.Workshop.Lots.ContainsKey(lot.Value));
}
