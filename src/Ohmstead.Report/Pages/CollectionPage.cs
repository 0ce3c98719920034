using System.Globalization;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Pages;

/// <summary>The page of the collection: what is fit to run, what is not and why, what to do next, what waits, what to buy.</summary>
public static class CollectionPage
{
    private const int MostRows = 500;

    /// <summary>The file, from the root of the report.</summary>
    public const string PathName = "index.html";

    /// <summary>Writes the page.</summary>
    public static void Write(PageBuffer buffer, ReportContext context, IReadOnlyList<BoardSummary> boards) =>
        PageFrame.Write(buffer, context, context.Workshop.Collection.Name, 0, (context, boards), static (html, page) => Content(html, page.context, page.boards));

    private static void Content(HtmlWriter html, ReportContext context, IReadOnlyList<BoardSummary> boards)
    {
        var collection = context.Workshop.Collection;
        using (html.Open(Tag.Header))
        {
            html.Open(Tag.H1).Text(collection.Name);
            if (collection.Keeper is { } keeper)
            {
                html.Open(Tag.P, ClassName.Fine).Text(string.Join(", ", new[] { collection.Place?.Value, "kept by " + keeper.Value }.OfType<string>()));
            }

            Tally(html, boards);
        }

        Next(html, boards);
        Boards(html, boards);
        Waits(html, context, boards);
        Buy(html, context, boards);
        Overruled(html, boards);
    }

    private static void Tally(HtmlWriter html, IReadOnlyList<BoardSummary> boards)
    {
        using var list = html.Open(Tag.Ul, ClassName.Tally);
        foreach (var state in BoardStates.All)
        {
            var count = boards.Count(board => board.State == state);
            if (count > 0)
            {
                using var item = html.Open(Tag.Li);
                html.Open(Tag.B).Text(count);
                html.Text(" ");
                Marks.State(html, state);
            }
        }
    }

    private static void Next(HtmlWriter html, IReadOnlyList<BoardSummary> boards)
    {
        var open = boards.Where(board => board.Reasons.Count > 0).OrderByDescending(board => board.State).ThenBy(board => board.Id.Value, StringComparer.Ordinal).ToArray();
        if (open.Length == 0)
        {
            return;
        }

        PageFrame.Heading(html, "next", "What to do next");
        using var scroll = html.Open(Tag.Div, ClassName.Scroll).With(FixedAttribute.RoleRegion).With(FixedAttribute.TabStop).With(TextAttribute.AriaLabel, "What to do next");
        using var table = html.Open(Tag.Table, ClassName.Ledger);
        PageFrame.Head(html, "Board", "State", "Why", "Next");
        using var body = html.Open(Tag.TBody);
        foreach (var board in open.Take(MostRows))
        {
            using var row = html.Open(Tag.Tr);
            BoardCell(html, board);
            using (html.Open(Tag.Td))
            {
                Marks.State(html, board.State);
            }

            using (html.Open(Tag.Td))
            {
                foreach (var reason in board.Reasons.Take(3))
                {
                    html.Open(Tag.P).Text(reason.At is null ? reason.Text : $"{reason.At}: {reason.Text}");
                }

                if (board.Reasons.Count > 3)
                {
                    html.Open(Tag.P).Text(string.Create(CultureInfo.InvariantCulture, $"and {board.Reasons.Count - 3} more"));
                }
            }

            html.Open(Tag.Td).Text(board.Reasons[0].NextStep);
        }

        More(html, open.Length);
    }

    private static void Boards(HtmlWriter html, IReadOnlyList<BoardSummary> boards)
    {
        PageFrame.Heading(html, "boards", "All boards");
        using var scroll = html.Open(Tag.Div, ClassName.Scroll).With(FixedAttribute.RoleRegion).With(FixedAttribute.TabStop).With(TextAttribute.AriaLabel, "All boards");
        using var table = html.Open(Tag.Table, ClassName.Ledger);
        PageFrame.Head(html, "Board", "State", "Design", "Readings", "Last seen", "Look again");
        using var body = html.Open(Tag.TBody);
        foreach (var board in boards)
        {
            using var row = html.Open(Tag.Tr).With(ElementId.Of(IdPrefix.Board, board.Id.Value));
            BoardCell(html, board);
            using (html.Open(Tag.Td))
            {
                Marks.State(html, board.State);
            }

            html.Open(Tag.Td).Text(board.Design ?? string.Empty);
            var counts = board.Readings;
            html.Open(Tag.Td).Text(counts.Total == 0 ? "none" : string.Create(CultureInfo.InvariantCulture, $"{counts.Total}: {counts.Inside} inside, {counts.Outside} outside, {counts.Undecided} undecided, {counts.Others} other"));
            html.Open(Tag.Td).Text(Iso(board.LastSeen));
            html.Open(Tag.Td).Text(Iso(board.LookAgain));
        }
    }

    private static void Waits(HtmlWriter html, ReportContext context, IReadOnlyList<BoardSummary> boards)
    {
        var waits = boards.SelectMany(board => board.Waits.Select(wait => (board, wait))).OrderBy(pair => pair.wait.Since.Value).ThenBy(pair => pair.board.Id.Value, StringComparer.Ordinal).ToArray();
        if (waits.Length == 0)
        {
            return;
        }

        PageFrame.Heading(html, "waits", "What waits");
        using var scroll = html.Open(Tag.Div, ClassName.Scroll).With(FixedAttribute.RoleRegion).With(FixedAttribute.TabStop).With(TextAttribute.AriaLabel, "What waits");
        using var table = html.Open(Tag.Table, ClassName.Ledger);
        PageFrame.Head(html, "Board", "For", "Since", "Days", "Order");
        using var body = html.Open(Tag.TBody);
        foreach (var (board, wait) in waits.Take(MostRows))
        {
            using var row = html.Open(Tag.Tr);
            BoardCell(html, board);
            html.Open(Tag.Td).Text(wait.For.Value + (wait.Blocks is { } blocks ? $" (blocks {blocks.Value})" : string.Empty));
            html.Open(Tag.Td).Text(wait.Since.Text);
            html.Open(Tag.Td, ClassName.Number).Text(Math.Max(0, context.Today.DayNumber - wait.Since.Value.DayNumber));
            var order = wait.Order is { } name ? context.Workshop.Orders.GetValueOrDefault(name.Value) : null;
            html.Open(Tag.Td).Text(wait.Order is null ? "none placed" : order is null ? wait.Order.Value : $"{wait.Order.Value}, {OrderStates.Words(OrderStates.Of(order))}");
        }

        More(html, waits.Length);
    }

    private static void Buy(HtmlWriter html, ReportContext context, IReadOnlyList<BoardSummary> boards)
    {
        var needs = boards.SelectMany(board => board.Needs).GroupBy(need => need.What, StringComparer.Ordinal).OrderBy(group => group.Key, StringComparer.Ordinal).ToArray();
        var lost = context.Workshop.Orders.Values.Where(order => OrderStates.Of(order) == OrderState.Lost).OrderBy(order => order.Id.Value, StringComparer.Ordinal).ToArray();
        if (needs.Length == 0 && lost.Length == 0)
        {
            return;
        }

        PageFrame.Heading(html, "buy", "What to buy");
        if (needs.Length > 0)
        {
            using var scroll = html.Open(Tag.Div, ClassName.Scroll).With(FixedAttribute.RoleRegion).With(FixedAttribute.TabStop).With(TextAttribute.AriaLabel, "What to buy");
            using var table = html.Open(Tag.Table, ClassName.Ledger);
            PageFrame.Head(html, "Part", "How many", "For");
            using var body = html.Open(Tag.TBody);
            foreach (var group in needs.Take(MostRows))
            {
                using var row = html.Open(Tag.Tr);
                html.Open(Tag.Th).With(FixedAttribute.ScopeRow).Text(group.Key);
                html.Open(Tag.Td, ClassName.Number).Text(group.Count());
                html.Open(Tag.Td).Text(string.Join(", ", group.Take(12).Select(need => $"{need.Board} {need.Reference}")) + (group.Count() > 12 ? " …" : string.Empty));
            }

            More(html, needs.Length);
        }

        foreach (var order in lost)
        {
            html.Open(Tag.P).Text($"Order {order.Id.Value} ({order.For.Value}) was lost on the way on {order.Lost!.Text}; the need is open again unless another order covers it.");
        }
    }

    private static void Overruled(HtmlWriter html, IReadOnlyList<BoardSummary> boards)
    {
        var overruled = boards.Where(board => board.Overruled.Count > 0).ToArray();
        if (overruled.Length == 0)
        {
            return;
        }

        PageFrame.Heading(html, "overruled", "Kept against the verdict");
        using var list = html.Open(Tag.Ul);
        foreach (var board in overruled.Take(MostRows))
        {
            using var item = html.Open(Tag.Li);
            html.Open(Tag.A).To(LocalLink.ToFile(BoardPage.PathOf(board.Id.Value))).Text(board.Id.Value);
            html.Text(": " + string.Join("; ", board.Overruled));
        }
    }

    private static void BoardCell(HtmlWriter html, BoardSummary board)
    {
        using var cell = html.Open(Tag.Th).With(FixedAttribute.ScopeRow);
        html.Open(Tag.A).To(LocalLink.ToFile(BoardPage.PathOf(board.Id.Value))).Text(board.Id.Value);
        html.Open(Tag.Small).Text(" " + board.Title);
    }

    private static void More(HtmlWriter html, int count)
    {
        if (count > MostRows)
        {
            using var row = html.Open(Tag.Tr);
            html.Open(Tag.Td).With(NumberAttribute.ColSpan, 4).Text(string.Create(CultureInfo.InvariantCulture, $"and {count - MostRows} more, see the boards' own pages"));
        }
    }

    private static string Iso(DateOnly? date) => date?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? string.Empty;
}
