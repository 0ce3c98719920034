using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Electronics;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A date lies after the day of this run.</summary>
public sealed class DateInFuture : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "date-in-future",
            Severity.Error,
            "a date lies after the day of this run",
            CheckEffect.HoldsBack,
            "what has not happened proves nothing"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        var dates = board
            .Board.Bench.Select(visit => visit.Date)
            .Concat(board.Board.Waiting.Select(wait => wait.Since))
            .Concat(board.Board.Whereabouts.Select(step => step.Date))
            .Concat(board.Board.ToldBefore is { } told ? [told] : []);
        foreach (var date in dates.Where(date => date.Value > board.Today))
        {
            yield return board.Finding(
                Description,
                date.Spot,
                $"{date.Text} is in the future, today is {IsoDate.Text(board.Today)}",
                "mend the year, month or day"
            );
        }

        if (board.Board.Arrived?.Date is { } arrived && arrived.Value.Earliest > board.Today)
        {
            yield return board.Finding(Description, arrived.Spot, $"{arrived.Text} is in the future", "mend the year, month or day");
        }
    }
}
