using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Workshops;

/// <summary>Where an order or a line of it stands, computed from its dates and from what came.</summary>
public enum OrderState
{
    /// <summary>Placed; nothing has come.</summary>
    Placed,

    /// <summary>A part of it has come.</summary>
    PartReceived,

    /// <summary>All has come.</summary>
    Received,

    /// <summary>Lost on the way: the need is open again.</summary>
    Lost,

    /// <summary>Cancelled: the need is open again.</summary>
    Cancelled,
}

/// <summary>Orders and their states.</summary>
public static class OrderStates
{
    /// <summary>The state of an order. With lines it follows from them, where no date of the order says that it is over.</summary>
    public static OrderState For(Order order) =>
        order.Received is not null ? OrderState.Received
        : order.Cancelled is not null ? OrderState.Cancelled
        : order.Lost is not null ? OrderState.Lost
        : order.Lines.Length > 0 ? ByLines(order)
        : order.PartReceived is not null ? OrderState.PartReceived
        : OrderState.Placed;

    /// <summary>Whether something may still come of it.</summary>
    public static bool IsOpen(OrderState state) => state is OrderState.Placed or OrderState.PartReceived;

    /// <summary>The state as a person reads it.</summary>
    public static string Words(OrderState state) =>
        state switch
        {
            OrderState.Placed => "placed",
            OrderState.PartReceived => "came in part",
            OrderState.Received => "received",
            OrderState.Lost => "lost on the way",
            _ => "cancelled",
        };

    // A line that could not be read may still come: an order that has one is not over.
    private static OrderState ByLines(Order order)
    {
        OrderState[] lines = [.. LineStanding.All(order).Select(line => line.State)];
        var hasCome = order.Came.Length > 0 || order.PartReceived is not null;
        return order.UnreadLines.IsAny || lines.Any(IsOpen)
            ? hasCome
                ? OrderState.PartReceived
                : OrderState.Placed
            : lines.Contains(OrderState.Received) || hasCome
                ? OrderState.Received
                : lines.Contains(OrderState.Lost)
                    ? OrderState.Lost
                    : OrderState.Cancelled;
    }
}
