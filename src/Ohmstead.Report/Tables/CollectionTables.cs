using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Records.Model;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;
using Ohmstead.Report.Style;

namespace Ohmstead.Report.Tables;

/// <summary>The tables of the page of the collection, each of which may grow beyond it.</summary>
/// <param name="context">What every page knows.</param>
/// <param name="boards">All boards.</param>
internal sealed class CollectionTables(ReportContext context, IReadOnlyList<BoardSummary> boards)
{
    /// <summary>A board that waits for something.</summary>
    internal readonly record struct Waiting(BoardSummary Board, Wait For);

    private static readonly Column[] NextColumns = ["Board", "State", "What next", "Why"];
    private static readonly Column[] WaitColumns = ["Board", "For", new("Since", IsShort: true), new("Days", IsNumber: true), "Order"];
    private static readonly Column[] DesignColumns = ["Design", "Maker", new("Units", IsNumber: true), new("Fit to run", IsNumber: true)];
    private static readonly Column[] KeptColumns = ["Board", "Kept, and why"];
    private static readonly Column[] BoardColumns =
    [
        "Board",
        "State",
        "Design",
        new("Inside", IsNumber: true),
        new("Outside", IsNumber: true),
        new("Undecided", IsNumber: true),
        new("Other", IsNumber: true),
        new("Last seen", IsShort: true),
        new("Look again", IsShort: true),
    ];

    /// <summary>All boards.</summary>
    public IReadOnlyList<BoardSummary> Boards => boards;

    /// <summary>Boards for which there is something to do, what presses most first.</summary>
    public IReadOnlyList<BoardSummary> Open { get; } =
    [
        .. boards
            .Where(board => board.Reasons.Length > 0 && BoardStates.IsWorkedOn(board.State))
            .OrderBy(board => BoardStates.Place(board.State))
            .ThenBy(board => board.Id.Value, StringComparer.Ordinal),
    ];

    /// <summary>What is waited for, the longest first.</summary>
    public IReadOnlyList<Waiting> Waits { get; } =
    [
        .. boards
            .SelectMany(board => board.Waits.Select(wait => new Waiting(board, wait)))
            .OrderBy(wait => wait.For.Since.Value)
            .ThenBy(wait => wait.Board.Id.Value, StringComparer.Ordinal),
    ];

    /// <summary>Boards that keep a part against its verdict.</summary>
    public IReadOnlyList<BoardSummary> Overruled { get; } = [.. boards.Where(board => board.Overruled.Count > 0)];

    /// <summary>The designs with their units.</summary>
    public IReadOnlyList<DesignUnits> Designs { get; } = DesignUnits.Of(context.Workshop.Designs.Values, boards);

    /// <summary>The table of all boards.</summary>
    public LongTable<BoardSummary> OfBoards =>
        new("boards", "All boards", "with the outcomes of all readings ever taken", BoardColumns, 100, board => board.Id.Value, BoardRow);

    /// <summary>The table of what to do next.</summary>
    public LongTable<BoardSummary> OfNext { get; } =
        new("next", "What to do next", "what presses most first", NextColumns, 120, board => board.Id.Value, NextRow);

    /// <summary>The table of what waits.</summary>
    public LongTable<Waiting> OfWaits =>
        new("waits", "What waits", "the longest first", WaitColumns, 200, wait => wait.For.Since.Text, WaitRow);

    /// <summary>The table of what was kept against its verdict.</summary>
    public LongTable<BoardSummary> OfKept { get; } =
        new("kept", "Kept against the verdict", "in the order of the records", KeptColumns, 200, board => board.Id.Value, KeptRow);

    /// <summary>The table of the designs.</summary>
    public LongTable<DesignUnits> OfDesigns { get; } =
        new("designs", "Designs", "what several boards have in common", DesignColumns, 250, design => design.Design.Id.Value, DesignRow);

    /// <summary>Starts the cell that names a board.</summary>
    public static void BoardCell(HtmlWriter html, Ledger table, BoardSummary board)
    {
        using var cell = table.Head();
        BoardLink(html, board);
        html.Text(" ");
        html.Open(Tag.Small).Text(board.Title);
    }

    /// <summary>Writes the way to a board. What it is shows on request where only its number is written.</summary>
    public static void BoardLink(HtmlWriter html, BoardSummary board, bool isAlone = false)
    {
        var link = html.Open(Tag.A, ClassName.Reference).To(LocalLink.ToFile(SiteAddress.Board(board.Id.Value)));
        (isAlone ? link.With(TextAttribute.Title, board.Title) : link).Text(board.Id.Value);
    }

    private void BoardRow(HtmlWriter html, Ledger table, BoardSummary board)
    {
        using var row = html.Open(Tag.Tr).With(ElementId.Of(IdPrefix.Board, board.Id.Value));
        BoardCell(html, table, board);
        using (table.Cell(1).With(NumberAttribute.Order, (int)board.State))
        {
            StateMark.Write(html, board.State, board.OverdueSince);
        }

        using (table.Cell(2))
        {
            DesignLink(html, board.Design);
        }

        table.Cell(3).Text(board.Readings.Inside);
        table.Cell(4).Text(board.Readings.Outside);
        table.Cell(5).Text(board.Readings.Undecided);
        table.Cell(6).Text(board.Readings.Others);
        table.Cell(7).Text(PageFrame.Iso(board.LastSeen));
        table.Cell(8).Text(PageFrame.Iso(board.LookAgain));
    }

    private void DesignLink(HtmlWriter html, string? design)
    {
        if (design is not null && context.Workshop.Designs.ContainsKey(design))
        {
            html.Open(Tag.A).To(LocalLink.ToFile(SiteAddress.Design(design))).Text(design);
        }
        else
        {
            html.Text(design ?? string.Empty);
        }
    }

    private static void NextRow(HtmlWriter html, Ledger table, BoardSummary board)
    {
        using var row = html.Open(Tag.Tr);
        BoardCell(html, table, board);
        using (table.Cell(1).With(NumberAttribute.Order, (int)board.State))
        {
            StateMark.Write(html, board.State, board.OverdueSince);
        }

        table.Cell(2).Text(board.Reasons[0].NextStep);
        using var why = table.Cell(3);
        CollectionWords.Why(html, board);
    }

    private void WaitRow(HtmlWriter html, Ledger table, Waiting waiting)
    {
        var (board, wait) = waiting;
        using var row = html.Open(Tag.Tr);
        BoardCell(html, table, board);
        table.Cell(1).Text(wait.For.Value + (wait.Blocks is { } blocks ? $"; blocks {blocks.Value}" : string.Empty));
        table.Cell(2).Text(wait.Since.Text);
        table.Cell(3).Text(Math.Max(0, context.Today.DayNumber - wait.Since.Value.DayNumber));
        var order = wait.Order is { } name ? context.Workshop.Orders.GetValueOrDefault(name.Value) : null;
        table
            .Cell(4)
            .Text(
                wait.Order is null ? "none placed"
                : order is null ? wait.Order.Value
                : $"{wait.Order.Value}, {OrderStates.Words(OrderStates.For(order))}"
            );
    }

    private static void KeptRow(HtmlWriter html, Ledger table, BoardSummary board)
    {
        using var row = html.Open(Tag.Tr);
        BoardCell(html, table, board);
        table.Cell(1).Text(string.Join("; ", board.Overruled));
    }

    private static void DesignRow(HtmlWriter html, Ledger table, DesignUnits design)
    {
        using var row = html.Open(Tag.Tr);
        using (table.Head())
        {
            html.Open(Tag.A).To(LocalLink.ToFile(SiteAddress.Design(design.Design.Id.Value))).Text(design.Design.Title.Value);
        }

        table.Cell(1).Text(design.Design.Maker?.Value ?? string.Empty);
        table.Cell(2).Text(design.Units.Count);
        var fit = design.Units.Count(unit => unit.State == BoardState.FitToRun);
        using var cell = table.Cell(3).With(NumberAttribute.Order, fit);
        html.Text(fit);
        if (BoardStates.OverdueWords(design.Units.Count(unit => unit.IsFitButOverdue)) is { } beside)
        {
            html.Text(" ");
            html.Open(Tag.Small).Text(beside);
        }
    }
}
