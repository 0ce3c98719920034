using System.Globalization;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Buying;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Shelf;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Collections;
using Ohmstead.Electronics;
using Ohmstead.Records.Model;

namespace Ohmstead.Output;

/// <summary>The lists of the drawer: what lies in it, what is on order, what to buy.</summary>
internal static class StockListings
{
    /// <summary>Every lot with what is left of it.</summary>
    public static Listing Drawer(RunResult result, DateOnly today) =>
        new(
            "lots",
            [
                new("lot", "lot"),
                new("what", "what"),
                new("came", "came", true),
                new("fitted", "fitted", true),
                new("scrapped", "scrapped", true),
                new("left", "left", true),
                new("date_code", "code"),
                new("received", "received"),
                new("shelf_until", "shelf until"),
                new("price", "price"),
                new("bad", "bad"),
                new("to_do", "to do"),
            ],
            [
                .. DrawerList
                    .List(result.Workshop, BoardSummary.UseOfLots(result.Boards), today)
                    .Select(
                        IReadOnlyList<string?> (line) =>
                            [
                                line.Lot.Id.Value,
                                PartWords.Describe(line.Lot.Values),
                                Number(line.Came),
                                Number(line.Fitted),
                                Number(line.Scrapped),
                                Number(line.Left),
                                line.Lot.Values.DateCode?.Text,
                                line.Lot.Received?.Text,
                                line.Shelf is { } shelf ? IsoDate.Text(shelf.Due) : null,
                                line.Lot.Price?.Value,
                                line.BadInWords,
                                line.IsHere ? Joined(line.ToDo) : "not here yet",
                            ]
                    ),
            ]
        );

    /// <summary>Every order with its state and what it holds up.</summary>
    public static Listing Orders(RunResult result, DateOnly today) =>
        new(
            "orders",
            [
                new("order", "order"),
                new("line", "line"),
                new("state", "state"),
                new("placed", "placed"),
                new("days", "days", true),
                new("from", "from"),
                new("for", "for"),
                new("ordered", "ordered", true),
                new("came", "came", true),
                new("price", "price"),
                new("lots", "lots"),
                new("holds_up", "holds up"),
            ],
            [
                .. OrderBook
                    .List(result.Workshop, result.Boards, today)
                    .SelectMany(order => order.Lines.Select(line => LineOf(order, line)).Prepend(OrderOf(order))),
            ]
        );

    private static IReadOnlyList<string?> OrderOf(ListedOrder order) =>
        [
            order.Order.Id.Value,
            null,
            OrderStates.Words(order.State),
            order.Order.Placed.Text,
            Number(order.Days),
            order.Order.From?.Value,
            order.Order.For.Value,
            null,
            null,
            null,
            null,
            HoldsUp(order.Waiting, order.ReopensNeed),
        ];

    private static IReadOnlyList<string?> LineOf(ListedOrder order, ListedLine line) =>
        [
            order.Order.Id.Value,
            line.Standing.Line.Id.Value,
            OrderStates.Words(line.Standing.State),
            order.Order.Placed.Text,
            null,
            order.Order.From?.Value,
            line.What,
            Number(line.Standing.Line.Quantity.Value),
            line.Standing.Came.ToString(CultureInfo.InvariantCulture),
            line.Standing.Line.Price?.Value,
            Joined(line.Lots),
            HoldsUp(line.Waiting, line.ReopensNeed),
        ];

    private static string? HoldsUp(IReadOnlyList<(string Board, Wait Wait)> waiting, bool reopens) =>
        Joined([
            .. waiting.Select(one => one.Board + (one.Wait.Blocks is { } blocks ? $" ({blocks.Value})" : string.Empty)),
            .. reopens ? ["order again: what they wait for will not come"] : Array.Empty<string>(),
        ]);

    /// <summary>One line for equal needs of all boards, less what lies in the drawer and what is on order.</summary>
    public static Listing ToBuy(RunResult result, DateOnly today) =>
        new(
            "lines",
            [
                new("buy", "buy", true),
                new("what", "what"),
                new("needed", "needed", true),
                new("in_drawer", "in drawer", true),
                new("on_order", "on order", true),
                new("lots", "lots set aside"),
                new("lines", "lines set aside"),
                new("for", "for"),
            ],
            [
                .. BuyingList
                    .Compute(result.Workshop, result.Boards, today)
                    .Select(
                        IReadOnlyList<string?> (line) =>
                            [
                                Number(line.ToBuy),
                                line.What,
                                Number(line.Needed),
                                Number(line.InDrawer),
                                Number(line.OnOrder),
                                Joined([
                                    .. line.Drawer.Select(lot => string.Create(CultureInfo.InvariantCulture, $"{lot.Count} of {lot.Lot}")),
                                ]),
                                Joined([
                                    .. line.Coming.Select(one => string.Create(CultureInfo.InvariantCulture, $"{one.Count} of {one.Line}")),
                                ]),
                                Joined([.. line.For.Select(need => $"{need.Board} {need.Reference}")]),
                            ]
                    ),
            ]
        );

    private static string? Number(int? number) => number?.ToString(CultureInfo.InvariantCulture);

    private static string? Joined(IReadOnlyCollection<string> words) => words.Count == 0 ? null : string.Join("; ", words);
}
