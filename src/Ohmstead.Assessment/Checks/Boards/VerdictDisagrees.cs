using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A verdict written beside a reading is not the one that is computed.</summary>
public sealed class VerdictDisagrees : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "verdict-disagrees",
            Severity.Error,
            "a verdict written beside a reading is not the one that is computed",
            CheckEffect.HoldsBack,
            "the record says two things about one reading"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        foreach (var verdict in ComputedVerdict.AllWritten(board))
        {
            if (verdict.Written is not { } written || verdict.IsAsWritten)
            {
                continue;
            }

            yield return board.Finding(
                Description,
                written.Spot,
                $"the verdict is written as '{written.Text}' but computed as '{VerdictWords.Describe(verdict.Outcome)}': {Why(verdict)}",
                verdict.Word is null ? "leave the verdict out" : $"write verdict: {verdict.Word}, or mend the reading"
            );
        }
    }

    private static string Why(ComputedVerdict verdict) =>
        verdict.Verdicts.FirstOrDefault(value => value.Outcome == verdict.Outcome)?.Why ?? "nothing here can be judged";
}
