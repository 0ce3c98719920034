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
            foreach (var (day, what) in DaysOf(order))
            {
                if (day is not null && day.Value < order.Placed.Value)
                {
                    yield return Finding(stock, day.Spot, $"{what} on {day.Text}", order);
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

    private static IEnumerable<(Written<DateOnly>? Day, string What)> DaysOf(Order order)
    {
        var name = $"order {order.Id.Value}";
        return
        [
            (order.PartReceived, name + " came in part"),
            (order.Received, name + " came"),
            (order.Lost, name + " was lost"),
            (order.Cancelled, name + " was cancelled"),
            .. order.Lines.SelectMany(line =>
                new[]
                {
                    (line.Lost, $"line {line.Id.Value} of {name} was lost"),
                    (line.Cancelled, $"line {line.Id.Value} of {name} was cancelled"),
                }
            ),
            .. order.Came.Select(came => ((Written<DateOnly>?)came.Date, $"line {came.Line.Value} of {name} came")),
        ];
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
