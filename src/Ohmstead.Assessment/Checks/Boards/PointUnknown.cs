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

        foreach (var name in board.Assessment.Proofs.Where(proof => proof.Point is null).Select(proof => proof.Proof.Point).Where(name => !board.MayBeUnreadPoint(name.Value)))
        {
            yield return new UnknownName("point", $"add {name.Value} to points") { Otherwise = $"add {name.Value} to the points of the design or the board" }
                .In(board, Description, name, $"there is no test point '{name.Value}'", board.Assessment.Points.Select(point => point.Name.Value));
        }
    }
}
