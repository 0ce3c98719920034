using Ohmstead.Assessment.Buying;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Collections;
using Ohmstead.Records.Model;
using Ohmstead.Records.Shapes;
using static Ohmstead.Publishing.Tables.SharedKeys;

namespace Ohmstead.Publishing.Tables;

/// <summary>Every line of every order; an order in words alone is one row.</summary>
internal static class OrdersTable
{
    /// <summary>Its columns.</summary>
    public static DataColumns<(Order Order, LineStanding? Line)> Columns { get; } =
        new(
            "order row",
            "One line of an order, or an order in words alone.",
            "{ order: PO-12, line: 2, state: placed, placed: 2026-03-16, what: pen motor belt, ordered: 2, came: 0 }",
            new(Key.Id("order", "The order.", "PO-12").Needed(), row => row.Order.Id.Value),
            new(Key.Id("line", "The line; none of an order in words alone.", "2"), row => row.Line?.Line.Id.Value),
            new(Key.Text("state", "Where it stands.", "placed").Needed(), row =>
                OrderStates.Words(row.Line?.State ?? OrderStates.For(row.Order))
            ),
            new(Key.Date("placed", "When the order was placed.", "2026-03-16").Needed(), row => row.Order.Placed.Text),
            new(Key.Text("from", "From whom.", "Dunmere parts"), row => row.Order.From?.Value),
            new(Key.Text("what", "What was ordered.", "pen motor belt").Needed(), row =>
                row.Line is { } line ? ListedLine.Describe(line.Line) : row.Order.For.Value
            ),
            new(Key.Count("ordered", "How many were ordered.", "2"), row => row.Line is { } line ? Number(line.Line.Quantity.Value) : null),
            new(Key.Count("came", "How many came.", "0"), row => row.Line is { } line ? Number(line.Came) : null),
            new(Key.Count("to_come", "How many may still come.", "2"), row => row.Line is { } line ? Number(line.Outstanding) : null),
            new(Key.Text("price", "What one costs.", "0.42 EUR"), row => row.Line?.Line.Price?.Value)
        );

    /// <summary>The orders of a collection, in order of name, each with its lines as written.</summary>
    public static IEnumerable<(Order Order, LineStanding? Line)> Rows(RunResult result) =>
        result
            .Workshop.Orders.Values.OrderBy(order => order.Id.Value, StringComparer.Ordinal)
            .SelectMany(order =>
                LineStanding.All(order) is { Count: > 0 } lines ? lines.Select(line => (order, (LineStanding?)line)) : [(order, null)]
            );
}
