using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Electronics;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Collection;

/// <summary>An order came, was lost or was cancelled before it was placed, or a lot came before its order was placed.</summary>
public sealed class StockDateOutOfOrder : ICollectionCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "stock-date-out-of-order",
            Severity.Warning,
            "an order came, was lost or was cancelled before it was placed, or a lot came before its order was placed",
            CheckEffect.Told,
            "no board is judged by the day of an order"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CollectionUnderCheck collection)
    {
        if (collection.Workshop.StockFile is not { } stock)
        {
            yield break;
        }

        foreach (var order in stock.Orders)
        {
            foreach (
                var (day, what) in new[]
                {
                    (order.PartReceived, "came in part"),
                    (order.Received, "came"),
                    (order.Lost, "was lost"),
                    (order.Cancelled, "was cancelled"),
                }
            )
            {
                if (day is not null && day.Value < order.Placed.Value)
                {
                    yield return Finding(stock, day.Spot, $"order {order.Id.Value} {what} on {day.Text}", order);
                }
            }
        }

        foreach (var lot in stock.Lots)
        {
            if (
                lot is { Received: { } received, Order: { } name }
                && collection.Workshop.Orders.TryGetValue(name.Value, out var order)
                && received.Value.Latest < order.Placed.Value
            )
            {
                yield return Finding(stock, received.Spot, $"lot {lot.Id.Value} came on {received.Text}", order);
            }
        }
    }

    private Finding Finding(StockFile stock, Records.Text.Spot spot, string what, Order order) =>
        new(
            Description.Name,
            Description.Severity,
            spot.In(stock.Path),
            $"{what}, before the order was placed on {IsoDate.Text(order.Placed.Value)}",
            "mend one of the two dates"
        )
        {
            Related = [new RelatedPlace(order.Placed.Spot.In(stock.Path), "the day it was placed")],
        };
}
