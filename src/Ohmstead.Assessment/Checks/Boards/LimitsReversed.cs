using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A lower limit is above its upper limit.</summary>
public sealed class LimitsReversed : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new("limits-reversed", Severity.Error, "a lower limit is above its upper limit");

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        foreach (
            var part in board.Board.Parts.Where(part =>
                part.Values is { Low: { } low, High: { } high } && low.Value.Value > high.Value.Value
            )
        )
        {
            yield return board.Finding(
                Description,
                part.Values.Low!.Spot,
                $"the lower limit {part.Values.Low.Text} of {part.Ref.Value} is above the upper limit {part.Values.High!.Text}",
                "exchange the two"
            );
        }

        foreach (
            var point in board.Board.Points.Where(point => point is { Low: { } low, High: { } high } && low.Value.Value > high.Value.Value)
        )
        {
            yield return board.Finding(
                Description,
                point.Low!.Spot,
                $"the lower limit {point.Low.Text} of {point.Name.Value} is above the upper limit {point.High!.Text}",
                "exchange the two"
            );
        }
    }
}
