using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Buying;

/// <summary>An order with where it stands and what it holds up.</summary>
/// <param name="Order">The order as written.</param>
/// <param name="State">Where it stands, computed from its dates.</param>
/// <param name="Days">How many days it took, or is taking.</param>
/// <param name="Waiting">The waits of boards that name it and are not over.</param>
public sealed record OrderLine(Order Order, OrderState State, int Days, IReadOnlyList<(string Board, Wait Wait)> Waiting)
{
    /// <summary>True while something may still come.</summary>
    public bool IsOpen => State is OrderState.Placed or OrderState.PartReceived;

    /// <summary>True when what boards wait for will not come under it: lost or cancelled. The need is open again.</summary>
    public bool ReopensNeed => Waiting.Count > 0 && State is OrderState.Lost or OrderState.Cancelled;
}

/// <summary>All orders of a collection.</summary>
public static class OrderBook
{
    /// <summary>The orders in order of the day they were placed.</summary>
    /// <param name="workshop">The orders.</param>
    /// <param name="boards">All boards, for what waits.</param>
    /// <param name="today">The day to count by.</param>
    public static IReadOnlyList<OrderLine> List(Workshop workshop, IReadOnlyList<BoardSummary> boards, DateOnly today)
    {
        var waits = boards
            .SelectMany(board => board.Waits.Where(wait => wait.Order is not null).Select(wait => (Board: board.Id.Value, Wait: wait)))
            .ToLookup(wait => wait.Wait.Order!.Value, StringComparer.Ordinal);
        return
        [
            .. workshop
                .Orders.Values.OrderBy(order => order.Placed.Value)
                .ThenBy(order => order.Id.Value, StringComparer.Ordinal)
                .Select(order => new OrderLine(
                    order,
                    OrderStates.For(order),
                    Until(order, today).DayNumber - order.Placed.Value.DayNumber,
                    [.. waits[order.Id.Value].OrderBy(wait => wait.Board, StringComparer.Ordinal)]
                )),
        ];
    }

    private static DateOnly Until(Order order, DateOnly today) => (order.Received ?? order.Cancelled ?? order.Lost)?.Value ?? today;
}
