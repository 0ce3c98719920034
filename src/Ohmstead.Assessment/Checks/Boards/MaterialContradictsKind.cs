using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A part is written as made of something that its kind is not made of.</summary>
public sealed class MaterialContradictsKind : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new("material-contradicts-kind", Severity.Error, "a part is written as made of something that its kind is not made of");

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        foreach (var part in board.Board.Parts)
        {
            if (MaterialRules.Contradiction(part.Ref.Value, part.Values) is var (material, message, next))
            {
                yield return board.Finding(Description, material.Spot, message, next);
            }
        }
    }
}
