using System.Globalization;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Report.Html;
using Ohmstead.Report.Style;

namespace Ohmstead.Report.Pages;

/// <summary>The page of the collection: what is fit to run, what is not and why, what to do next, what waits, what to buy.</summary>
public static class CollectionPage
{
    private const int MostRows = 500;
    private const int MostNumbers = 30;
    private static readonly Column[] StateColumns = ["State", new("Boards", IsNumber: true), "Which"];
    private static readonly Column[] NextColumns = ["Board", "What next", "Why"];
    private static readonly Column[] WaitColumns = ["Board", "For", new("Since", IsShort: true), new("Days", IsNumber: true), "Order"];
    private static readonly Column[] DesignColumns = ["Design", "Maker", new("Units", IsNumber: true), new("Fit to run", IsNumber: true)];
    private static readonly Column[] KeptColumns = ["Board", "Kept, and why"];
    private static readonly Column[] BoardColumns =
        ["Board", "State", "Design", new("Inside", IsNumber: true), new("Outside", IsNumber: true), new("Undecided", IsNumber: true), new("Other", IsNumber: true), new("Last seen", IsShort: true), new("Look again", IsShort: true)];

    /// <summary>The file, from the root of the report.</summary>
    public const string PathName = "index.html";

    /// <summary>Writes the page.</summary>
    public static void Write(PageBuffer buffer, ReportContext context, IReadOnlyList<BoardSummary> boards) =>
        PageFrame.Write(buffer, context, context.Workshop.Collection.Name, 0, (context, boards), static (html, page) => Content(html, page.context, page.boards));

    private static void Content(HtmlWriter html, ReportContext context, IReadOnlyList<BoardSummary> boards)
    {
        Opening(html, context, boards);
        Next(html, boards);
        AheadTable.WriteNext(html, context, boards);
        Waits(html, context, boards);
        BuyingTable.Write(html, context, boards, MostRows);
        Kept(html, boards);
        Boards(html, context, boards);
        Designs(html, context, boards);
        FamiliesPage.Mention(html, boards);
    }

    private static void Opening(HtmlWriter html, ReportContext context, IReadOnlyList<BoardSummary> boards)
    {
        var collection = context.Workshop.Collection;
        using var opening = html.Open(Tag.Header, ClassName.Opening);
        html.Open(Tag.H1).Text(collection.Name);
        if (PageFrame.Joined(collection.Place?.Value, collection.Keeper is { } keeper ? "kept by " + keeper.Value : null) is { Length: > 0 } where)
        {
            html.Open(Tag.P, ClassName.Fine).Text(where);
        }

        using var content = html.Open(Tag.Div, ClassName.Content);
        html.Open(Tag.P, ClassName.Lead).Text(CollectionWords.Lead(boards, boards.Count == 1 ? "board" : "boards"));
        using var table = Ledger.Open(html, "States", StateColumns);
        using var body = html.Open(Tag.TBody);
        foreach (var state in CollectionWords.WorstFirst)
        {
            BoardSummary[] there = [.. boards.Where(board => board.State == state)];
            if (there.Length == 0)
            {
                continue;
            }

            using var row = html.Open(Tag.Tr);
            using (table.Head())
            {
                StateMark.Write(html, state);
            }

            table.Cell(1).Text(there.Length);
            using var which = table.Cell(2);
            foreach (var board in there.Take(MostNumbers))
            {
                BoardLink(html, board);
                html.Text(" ");
            }

            if (there.Length > MostNumbers)
            {
                html.Text(string.Create(CultureInfo.InvariantCulture, $"and {there.Length - MostNumbers} more"));
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

        using var entry = Entry.Open(html, "next", "What to do next", "what presses most first");
        using var table = Ledger.Open(html, "What to do next", NextColumns);
        foreach (var group in open.Take(MostRows).GroupBy(board => board.State))
        {
            using var body = html.Open(Tag.TBody);
            using (html.Open(Tag.Tr))
            {
                using var head = html.Open(Tag.Th).With(FixedAttribute.ScopeRowGroup).With(NumberAttribute.ColSpan, NextColumns.Length);
                StateMark.Write(html, group.Key);
            }

            foreach (var board in group)
            {
                using var row = html.Open(Tag.Tr);
                BoardCell(html, table, board);
                table.Cell(1).Text(board.Reasons[0].NextStep);
                using var why = table.Cell(2);
                CollectionWords.Why(html, board);
            }
        }

        if (open.Length > MostRows)
        {
            using var rest = html.Open(Tag.TBody);
            More(html, open.Length, NextColumns.Length);
        }
    }

    private static void Boards(HtmlWriter html, ReportContext context, IReadOnlyList<BoardSummary> boards)
    {
        using var entry = Entry.Open(html, "boards", "All boards", "with the outcomes of all readings ever taken");
        using var table = Ledger.Open(html, "All boards", BoardColumns);
        using var body = html.Open(Tag.TBody);
        foreach (var board in boards)
        {
            using var row = html.Open(Tag.Tr).With(ElementId.Of(IdPrefix.Board, board.Id.Value));
            BoardCell(html, table, board);
            using (table.Cell(1).With(NumberAttribute.Order, (int)board.State))
            {
                StateMark.Write(html, board.State);
            }

            using (table.Cell(2))
            {
                DesignLink(html, context, board.Design);
            }

            table.Cell(3).Text(board.Readings.Inside);
            table.Cell(4).Text(board.Readings.Outside);
            table.Cell(5).Text(board.Readings.Undecided);
            table.Cell(6).Text(board.Readings.Others);
            table.Cell(7).Text(PageFrame.Iso(board.LastSeen));
            table.Cell(8).Text(PageFrame.Iso(board.LookAgain));
        }
    }

    private static void Designs(HtmlWriter html, ReportContext context, IReadOnlyList<BoardSummary> boards)
    {
        var designs = DesignUnits.Of(context.Workshop.Designs.Values, boards);
        if (designs.Count == 0)
        {
            return;
        }

        using var entry = Entry.Open(html, "designs", "Designs", "what several boards have in common");
        using var table = Ledger.Open(html, "Designs", DesignColumns);
        using var body = html.Open(Tag.TBody);
        foreach (var design in designs)
        {
            using var row = html.Open(Tag.Tr);
            using (table.Head())
            {
                html.Open(Tag.A).To(LocalLink.ToFile(DesignPage.PathOf(design.Design.Id.Value))).Text(design.Design.Title.Value);
            }

            table.Cell(1).Text(design.Design.Maker?.Value ?? string.Empty);
            table.Cell(2).Text(design.Units.Count);
            table.Cell(3).Text(design.Units.Count(unit => unit.State == BoardState.FitToRun));
        }
    }

    private static void Waits(HtmlWriter html, ReportContext context, IReadOnlyList<BoardSummary> boards)
    {
        var waits = boards.SelectMany(board => board.Waits.Select(wait => (board, wait))).OrderBy(pair => pair.wait.Since.Value).ThenBy(pair => pair.board.Id.Value, StringComparer.Ordinal).ToArray();
        if (waits.Length == 0)
        {
            return;
        }

        using var entry = Entry.Open(html, "waits", "What waits", "the longest first");
        using var table = Ledger.Open(html, "What waits", WaitColumns);
        using var body = html.Open(Tag.TBody);
        foreach (var (board, wait) in waits.Take(MostRows))
        {
            using var row = html.Open(Tag.Tr);
            BoardCell(html, table, board);
            table.Cell(1).Text(wait.For.Value + (wait.Blocks is { } blocks ? $"; blocks {blocks.Value}" : string.Empty));
            table.Cell(2).Text(wait.Since.Text);
            table.Cell(3).Text(Math.Max(0, context.Today.DayNumber - wait.Since.Value.DayNumber));
            var order = wait.Order is { } name ? context.Workshop.Orders.GetValueOrDefault(name.Value) : null;
            table.Cell(4).Text(wait.Order is null ? "none placed" : order is null ? wait.Order.Value : $"{wait.Order.Value}, {OrderStates.Words(OrderStates.Of(order))}");
        }

        More(html, waits.Length, WaitColumns.Length);
    }

    private static void Kept(HtmlWriter html, IReadOnlyList<BoardSummary> boards)
    {
        var overruled = boards.Where(board => board.Overruled.Count > 0).ToArray();
        if (overruled.Length == 0)
        {
            return;
        }

        using var entry = Entry.Open(html, "overruled", "Kept against the verdict");
        using var table = Ledger.Open(html, "Kept against the verdict", KeptColumns);
        using var body = html.Open(Tag.TBody);
        foreach (var board in overruled.Take(MostRows))
        {
            using var row = html.Open(Tag.Tr);
            BoardCell(html, table, board);
            table.Cell(1).Text(string.Join("; ", board.Overruled));
        }

        More(html, overruled.Length, KeptColumns.Length);
    }

    private static void BoardCell(HtmlWriter html, Ledger table, BoardSummary board)
    {
        using var cell = table.Head();
        BoardLink(html, board);
        html.Text(" ");
        html.Open(Tag.Small).Text(board.Title);
    }

    private static void BoardLink(HtmlWriter html, BoardSummary board) =>
        html.Open(Tag.A, ClassName.Reference).To(LocalLink.ToFile(BoardPage.PathOf(board.Id.Value))).With(TextAttribute.Title, board.Title).Text(board.Id.Value);

    private static void DesignLink(HtmlWriter html, ReportContext context, string? design)
    {
        if (design is not null && context.Workshop.Designs.ContainsKey(design))
        {
            html.Open(Tag.A).To(LocalLink.ToFile(DesignPage.PathOf(design))).Text(design);
        }
        else
        {
            html.Text(design ?? string.Empty);
        }
    }

    private static void More(HtmlWriter html, int count, int columns)
    {
        if (count > MostRows)
        {
            using var row = html.Open(Tag.Tr);
            html.Open(Tag.Td).With(NumberAttribute.ColSpan, columns).Text(string.Create(CultureInfo.InvariantCulture, $"and {count - MostRows} more, see the boards' own pages"));
        }
    }
}
