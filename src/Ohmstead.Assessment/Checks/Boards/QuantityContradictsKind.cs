using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A part is marked in a quantity that its kind does not have.</summary>
public sealed class QuantityContradictsKind : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new("quantity-contradicts-kind", Severity.Error, "a part is marked in a quantity that its kind does not have");

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        foreach (var part in board.Board.Parts)
        {
            if (MarkedQuantityRules.Contradiction(part.Ref.Value, part.Values) is var (value, message, next))
            {
                yield return board.Finding(Description, value.Spot, message, next);
            }
        }
    }
}
