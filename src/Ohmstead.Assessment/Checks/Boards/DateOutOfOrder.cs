using System.Globalization;
using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Electronics;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A visit to the bench stands after a later one, or lies before the board came; a wait ended before it began.</summary>
public sealed class DateOutOfOrder : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "date-out-of-order",
            Severity.Warning,
            "a visit to the bench stands after a later one, or lies before the board came; a wait ended before it began",
            CheckEffect.HoldsBack,
            "what came before what is in doubt, and with it whether the proof is later than the work"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board) => Visits(board).Concat(Waits(board));

    private IEnumerable<Finding> Waits(BoardUnderCheck board)
    {
        foreach (var wait in board.Board.Waiting)
        {
            if (wait.Until is { } until && until.Value < wait.Since.Value)
            {
                yield return board.Finding(
                    Description,
                    until.Spot,
                    $"this wait ended on {until.Text}, before it began on {wait.Since.Text}",
                    "mend one of the two dates"
                );
            }
        }
    }

    private IEnumerable<Finding> Visits(BoardUnderCheck board)
    {
        DateOnly? previous = null;
        var isBeforeArrivalTold = false;
        foreach (var visit in board.Board.Bench)
        {
            if (previous is { } before && visit.Date.Value < before)
            {
                yield return board.Finding(
                    Description,
                    visit.Date.Spot,
                    $"{visit.Date.Text} stands after the later visit of {IsoDate.Text(before)}",
                    "mend the date; new visits are appended at the end"
                );
            }
            else if (!isBeforeArrivalTold && board.Board.Arrived?.Date is { } arrived && visit.Date.Value < arrived.Value.Earliest)
            {
                isBeforeArrivalTold = true;
                yield return board.Finding(
                    Description,
                    visit.Date.Spot,
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"{visit.Date.Text} is before the board came on {arrived.Text}, on line {arrived.Spot.Line}"
                    ),
                    "mend whichever of the two dates is wrong"
                ) with
                {
                    Related = [new RelatedPlace(arrived.Spot.In(board.Board.Path), "the day it came")],
                };
            }

            // A date in the future is told by its own check; the visits after it stand where they should.
            previous = visit.Date.Value <= board.Today && (previous is null || visit.Date.Value > previous) ? visit.Date.Value : previous;
        }
    }
}
