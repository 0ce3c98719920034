using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Workshops;

/// <summary>Where an order stands, computed from its dates.</summary>
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
    /// <summary>The state of an order.</summary>
    public static OrderState For(Order order) =>
        order.Received is not null ? OrderState.Received
        : order.Cancelled is not null ? OrderState.Cancelled
        : order.Lost is not null ? OrderState.Lost
        : order.PartReceived is not null ? OrderState.PartReceived
        : OrderState.Placed;

    /// <summary>The state as a person reads it.</summary>
    public static string Words(OrderState state) =>
        state switch
        {
            OrderState.Placed => "placed",
            OrderState.PartReceived => "part received",
            OrderState.Received => "received",
            OrderState.Lost => "lost on the way",
            _ => "cancelled",
        };
}
