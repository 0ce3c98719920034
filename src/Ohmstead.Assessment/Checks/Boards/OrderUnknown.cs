using Ohmstead.Assessment.Checks.Basis;
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
        KnownNames? known = null;
        foreach (
            var order in board
                .Board.Waiting.Select(wait => wait.Order)
                .OfType<Written<string>>()
                .Where(order => !IsKnown(board, order.Value))
        )
        {
            yield return new UnknownName("order", $"add order {order.Value} to stock.yaml").In(
                board,
                Description,
                order,
                $"there is no order '{order.Value}'",
                known ??= new(board.Workshop.Orders.Keys.Order(StringComparer.Ordinal))
            );
        }
    }

    private static bool IsKnown(BoardUnderCheck board, string name) =>
        board.Workshop.Orders.ContainsKey(name) || (board.Workshop.StockFile?.UnreadOrders.MayHold(name) ?? false);
}
