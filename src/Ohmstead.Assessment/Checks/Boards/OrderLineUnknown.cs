using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>Work waits for a line that its order does not have.</summary>
public sealed class OrderLineUnknown : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "order-line-unknown",
            Severity.Error,
            "work waits for a line that its order does not have",
            CheckEffect.HoldsBack,
            "what the work waits for is not known"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        foreach (var wait in board.Board.Waiting)
        {
            if (wait.Line is not { } line)
            {
                continue;
            }

            if (wait.Order is not { } name)
            {
                yield return board.Finding(
                    Description,
                    line.Spot,
                    $"the work waits for line '{line.Value}' of no order",
                    "write the order beside it, or take the line out"
                );
            }
            else if (
                board.Workshop.Orders.GetValueOrDefault(name.Value) is { } order
                && board.Workshop.Line(name.Value, line.Value) is null
                && !order.UnreadLines.MayHold(line.Value)
            )
            {
                yield return board.Finding(
                    Description,
                    line.Spot,
                    $"order {name.Value} has no line '{line.Value}'",
                    order.Lines.Length == 0
                        ? "take the line out, or write the lines of the order in stock.yaml"
                        : $"write one of its lines: {string.Join(", ", order.Lines.Select(one => one.Id.Value).Take(20))}"
                );
            }
        }
    }
}
