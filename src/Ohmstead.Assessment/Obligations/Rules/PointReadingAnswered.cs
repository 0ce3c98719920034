using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Obligations.Basis;

namespace Ohmstead.Assessment.Obligations.Rules;

/// <summary>No failed reading at a test point stands: work alone answers nothing, since nobody looked whether it helped.</summary>
public sealed class PointReadingAnswered : IObligationRule
{
    /// <inheritdoc/>
    public string Kind => "point-reading-answered";

    /// <inheritdoc/>
    public string Asks => "no reading at a test point is outside its limits, or a later one there passed";

    /// <inheritdoc/>
    public IEnumerable<Obligation> Ask(BoardUnderObligation board)
    {
        foreach (var point in board.Board.PointsRead)
        {
            if (point.Fault is { } fault)
            {
                yield return Obligation.Open(
                    Kind,
                    BoardState.FaultStands,
                    point.Name,
                    fault,
                    "find the fault, mend it, and measure it again there",
                    $"find what is wrong at {point.Name}, mend it, and measure there again"
                );
            }
        }
    }
}
