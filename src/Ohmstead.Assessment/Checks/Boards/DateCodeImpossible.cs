using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Assessment.Markings;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A date code of a part of this board has no reading that its dates allow.</summary>
public sealed class DateCodeImpossible : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new("date-code-impossible", Severity.Warning, "a date code of a part of this board has no reading that its dates allow");

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        DateWindow? window = null;
        foreach (var part in board.Board.Parts)
        {
            // A renewed part is told by its lot, not by the list.
            if (
                part.Values.DateCode is { } code
                && board.Assessment.Place(part.Ref.Value) is { FittedBy: null }
                && PartDates.Fault(code.Value, window ??= DateWindow.OfBoard(board.Assessment, board.Today)) is { } fault
            )
            {
                yield return board.Finding(Description, code.Spot, $"{part.Ref.Value}: {fault}", PartDates.NextStep);
            }
        }
    }
}
