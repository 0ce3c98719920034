using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>Work waits for an order that was never placed.</summary>
public sealed class OrderUnknown : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new("order-unknown", Severity.Error, "work waits for an order that was never placed");

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        foreach (var order in board.Board.Waiting.Select(wait => wait.Order).OfType<Written<string>>().Where(order => !board.Workshop.Orders.ContainsKey(order.Value)))
        {
            var near = Nearest.To(order.Value, board.Workshop.Orders.Keys.Order(StringComparer.Ordinal));
            yield return board.Finding(
                Description,
                order.Spot,
                $"there is no order '{order.Value}'" + (near is null ? string.Empty : $", '{near}' is the nearest"),
                near is null ? $"add order {order.Value} to stock.yaml" : $"write order: {near}, or add {order.Value} to stock.yaml");
        }
    }
}
