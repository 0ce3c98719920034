using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A link in the story of a board leads where no page leads, so the page does without it.</summary>
public sealed class LinkDropped : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new("link-dropped", Severity.Warning, "a link in the story of a board leads where no page leads, so the page does without it");

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board) =>
        DroppedLinks.Find(board.Stories, Description, board.Board.Path, board.Board.Body, board.Board.BodyLine);
}
