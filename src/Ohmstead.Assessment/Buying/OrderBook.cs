using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Buying;

/// <summary>An order with where it stands and what it holds up.</summary>
/// <param name="Order">The order as written.</param>
/// <param name="State">Where it stands, computed from its dates.</param>
/// <param name="Days">How many days it took, or is taking.</param>
/// <param name="Waiting">The waits of boards that name it and are not over.</param>
public sealed record ListedOrder(Order Order, OrderState State, int Days, IReadOnlyList<(string Board, Wait Wait)> Waiting)
{
    /// <summary>True while something may still come.</summary>
    public bool IsOpen => OrderStates.IsOpen(State);

    /// <summary>True when what boards wait for will not come under it: lost or cancelled. The need is open again.</summary>
    public bool ReopensNeed => Waiting.Count > 0 && WillNotCome(State);

    /// <summary>Its lines, in the order written; empty where its words alone say what was ordered.</summary>
    public IReadOnlyList<ListedLine> Lines { get; init; } = [];

    internal static bool WillNotCome(OrderState state) => state is OrderState.Lost or OrderState.Cancelled;
}

/// <summary>A line of an order with where it stands and what it holds up.</summary>
/// <param name="Standing">The line, with what came of it.</param>
/// <param name="Waiting">The waits of boards that name it and are not over.</param>
public sealed record ListedLine(LineStanding Standing, IReadOnlyList<(string Board, Wait Wait)> Waiting)
{
    /// <summary>What was ordered, in words: the parts as a need of a board says them, or the words of the line.</summary>
    public string What => Describe(Standing.Line);

    /// <summary>The lots that it became, in the order they came.</summary>
    public IReadOnlyList<string> Lots { get; init; } = [];

    /// <summary>True when what boards wait for will not come under it. The need is open again.</summary>
    public bool ReopensNeed => Waiting.Count > 0 && ListedOrder.WillNotCome(Standing.State);

    /// <summary>What a line asks for, in words.</summary>
    public static string Describe(OrderLine line) =>
        line.Values is { } values
            ? PartWords.Describe(values) + (line.What is { } more ? $" ({more.Value})" : string.Empty)
            : line.What?.Value ?? "not written";
}

/// <summary>All orders of a collection.</summary>
public static class OrderBook
{
    /// <summary>The orders in order of the day they were placed.</summary>
    /// <param name="workshop">The orders.</param>
    /// <param name="boards">All boards, for what waits.</param>
    /// <param name="today">The day to count by.</param>
    public static IReadOnlyList<ListedOrder> List(Workshop workshop, IReadOnlyList<BoardSummary> boards, DateOnly today)
    {
        var waits = boards
            .SelectMany(board => board.Waits.Where(wait => wait.Order is not null).Select(wait => (Board: board.Id.Value, Wait: wait)))
            .ToLookup(wait => wait.Wait.Order!.Value, StringComparer.Ordinal);
        return
        [
            .. workshop
                .Orders.Values.OrderBy(order => order.Placed.Value)
                .ThenBy(order => order.Id.Value, StringComparer.Ordinal)
                .Select(order => new ListedOrder(
                    order,
                    OrderStates.For(order),
                    Until(order, today).DayNumber - order.Placed.Value.DayNumber,
                    [
                        .. waits[order.Id.Value]
                            .Where(wait => LineOf(workshop, wait.Wait) is null)
                            .OrderBy(wait => wait.Board, StringComparer.Ordinal),
                    ]
                )
                {
                    Lines = LinesOf(order, waits[order.Id.Value]),
                }),
        ];
    }

    private static LineStanding? LineOf(Workshop workshop, Wait wait) =>
        wait is { Order: { } order, Line: { } line } ? workshop.Line(order.Value, line.Value) : null;

    private static ListedLine[] LinesOf(Order order, IEnumerable<(string Board, Wait Wait)> waits)
    {
        if (order.Lines.Length == 0)
        {
            return [];
        }

        var byLine = waits.Where(wait => wait.Wait.Line is not null).ToLookup(wait => wait.Wait.Line!.Value, StringComparer.Ordinal);
        var lots = order.Came.ToLookup(came => came.Line.Value, came => came.Lot?.Value, StringComparer.Ordinal);
        return
        [
            .. LineStanding
                .All(order)
                .Select(line => new ListedLine(line, [.. byLine[line.Line.Id.Value].OrderBy(wait => wait.Board, StringComparer.Ordinal)])
                {
                    Lots = [.. lots[line.Line.Id.Value].OfType<string>()],
                }),
        ];
    }

    // An order that went by lines ended with the last parcel, or with the last line that was given up.
    private static DateOnly Until(Order order, DateOnly today) =>
        (order.Received ?? order.Cancelled ?? order.Lost)?.Value
        ?? (
            order.Lines.Length > 0 && !OrderStates.IsOpen(OrderStates.For(order))
                ? order
                    .Came.Select(arrival => arrival.Date)
                    .Concat(order.Lines.Select(line => line.Cancelled ?? line.Lost).OfType<Written<DateOnly>>())
                    .Max(date => date.Value)
                : today
        );
}
