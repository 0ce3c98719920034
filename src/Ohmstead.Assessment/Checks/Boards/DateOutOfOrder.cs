using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A visit to the bench stands after a later one, or lies before the board came.</summary>
public sealed class DateOutOfOrder : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new("date-out-of-order", Severity.Warning, "a visit to the bench stands after a later one, or lies before the board came");

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        DateOnly? previous = null;
        foreach (var visit in board.Board.Bench)
        {
            if (visit.Date.Value < previous)
            {
                yield return board.Finding(Description, visit.Date.Spot, $"{visit.Date.Text} stands after a later visit", "mend the date; new visits are appended at the end");
            }
            else if (board.Board.Arrived?.Date is { } arrived && visit.Date.Value < arrived.Value.Earliest)
            {
                yield return board.Finding(Description, visit.Date.Spot, $"{visit.Date.Text} is before the board came on {arrived.Text}", "mend one of the two dates");
            }

            previous = visit.Date.Value > previous || previous is null ? visit.Date.Value : previous;
        }
    }
}
