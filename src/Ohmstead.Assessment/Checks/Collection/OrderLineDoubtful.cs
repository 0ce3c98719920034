using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Collection;

/// <summary>A line of an order asks for nothing, or a price of an order or a lot says no currency.</summary>
public sealed class OrderLineDoubtful : ICollectionCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "order-line-doubtful",
            Severity.Warning,
            "a line of an order asks for nothing, or a price says no currency",
            CheckEffect.Told,
            "no board is judged by what was ordered or what it cost"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CollectionUnderCheck collection)
    {
        if (collection.Workshop.StockFile is not { } stock)
        {
            yield break;
        }

        foreach (var (order, line) in stock.Orders.SelectMany(order => order.Lines.Select(line => (order, line))))
        {
            if (line.HasLooseValues || (line.Values is null && line.What is null))
            {
                yield return new(
                    Description.Name,
                    Description.Severity,
                    line.Spot.In(stock.Path),
                    $"line {line.Id.Value} of order {order.Id.Value} "
                        + (line.HasLooseValues ? "gives values and no kind of part that they are of" : "says neither kind nor what"),
                    "add the kind, such as kind: aluminium electrolytic, or what it is in words: what: pen motor belt"
                );
            }

            if (line.Quantity.Value == 0)
            {
                yield return new(
                    Description.Name,
                    Description.Severity,
                    line.Quantity.Spot.In(stock.Path),
                    $"line {line.Id.Value} of order {order.Id.Value} asks for none",
                    "write how many were ordered, or end the line with cancelled: and a day"
                );
            }
        }

        var prices = stock.Orders.SelectMany(order => order.Lines).Select(line => line.Price).Concat(stock.Lots.Select(lot => lot.Price));
        foreach (var price in prices.OfType<Written<string>>().Where(price => !SaysCurrency(price.Value)))
        {
            yield return new(
                Description.Name,
                Description.Severity,
                price.Spot.In(stock.Path),
                $"'{Short(price.Value)}' says no currency",
                $"write it with the currency: price: {Short(price.Value)} EUR"
            );
        }
    }

    // 0.42 EUR, €0.42, 42 p: anything beside the figures that is a letter or a sign for a currency.
    private static bool SaysCurrency(string price) =>
        price.Any(letter =>
            char.IsLetter(letter) || char.GetUnicodeCategory(letter) == System.Globalization.UnicodeCategory.CurrencySymbol
        );

    private static string Short(string text) => text.Length <= 40 ? text : text[..40] + "…";
}
