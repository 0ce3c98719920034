using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Collection;

/// <summary>A lot names an order that is not in the list.</summary>
public sealed class StockOrderUnknown : ICollectionCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "stock-order-unknown",
            Severity.Warning,
            "a lot names an order that is not in the list",
            CheckEffect.Told,
            "no board is judged by the order that a lot came under"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CollectionUnderCheck collection)
    {
        if (collection.Workshop.StockFile is not { } stock)
        {
            yield break;
        }

        KnownNames? known = null;
        foreach (var lot in stock.Lots)
        {
            if (
                lot.Order is not { } order
                || collection.Workshop.Orders.ContainsKey(order.Value)
                || stock.UnreadOrders.MayHold(order.Value)
            )
            {
                continue;
            }

            yield return new UnknownName("order", $"add order {order.Value} under orders").In(
                stock.Path,
                Description,
                order,
                $"there is no order '{order.Value}'",
                known ??= new(collection.Workshop.Orders.Keys.Order(StringComparer.Ordinal))
            );
        }
    }
}
