using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A correction corrects nothing, gives no reason, or leaves out what the wrong entry told.</summary>
public sealed class CorrectionDoubtful : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "correction-doubtful",
            Severity.Error,
            "a correction corrects nothing, gives no reason, or leaves out what was read",
            CheckEffect.HoldsBack,
            "which of two entries says what was so is not known"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board) =>
        board.Assessment.Doubtful.Select(one => board.Finding(Description, one.Spot, one.Why, one.NextStep));
}
