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

    private const int MostLines = 30;

    private static LongTable<BuyingLine> Lines { get; } =
        new(
            "buy",
            "What to buy",
            "less the drawer and what is on order",
            new(
                new("Part", line => line.What),
                new("Needed", line => line.Needed),
                new("In the drawer", InDrawer) { IsNumber = true },
                new("On order", OnOrder) { IsNumber = true },
                new("To buy", (html, line) => html.Open(Tag.B).Text(line.ToBuy)) { IsNumber = true },
                new("For", Places)
            ),
            60,
            line => line.What
        );

    private static LongTable<Records.Model.Order> Orders { get; } =
        new(
            "orders",
            "Orders",
            "open, or lost on the way",
            new(
                new("Order", order => order.Id.Value) { IsShort = true },
                new("For", Asked),
                new("From", order => order.From?.Value),
                new("Placed", order => order.Placed.Text) { IsShort = true },
                new("State", State)
            )
            {
                Anchor = order => ElementId.For(IdPrefix.Order, order.Id.Value),
            },
            200,
            order => order.Id.Value
        );

    /// <summary>Writes the list and the open or lost orders.</summary>
    public static void Write(HtmlWriter html, ReportContext context, IReadOnlyList<BoardSummary> boards, int mostRows)
    {
        var lines = LinesOf(context, boards);
        var orders = OrdersOf(context);
        if (lines.Count > 0)
        {
            using var section = Section.Open(html, "buy", Lines.Heading, Lines.Remark);
            Lines.WriteStart(html, lines, mostRows);
        }

        if (orders.Length > 0)
        {
            using var section = Section.Open(html, "orders", Orders.Heading, Orders.Remark);
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
                    ElementId.For(IdPrefix.Order, order)
                )
                : null;
    }

    private static IReadOnlyList<BuyingLine> LinesOf(ReportContext context, IReadOnlyList<BoardSummary> boards) =>
        context.Buying ?? BuyingList.Compute(context.Workshop, boards, context.Today);

    private static Records.Model.Order[] OrdersOf(ReportContext context) =>
        [.. context.Workshop.Orders.Values.Where(IsShown).OrderBy(order => order.Id.Value, StringComparer.Ordinal)];

    private static string State(Records.Model.Order order) =>
        OrderStates.Words(OrderStates.For(order))
        + (order.Lost is { } lost ? $" on {lost.Text}: the need is open again unless another order covers it" : string.Empty);

    // It is open, or was lost on the way.
    private static bool IsShown(Records.Model.Order order) =>
        OrderStates.For(order) is OrderState.Placed or OrderState.PartReceived or OrderState.Lost;

    private static void InDrawer(HtmlWriter html, BuyingLine line)
    {
        html.Text(line.InDrawer);
        Sources(html, line.Drawer);
    }

    private static void OnOrder(HtmlWriter html, BuyingLine line)
    {
        html.Text(line.OnOrder);
        Sources(html, line.Coming);
    }

    private static void Sources(HtmlWriter html, IReadOnlyList<(string Name, int Count)> sources)
    {
        foreach (var (name, count) in sources)
        {
            html.Text(" ");
            html.Open(Tag.Small).Text(string.Create(CultureInfo.InvariantCulture, $"{count} of {name}"));
        }
    }

    // The order in its own words, and under them each line with how much of it came.
    private static void Asked(HtmlWriter html, Records.Model.Order order)
    {
        html.Text(order.For.Value);
        var lines = LineStanding.All(order);
        foreach (var line in lines.Take(MostLines))
        {
            html.Open(Tag.P, ClassName.Fine).Text(InWords(line));
        }

        if (lines.Count > MostLines)
        {
            html.Open(Tag.P, ClassName.Fine).Text(string.Create(CultureInfo.InvariantCulture, $"and {lines.Count - MostLines} lines more"));
        }
    }

    private static string InWords(LineStanding line) =>
        PageFrame.Joined(
            $"{line.Line.Id.Value}: {ListedLine.Describe(line.Line)}",
            $"{line.CameInWords} came",
            line.State is OrderState.Lost or OrderState.Cancelled ? OrderStates.Words(line.State) : null,
            line.Line.Price is { } price ? price.Value + " each" : null
        );

    private static void Places(HtmlWriter html, BuyingLine line)
    {
        foreach (var need in line.For.Take(MostPlaces))
        {
            html.Open(Tag.A, ClassName.Reference)
                .To(LocalLink.ToFile(SiteAddress.Board(need.Board), 0, ElementId.For(IdPrefix.Part, need.Reference)))
                .Text($"{need.Board} {need.Reference}");
            html.Text(" ");
        }

        if (line.For.Length > MostPlaces)
        {
            html.Text(string.Create(CultureInfo.InvariantCulture, $"and {line.For.Length - MostPlaces} more"));
        }
    }
}
