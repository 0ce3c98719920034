using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A point of a board names a reservoir or an input that is not there.</summary>
public sealed class PointLinkUnknown : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new("point-link-unknown", Severity.Error, "a point of a board names a reservoir or an input that is not there");

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        if (!board.Board.Points.Any(static point => point.Reservoir is not null || point.Input is not null))
        {
            yield break;
        }

        var parts = new KnownNames(board.Assessment.Places.Select(place => place.Part.Ref.Value));
        var points = new KnownNames(board.Assessment.Points.Select(point => point.Name.Value));
        foreach (
            var (name, message, next) in PointLinkRules
                .Unknown(board.Board.Points, parts, points)
                .Where(told => !board.MayBeUnreadPart(told.Name.Value) && !board.MayBeUnreadPoint(told.Name.Value))
        )
        {
            yield return board.Finding(Description, name.Spot, message, next);
        }
    }
}
