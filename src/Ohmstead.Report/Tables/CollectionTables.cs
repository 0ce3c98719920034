using System.Globalization;
using Ohmstead.Assessment.Acts;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Buying;
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
    private const int MostNames = 6;

    /// <summary>A board that waits for something.</summary>
    internal readonly record struct Waiting(BoardSummary Board, Wait For);

    // Before the tables that have them: what is static is made in the order of the text.
    private static Column<BoardSummary> Numbered { get; } = new("Board", NumberAndTitle);

    private static Column<BoardSummary> State { get; } =
        new("State", (html, board) => StateMark.Write(html, board.State, board.OverdueSince)) { Order = board => (int)board.State };

    /// <summary>All boards.</summary>
    public IReadOnlyList<BoardSummary> Boards => boards;

    /// <summary>What is to be done about each board for which there is something to do, what presses most first.</summary>
    public IReadOnlyList<BoardAct> Open { get; } = ActsOf(context, boards);

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
    public IReadOnlyList<DesignUnits> Designs { get; } = DesignUnits.Group(context.Workshop.Designs.Values, boards);

    /// <summary>The table of all boards.</summary>
    public LongTable<BoardSummary> OfBoards =>
        new(
            "boards",
            "All boards",
            "what is outside now, of what sits there; readings are all that were ever taken",
            new(
                Numbered,
                State,
                new("Design", (html, board) => DesignLink(html, context, board.Design)),
                new("Outside now", board => Names(board.Now.Outside)),
                new("Too close to call", board => Names(board.Now.Undecided)),
                new("Readings", board => board.Readings.Total),
                new("Last seen", board => PageFrame.Iso(board.LastSeen)) { IsShort = true },
                new("Look again", board => PageFrame.Iso(board.LookAgain)) { IsShort = true }
            )
            {
                Anchor = board => ElementId.For(IdPrefix.Board, board.Id.Value),
            },
            100,
            board => board.Id.Value
        );

    /// <summary>The table of what to do next.</summary>
    public LongTable<BoardAct> OfNext { get; } =
        new(
            "next",
            "What to do next",
            "what presses most first",
            new(
                new("Board", (html, act) => NumberAndTitle(html, act.Board)),
                new("State", (html, act) => StateMark.Write(html, act.Board.State, act.Board.OverdueSince))
                {
                    Order = act => (int)act.Board.State,
                },
                new("Design", (html, act) => DesignLink(html, context, act.Board.Design)),
                new("What to do", act => act.Do),
                new("Why", act => act.Why)
            ),
            120,
            act => act.Board.Id.Value
        );

    /// <summary>The table of what waits.</summary>
    public LongTable<Waiting> OfWaits =>
        new(
            "waits",
            "What waits",
            "the longest first",
            new(
                new("Board", (html, waiting) => NumberAndTitle(html, waiting.Board)),
                new("For", waiting => waiting.For.For.Value + (waiting.For.Blocks is { } blocks ? $"; blocks {blocks.Value}" : null)),
                new("Since", waiting => waiting.For.Since.Text) { IsShort = true },
                new("Days", waiting => Math.Max(0, context.Today.DayNumber - waiting.For.Since.Value.DayNumber)),
                new("Order", waiting => OrderOf(waiting.For))
            ),
            200,
            waiting => waiting.For.Since.Text
        );

    /// <summary>The table of what was kept against its verdict.</summary>
    public LongTable<BoardSummary> OfKept { get; } =
        new(
            "kept",
            "Kept against the verdict",
            "in the order of the records",
            new(Numbered, new("Kept, and why", board => string.Join("; ", board.Overruled))),
            200,
            board => board.Id.Value
        );

    /// <summary>The table of the designs.</summary>
    public LongTable<DesignUnits> OfDesigns { get; } =
        new(
            "designs",
            "Designs",
            "what several boards have in common",
            new(
                new("Design", (html, design) =>
                    html.Open(Tag.A).To(LocalLink.ToFile(SiteAddress.Design(design.Design.Id.Value))).Text(design.Design.Title.Value)
                ),
                new("Maker", design => design.Design.Maker?.Value),
                new("Units", design => design.Units.Count),
                new("Fit to run", FitToRun) { IsNumber = true, Order = CountFit }
            ),
            250,
            design => design.Design.Id.Value
        );

    /// <summary>Writes the way to a board. What it is shows on request where only its number is written.</summary>
    public static void BoardLink(HtmlWriter html, BoardSummary board, bool isAlone = false)
    {
        var link = html.Open(Tag.A, ClassName.Reference).To(LocalLink.ToFile(SiteAddress.Board(board.Id.Value)));
        (isAlone ? link.With(TextAttribute.Title, board.Title) : link).Text(board.Id.Value);
    }

    /// <summary>Writes the way to a board and what it is.</summary>
    public static void NumberAndTitle(HtmlWriter html, BoardSummary board)
    {
        BoardLink(html, board);
        html.Text(" ");
        html.Open(Tag.Small).Text(board.Title);
    }

    /// <summary>Writes the way to a design; its name alone where it has no page.</summary>
    public static void DesignLink(HtmlWriter html, ReportContext context, string? design)
    {
        if (design is not null && context.Workshop.Designs.ContainsKey(design))
        {
            html.Open(Tag.A).To(LocalLink.ToFile(SiteAddress.Design(design))).Text(design);
        }
        else
        {
            html.Text(design);
        }
    }

    private static BoardAct[] ActsOf(ReportContext context, IReadOnlyList<BoardSummary> boards)
    {
        var sources = new PartSources(context.Workshop, context.Buying ?? BuyingList.Compute(context.Workshop, boards, context.Today));
        return
        [
            .. boards
                .Select(board => BoardAct.For(board, sources))
                .OfType<BoardAct>()
                .OrderBy(act => BoardStates.Place(act.Board.State))
                .ThenBy(act => act.Board.Id.Value, StringComparer.Ordinal),
        ];
    }

    private static string Names(IReadOnlyList<string> names) =>
        names.Count <= MostNames
            ? string.Join(", ", names)
            : string.Create(CultureInfo.InvariantCulture, $"{string.Join(", ", names.Take(MostNames))} and {names.Count - MostNames} more");

    private string OrderOf(Wait wait)
    {
        var order = wait.Order is { } name ? context.Workshop.Orders.GetValueOrDefault(name.Value) : null;
        return wait.Order is null ? "none placed"
            : order is null ? wait.Order.Value
            : wait.Line is { } asked && context.Workshop.Line(wait.Order.Value, asked.Value) is { } line
                ? $"{line.Name}, {OrderStates.Words(line.State)}"
            : $"{wait.Order.Value}, {OrderStates.Words(OrderStates.For(order))}";
    }

    private static int CountFit(DesignUnits design) => design.Units.Count(unit => unit.State == BoardState.FitToRun);

    private static void FitToRun(HtmlWriter html, DesignUnits design)
    {
        html.Text(CountFit(design));
        if (BoardStates.OverdueWords(design.Units.Count(unit => unit.IsFitButOverdue)) is { } beside)
        {
            html.Text(" ");
            html.Open(Tag.Small).Text(beside);
        }
    }
}
