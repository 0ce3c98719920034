using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A board names a design that the collection does not have.</summary>
public sealed class DesignUnknown : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new("design-unknown", Severity.Error, "a board names a design that the collection does not have");

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        if (board.Board.Design is { } design && board.Assessment.Design is null && !board.Workshop.UnreadDesigns.Contains(design.Value))
        {
            yield return new UnknownName("design", $"write designs/{design.Value}.md")
            {
                Otherwise = $"write designs/{design.Value}.md, or list the parts on the board",
            }.In(
                board,
                Description,
                design,
                $"there is no design '{design.Value}'",
                new(board.Workshop.Designs.Keys.Order(StringComparer.Ordinal))
            );
        }
    }
}
