using System.Globalization;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Pages;

/// <summary>What to buy for the whole collection, what is on order, and what was lost on the way.</summary>
internal static class BuyingTable
{
    private const int MostPlaces = 12;
    private static readonly Column[] Columns =
        ["Part", new("Needed", IsNumber: true), new("In the drawer", IsNumber: true), new("On order", IsNumber: true), new("To buy", IsNumber: true), "For"];

    private static readonly Column[] OrderColumns = [new("Order", IsShort: true), "For", "From", new("Placed", IsShort: true), "State"];

    /// <summary>Writes the list and the open or lost orders.</summary>
    public static void Write(HtmlWriter html, ReportContext context, IReadOnlyList<BoardSummary> boards, int mostRows)
    {
        var lines = context.Buying ?? BuyingList.Of(context.Workshop, boards, context.Today);
        var orders = context.Workshop.Orders.Values.Where(IsShown)
            .OrderBy(order => order.Id.Value, StringComparer.Ordinal).ToArray();
        if (lines.Count > 0)
        {
            using var entry = Entry.Open(html, "buy", "What to buy", "less the drawer and what is on order");
            using var table = Ledger.Open(html, "What to buy", Columns);
            using var body = html.Open(Tag.TBody);
            foreach (var line in lines.Take(mostRows))
            {
                Line(html, table, line);
            }

            if (lines.Count > mostRows)
            {
                using var row = html.Open(Tag.Tr);
                html.Open(Tag.Td).With(NumberAttribute.ColSpan, Columns.Length).Text(string.Create(CultureInfo.InvariantCulture, $"and {lines.Count - mostRows} more, see the boards' own pages"));
            }
        }

        if (orders.Length > 0)
        {
            using var entry = Entry.Open(html, "orders", "Orders", "open, or lost on the way");
            using var table = Ledger.Open(html, "Orders", OrderColumns);
            using var body = html.Open(Tag.TBody);
            foreach (var order in orders)
            {
                using var row = html.Open(Tag.Tr).With(ElementId.Of(IdPrefix.Order, order.Id.Value));
                table.Head().Text(order.Id.Value);
                table.Cell(1).Text(order.For.Value);
                table.Cell(2).Text(order.From?.Value ?? string.Empty);
                table.Cell(3).Text(order.Placed.Text);
                table.Cell(4).Text(OrderStates.Words(OrderStates.Of(order)) + (order.Lost is { } lost ? $" on {lost.Text}: the need is open again unless another order covers it" : string.Empty));
            }
        }
    }

    /// <summary>Whether an order has a row: it is open, or was lost on the way.</summary>
    public static bool IsShown(Records.Model.Order order) => OrderStates.Of(order) is OrderState.Placed or OrderState.PartReceived or OrderState.Lost;

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
            html.Open(Tag.A, ClassName.Reference).To(LocalLink.ToFile(BoardPage.PathOf(need.Board), 0, ElementId.Of(IdPrefix.Part, need.Reference))).Text($"{need.Board} {need.Reference}");
            html.Text(" ");
        }

        if (line.For.Count > MostPlaces)
        {
            html.Text(string.Create(CultureInfo.InvariantCulture, $"and {line.For.Count - MostPlaces} more"));
        }
    }
}
