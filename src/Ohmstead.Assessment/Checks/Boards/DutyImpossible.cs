using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A board runs more hours than a year has, or more at other temperatures than it runs.</summary>
public sealed class DutyImpossible : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new("duty-impossible", Severity.Warning, "a board runs more hours than a year has, or more at other temperatures than it runs");

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        if (DutyRules.Contradiction(board.Board.Duty) is var (hours, message, next))
        {
            yield return board.Finding(Description, hours.Spot, message, next);
        }
    }
}
