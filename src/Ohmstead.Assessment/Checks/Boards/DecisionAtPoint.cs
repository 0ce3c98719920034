using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Assessment.History;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A decision lets a test point be as it is, which changes nothing of what the point must show.</summary>
public sealed class DecisionAtPoint : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "decision-at-point",
            Severity.Warning,
            "a decision lets a test point be as it is, which changes nothing of what the point must show",
            CheckEffect.Told,
            "it decides nothing; what the point must show is an obligation of its own"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        foreach (var decision in board.Assessment.Visits.SelectMany(visit => visit.Decided))
        {
            if (decision is { Place: { } place } && decision.What.Value.LetsStay() && PointDecision.IsIdle(board.Assessment, place.Value))
            {
                yield return board.Finding(Description, place.Spot, PointDecision.Why(place.Value), PointDecision.NextStep(place.Value));
            }
        }
    }
}
