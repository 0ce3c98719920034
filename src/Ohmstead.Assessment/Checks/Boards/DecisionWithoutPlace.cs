using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A decision does not say which part or place it is about.</summary>
public sealed class DecisionWithoutPlace : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "decision-without-place",
            Severity.Error,
            "a decision does not say which part or place it is about",
            CheckEffect.HoldsBack,
            "what was decided about is not known"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        foreach (var decision in board.Assessment.Visits.SelectMany(visit => visit.Decided).Where(decision => decision.Place is null))
        {
            yield return board.Finding(
                Description,
                decision.Spot,
                "this decision does not say what it is about",
                "add part: C12, or at: J3"
            );
        }
    }
}
