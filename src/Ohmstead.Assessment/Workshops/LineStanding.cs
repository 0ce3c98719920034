using System.Globalization;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Workshops;

/// <summary>A line of an order with what came of it.</summary>
/// <param name="Order">The order.</param>
/// <param name="Line">The line.</param>
/// <param name="Came">How many came of it, over all parcels.</param>
public sealed record LineStanding(Order Order, OrderLine Line, long Came)
{
    /// <summary>How many may still come: none of an order or a line that is over.</summary>
    public int Outstanding => OrderStates.IsOpen(State) ? (int)Math.Max(0, Line.Quantity.Value - Came) : 0;

    /// <summary>Where the line stands. What came counts first, then what is said of the line, then what is said of its order.</summary>
    public OrderState State =>
        Came > 0 && Came >= Line.Quantity.Value ? OrderState.Received
        : Line.Cancelled is not null ? OrderState.Cancelled
        : Line.Lost is not null ? OrderState.Lost
        : Order.Received is not null ? OrderState.Received
        : Order.Cancelled is not null ? OrderState.Cancelled
        : Order.Lost is not null ? OrderState.Lost
        : Came > 0 ? OrderState.PartReceived
        : OrderState.Placed;

    /// <summary>How many came of how many, as a person reads it.</summary>
    public string CameInWords => string.Create(CultureInfo.InvariantCulture, $"{Came} of {Line.Quantity.Value}");

    /// <summary>The name by which people speak of it.</summary>
    public string Name => $"{Order.Id.Value} line {Line.Id.Value}";

    /// <summary>The lines of an order with what came of each. Of two of one name the first one counts; a check reports the
    /// second.</summary>
    public static IReadOnlyList<LineStanding> All(Order order)
    {
        if (order.Lines.Length == 0)
        {
            return [];
        }

        var came = order.Came.ToLookup(arrival => arrival.Line.Value, arrival => (long)arrival.Quantity.Value, StringComparer.Ordinal);
        return
        [
            .. order
                .Lines.DistinctBy(line => line.Id.Value, StringComparer.Ordinal)
                .Select(line => new LineStanding(order, line, came[line.Id.Value].Sum())),
        ];
    }

    /// <summary>A line of an order by its name; null where it has none.</summary>
    public static LineStanding? Find(Order order, string line) => All(order).FirstOrDefault(one => one.Line.Id.Value == line);
}
