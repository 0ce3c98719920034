using System.Globalization;
using Ohmstead.Assessment.Ahead;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Life;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Tables;

/// <summary>What falls due, as a table, and in short on the page of the collection.</summary>
internal static class AheadTable
{
    private const int MostNext = 5;
    private static readonly Column[] Columns = [new("When", IsShort: true), "Whom", "What", "Why"];
    private static readonly Column[] LifeColumns = ["Part", new("Earliest", IsShort: true), new("Latest", IsShort: true)];

    /// <summary>The table of what is overdue.</summary>
    public static LongTable<DueItem> Overdue(ReportContext context) => Table("overdue", "Overdue", "the oldest first", context);

    /// <summary>The table of what falls due.</summary>
    public static LongTable<DueItem> Coming(ReportContext context) => Table("coming", "Coming", "the nearest first", context);

    private static LongTable<DueItem> Table(string path, string heading, string remark, ReportContext context)
    {
        var lots = LotAddresses.For(context.Workshop);
        return new(
            path,
            heading,
            remark,
            Columns,
            250,
            item => item.When,
            (html, table, item) =>
            {
                using var row = html.Open(Tag.Tr);
                table.Head().Text(item.When);
                using (table.Cell(1))
                {
                    Whom(html, context, lots, item);
                }

                table.Cell(2).Text(item.What);
                table.Cell(3).Text(item.Why);
            }
        );
    }

    /// <summary>Writes the section of the collection's page: the next dates, and the lives that end next.</summary>
    public static void WriteNext(HtmlWriter html, ReportContext context, IReadOnlyList<BoardSummary> boards)
    {
        var items = context.Ahead ?? YearAhead.List(context.Workshop, boards, context.Today, context.Today.AddYears(1));
        var lives = boards
            .SelectMany(board =>
                board
                    .Lives.Where(life => life.MeasureOn is not null && life.Latest >= context.Today)
                    .Select(life => (Board: board.Id.Value, Life: life))
            )
            .OrderBy(pair => pair.Life.Earliest)
            .ThenBy(pair => pair.Board, StringComparer.Ordinal)
            .ThenBy(pair => pair.Life.Reference, StringComparer.Ordinal)
            .Take(MostNext)
            .ToArray();
        if (items.Count == 0 && lives.Length == 0)
        {
            return;
        }

        using var entry = Entry.Open(html, "ahead", "What comes next", "the next dates of the year ahead");
        var overdue = items.Count(item => item.IsOverdueOn(context.Today));
        using (html.Open(Tag.P))
        {
            html.Text(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{items.Count} {(items.Count == 1 ? "thing falls" : "things fall")} due by {context.Today.AddYears(1):yyyy-MM-dd}, "
                        + $"{overdue} of them {(overdue == 1 ? "is" : "are")} overdue: "
                )
            );
            html.Open(Tag.A).To(LocalLink.ToFile(SiteAddress.Ahead)).Text("the year ahead");
        }

        (Coming(context) with { Heading = "What comes next" }).WriteStart(
            html,
            [.. items.Where(item => !item.IsOverdueOn(context.Today)).Take(MostNext)],
            MostNext
        );
        Lives(html, lives);
    }

    private static void Lives(HtmlWriter html, (string Board, LifeDates Life)[] lives)
    {
        if (lives.Length == 0)
        {
            return;
        }

        html.Open(Tag.P).Text("Lives of electrolytics that may be used up next, estimates and not promises:");
        using var table = Ledger.Open(html, "Lives that may be used up next", LifeColumns);
        using var body = html.Open(Tag.TBody);
        foreach (var (board, life) in lives)
        {
            using var row = html.Open(Tag.Tr);
            using (table.Head())
            {
                PartLink(html, board, life.Reference);
            }

            table.Cell(1).Text(PageFrame.Iso(life.Earliest));
            table.Cell(2).Text(PageFrame.Iso(life.Latest));
        }
    }

    private static void Whom(HtmlWriter html, ReportContext context, Func<string, LocalLink?> lots, DueItem item)
    {
        if (item.Kind == DueKind.Calibration && context.Workshop.Instruments.ContainsKey(item.Whom))
        {
            html.Open(Tag.A, ClassName.Reference)
                .To(LocalLink.ToFile(SiteAddress.Instruments, 0, ElementId.Of(IdPrefix.Instrument, item.Whom)))
                .Text(item.Whom);
        }
        else if (item.Kind is DueKind.Reforming or DueKind.Shelf && lots(item.Whom) is { } address)
        {
            html.Open(Tag.A, ClassName.Reference).To(address).Text(item.Whom);
        }
        else if (!DueKinds.IsOfBoard(item.Kind) || !context.Boards.Contains(item.Whom))
        {
            html.Text(item.At);
        }
        else if (item.Place is { } place)
        {
            PartLink(html, item.Whom, place);
        }
        else
        {
            html.Open(Tag.A, ClassName.Reference).To(LocalLink.ToFile(SiteAddress.Board(item.Whom))).Text(item.Whom);
        }
    }

    private static void PartLink(HtmlWriter html, string board, string place) =>
        html.Open(Tag.A, ClassName.Reference)
            .To(LocalLink.ToFile(SiteAddress.Board(board), 0, ElementId.Of(IdPrefix.Part, place)))
            .Text($"{board} {place}");
}
