using System.Globalization;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Buying;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Shelf;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Collections;
using Ohmstead.Electronics;

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
                new("state", "state"),
                new("placed", "placed"),
                new("days", "days", true),
                new("from", "from"),
                new("for", "for"),
                new("holds_up", "holds up"),
            ],
            [
                .. OrderBook
                    .List(result.Workshop, result.Boards, today)
                    .Select(
                        IReadOnlyList<string?> (line) =>
                            [
                                line.Order.Id.Value,
                                OrderStates.Words(line.State),
                                line.Order.Placed.Text,
                                Number(line.Days),
                                line.Order.From?.Value,
                                line.Order.For.Value,
                                Joined([
                                    .. line.Waiting.Select(waiting =>
                                        waiting.Board + (waiting.Wait.Blocks is { } blocks ? $" ({blocks.Value})" : string.Empty)
                                    ),
                                    .. line.ReopensNeed ? ["order again: what they wait for will not come"] : Array.Empty<string>(),
                                ]),
                            ]
                    ),
            ]
        );

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
                                Joined([.. line.For.Select(need => $"{need.Board} {need.Reference}")]),
                            ]
                    ),
            ]
        );

    private static string? Number(int? number) => number?.ToString(CultureInfo.InvariantCulture);

    private static string? Joined(IReadOnlyCollection<string> words) => words.Count == 0 ? null : string.Join("; ", words);
}
