using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Obligations.Basis;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Obligations.Rules;

/// <summary>Nothing that the work waits for is outstanding.</summary>
public sealed class WaitOver : IObligationRule
{
    /// <inheritdoc/>
    public string Kind => "wait-over";

    /// <inheritdoc/>
    public string Asks => "nothing that the work waits for is outstanding";

    /// <inheritdoc/>
    public IEnumerable<Obligation> Ask(BoardUnderObligation board)
    {
        foreach (var wait in board.Board.Board.Waiting)
        {
            if (wait.Until is not { } until)
            {
                yield return Obligation.Open(
                    Kind,
                    BoardState.Waiting,
                    null,
                    $"waits since {wait.Since.Text} for {wait.For.Value}"
                        + (wait.Blocks is { } blocks ? $", which blocks {blocks.Value}" : string.Empty),
                    NextStep(board, wait),
                    Act(board, wait)
                );
            }
            else if (!IsOver(wait, board.Today))
            {
                yield return Obligation.Open(
                    Kind,
                    BoardState.Waiting,
                    null,
                    $"the wait since {wait.Since.Text} for {wait.For.Value} is said to have ended on {until.Text}, which cannot be",
                    "mend the date, or take it out until the wait is over"
                );
            }
            else
            {
                yield return Obligation.Met(
                    Kind,
                    null,
                    $"waited for {wait.For.Value}",
                    new Evidence("that is over", until.Value, until.Spot, board.Board.Board.Path)
                );
            }
        }
    }

    // What came of a line is in the records; that it is what the work waited for, a person says.
    private static string NextStep(BoardUnderObligation board, Wait wait) =>
        wait.Order is not { } order ? "order it, or end the wait with a date"
        : wait.Line is not { } line ? $"see order {order.Value}"
        : board.Workshop.Line(order.Value, line.Value) is { State: OrderState.Received }
            ? $"line {line.Value} of order {order.Value} has come: end the wait with a date"
        : $"see line {line.Value} of order {order.Value}";

    private static string Act(BoardUnderObligation board, Wait wait)
    {
        var what = wait.For.Value;
        if (wait.Order is not { } order)
        {
            return $"order {what}, or end the wait with a date";
        }

        var (name, state) = Awaited(board, order, wait.Line);
        return state switch
        {
            null => $"see order {order.Value} for {what}",
            // What was lost or given up will not come, whatever the wait says.
            OrderState.Lost or OrderState.Cancelled =>
                $"order {what} again, or end the wait with a date: {order.Value} is {OrderStates.Words(state.Value)}",
            { } known => $"see {name}, {OrderStates.Words(known)}, for {what}",
        };
    }

    // The line where one is said that is there, else the order, and how it stands; not known of an order that is not there.
    private static (string Name, OrderState? State) Awaited(BoardUnderObligation board, Written<string> order, Written<string>? line) =>
        line is not null && board.Workshop.Line(order.Value, line.Value) is { } of ? ($"line {line.Value} of {order.Value}", of.State)
        : board.Workshop.Orders.GetValueOrDefault(order.Value) is { } placed ? (order.Value, OrderStates.For(placed))
        : (order.Value, null);

    /// <summary>Whether a wait has ended, on a day that can be.</summary>
    internal static bool IsOver(Wait wait, DateOnly today) =>
        wait.Until is { } until && until.Value >= wait.Since.Value && until.Value <= today;
}
