using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A part is written as having no polarity although its kind has one.</summary>
public sealed class PolarityContradictsKind : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new("polarity-contradicts-kind", Severity.Error, "a part is written as having no polarity although its kind has one");

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        foreach (var part in board.Board.Parts)
        {
            if (PolarityRules.Contradiction(part.Ref.Value, part.Values) is var (polarity, message, next))
            {
                yield return board.Finding(Description, polarity.Spot, message, next);
            }
        }
    }
}
