using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A board names a design that the collection does not have.</summary>
public sealed class DesignUnknown : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new("design-unknown", Severity.Error, "a board names a design that the collection does not have");

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        if (board.Board.Design is { } design && board.Assessment.Design is null)
        {
            var near = Nearest.To(design.Value, board.Workshop.Designs.Keys.Order(StringComparer.Ordinal));
            yield return board.Finding(
                Description,
                design.Spot,
                $"there is no design '{design.Value}'" + (near is null ? string.Empty : $", '{near}' is the nearest"),
                near is null ? $"write designs/{design.Value}.md, or list the parts on the board" : $"write design: {near}, or write designs/{design.Value}.md");
        }
    }
}
