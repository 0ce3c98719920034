using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A proof names a test point that neither the design nor the board has.</summary>
public sealed class PointUnknown : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new("point-unknown", Severity.Error, "a proof names a test point that neither the design nor the board has");

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        if (board.Assessment.Points.Count == 0)
        {
            yield break;
        }

        foreach (var proof in board.Assessment.Proofs.Where(proof => proof.Point is null))
        {
            var name = proof.Proof.Point;
            var near = Nearest.To(name.Value, board.Assessment.Points.Select(point => point.Name.Value));
            yield return board.Finding(
                Description,
                name.Spot,
                $"there is no test point '{name.Value}'" + (near is null ? string.Empty : $", '{near}' is the nearest"),
                near is null ? $"add {name.Value} to the points of the design or the board" : $"write point: {near}, or add {name.Value} to points");
        }
    }
}
