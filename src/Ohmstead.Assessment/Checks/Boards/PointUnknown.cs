using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A reading or proof names a test point that neither the design nor the board has.</summary>
public sealed class PointUnknown : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new("point-unknown", Severity.Error, "a reading or proof names a test point that neither the design nor the board has");

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        if (board.Assessment.Points.Length == 0)
        {
            yield break;
        }

        var known = board.Assessment.Points.Select(point => point.Name.Value).ToHashSet(StringComparer.Ordinal);
        var named = board
            .Assessment.Readings.Select(reading => reading.Reading.Point)
            .OfType<Written<string>>()
            .Concat(board.Assessment.Proofs.Select(proof => proof.Proof.Point));
        KnownNames? all = null;
        foreach (var name in named.Where(name => !known.Contains(name.Value) && !board.MayBeUnreadPoint(name.Value)))
        {
            yield return new UnknownName("point", $"add {name.Value} to points")
            {
                Otherwise = $"add {name.Value} to the points of the design or the board",
            }.In(
                board,
                Description,
                name,
                $"there is no test point '{name.Value}'",
                all ??= new(board.Assessment.Points.Select(point => point.Name.Value))
            );
        }
    }
}
