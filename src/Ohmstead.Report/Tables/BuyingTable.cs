using System.Globalization;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Buying;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Tables;

/// <summary>What to buy for the whole collection, what is on order, and what was lost on the way.</summary>
internal static class BuyingTable
{
    private const int MostPlaces = 12;

    /// <summary>How many lines the page of the collection shows.</summary>
    internal const int MostOnCollection = 15;

    private const int MostOrders = 40;
    private static readonly Column[] Columns =
    [
        "Part",
        new("Needed", IsNumber: true),
        new("In the drawer", IsNumber: true),
        new("On order", IsNumber: true),
        new("To buy", IsNumber: true),
        "For",
    ];

    private static readonly Column[] OrderColumns = [new("Order", IsShort: true), "For", "From", new("Placed", IsShort: true), "State"];

    private static LongTable<BuyingLine> Lines { get; } =
        new("buy", "What to buy", "less the drawer and what is on order", Columns, 60, line => line.What, Line);

    private static LongTable<Records.Model.Order> Orders { get; } =
        new("orders", "Orders", "open, or lost on the way", OrderColumns, 200, order => order.Id.Value, Order);

    /// <summary>Writes the list and the open or lost orders.</summary>
    public static void Write(HtmlWriter html, ReportContext context, IReadOnlyList<BoardSummary> boards, int mostRows)
    {
        var lines = LinesOf(context, boards);
        var orders = OrdersOf(context);
        if (lines.Count > 0)
        {
            using var entry = Entry.Open(html, "buy", Lines.Heading, Lines.Remark);
            Lines.WriteStart(html, lines, mostRows);
        }

        if (orders.Length > 0)
        {
            using var entry = Entry.Open(html, "orders", Orders.Heading, Orders.Remark);
            Orders.WriteStart(html, orders, MostOrders);
        }
    }

    /// <summary>Writes the pages on which both go on.</summary>
    /// <param name="files">Where to.</param>
    /// <param name="context">What every page knows.</param>
    /// <param name="boards">All boards.</param>
    /// <param name="mostRows">How many lines the shortest list shows.</param>
    public static void WriteRest(IReportFiles files, ReportContext context, IReadOnlyList<BoardSummary> boards, int mostRows)
    {
        Lines.WritePages(files, context, LinesOf(context, boards), mostRows);
        Orders.WritePages(files, context, OrdersOf(context), MostOrders);
    }

    /// <summary>Where orders are told; null for one that has no row.</summary>
    public static Func<string, LocalLink?> Addresses(ReportContext context)
    {
        var places = OrdersOf(context).Index().ToDictionary(pair => pair.Item.Id.Value, pair => pair.Index, StringComparer.Ordinal);
        return order =>
            places.TryGetValue(order, out var place)
                ? LocalLink.ToFile(
                    places.Count <= MostOrders ? SiteAddress.Drawer : Orders.PathOfRow(place),
                    0,
                    ElementId.Of(IdPrefix.Order, order)
                )
                : null;
    }

    private static IReadOnlyList<BuyingLine> LinesOf(ReportContext context, IReadOnlyList<BoardSummary> boards) =>
        context.Buying ?? BuyingList.Compute(context.Workshop, boards, context.Today);

    private static Records.Model.Order[] OrdersOf(ReportContext context) =>
        [.. context.Workshop.Orders.Values.Where(IsShown).OrderBy(order => order.Id.Value, StringComparer.Ordinal)];

    private static void Order(HtmlWriter html, Ledger table, Records.Model.Order order)
    {
        using var row = html.Open(Tag.Tr).With(ElementId.Of(IdPrefix.Order, order.Id.Value));
        table.Head().Text(order.Id.Value);
        table.Cell(1).Text(order.For.Value);
        table.Cell(2).Text(order.From?.Value ?? string.Empty);
        table.Cell(3).Text(order.Placed.Text);
        table
            .Cell(4)
            .Text(
                OrderStates.Words(OrderStates.For(order))
                    + (order.Lost is { } lost ? $" on {lost.Text}: the need is open again unless another order covers it" : string.Empty)
            );
    }

    // It is open, or was lost on the way.
    private static bool IsShown(Records.Model.Order order) =>
        OrderStates.For(order) is OrderState.Placed or OrderState.PartReceived or OrderState.Lost;

    private static void Line(HtmlWriter html, Ledger table, BuyingLine line)
    {
        using var row = html.Open(Tag.Tr);
        table.Head().Text(line.What);
        table.Cell(1).Text(line.Needed);
        using (table.Cell(2))
        {
            html.Text(line.InDrawer);
            foreach (var (lot, count) in line.Drawer)
            {
                html.Text(" ");
                html.Open(Tag.Small).Text(string.Create(CultureInfo.InvariantCulture, $"{count} of {lot}"));
            }
        }

        table.Cell(3).Text(line.OnOrder);
        using (table.Cell(4))
        {
            html.Open(Tag.B).Text(line.ToBuy);
        }

        using var places = table.Cell(5);
        foreach (var need in line.For.Take(MostPlaces))
        {
            html.Open(Tag.A, ClassName.Reference)
                .To(LocalLink.ToFile(SiteAddress.Board(need.Board), 0, ElementId.Of(IdPrefix.Part, need.Reference)))
                .Text($"{need.Board} {need.Reference}");
            html.Text(" ");
        }

        if (line.For.Length > MostPlaces)
        {
            html.Text(string.Create(CultureInfo.InvariantCulture, $"and {line.For.Length - MostPlaces} more"));
        }
    }
}
