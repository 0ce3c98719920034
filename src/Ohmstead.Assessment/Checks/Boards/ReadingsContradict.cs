using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>Two readings of one part contradict each other, and nothing was done between them.</summary>
public sealed class ReadingsContradict : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "readings-contradict",
            Severity.Warning,
            "two readings of one part contradict each other, and nothing was done between them",
            CheckEffect.SaidElsewhere,
            "the obligation to find out which of the two holds"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        foreach (var pair in board.Contradicting)
        {
            if (pair.Answer is null)
            {
                yield return board.Finding(Description, pair.Second, $"{pair.At}: {pair.Words}", ContradictingReadings.NextStep) with
                {
                    Related = [new RelatedPlace(pair.First.In(board.Board.Path), "the other reading")],
                };
            }
        }
    }
}
