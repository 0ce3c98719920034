using System.Globalization;
using Ohmstead.Assessment.Ahead;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Life;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Tables;

/// <summary>What falls due, as a table, and in short on the page of the collection.</summary>
/// <param name="context">What every page knows.</param>
internal sealed class AheadTable(ReportContext context)
{
    private const int MostNext = 5;
    private const int MostOverdue = 12;
    private static readonly Ledger<BoardLife> LivesNext = new(
        new("Part", (html, life) => PartOfBoard(html, life.Board, life.Life.Reference)),
        new("Earliest", life => PageFrame.Iso(life.Life.Earliest)) { IsShort = true },
        new("Latest", life => PageFrame.Iso(life.Life.Latest)) { IsShort = true }
    );

    private readonly Func<string, LocalLink?> lots = LotAddresses.For(context.Workshop);

    /// <summary>The table of what is overdue.</summary>
    public LongTable<DueItem> Overdue => Table("overdue", "Overdue", "the oldest first");

    /// <summary>The table of what falls due.</summary>
    public LongTable<DueItem> Coming => Table("coming", "Coming", "the nearest first");

    /// <summary>Writes the section of the collection's page: the next dates, and the lives that end next.</summary>
    public void WriteNext(HtmlWriter html, IReadOnlyList<BoardSummary> boards)
    {
        var items = context.Ahead ?? YearAhead.List(context.Workshop, boards, context.Today, context.Today.AddYears(1));
        var lives = boards
            .SelectMany(board =>
                board
                    .Lives.Where(life => life.MeasureOn is not null && life.Latest >= context.Today)
                    .Select(life => new BoardLife(board.Id.Value, life))
            )
            .OrderBy(life => life.Life.Earliest)
            .ThenBy(life => life.Board, StringComparer.Ordinal)
            .ThenBy(life => life.Life.Reference, StringComparer.Ordinal)
            .Take(MostNext)
            .ToArray();
        if (items.Count == 0 && lives.Length == 0)
        {
            return;
        }

        using var section = Section.Open(html, "ahead", "What comes next", "the next dates of the year ahead");
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

        OverdueHere(html, boards, [.. items.Where(item => item.IsOverdueOn(context.Today))]);
        (Coming with { Heading = "What comes next" }).WriteStart(
            html,
            [.. items.Where(item => !item.IsOverdueOn(context.Today)).Take(MostNext)],
            MostNext
        );
        if (lives.Length > 0)
        {
            html.Open(Tag.P).Text("Lives of electrolytics that may be used up next, estimates and not promises:");
            LivesNext.Write(html, "Lives that may be used up next", lives);
        }
    }

    // Hundreds that are overdue are a few lines: boards of one design stand together.
    private void OverdueHere(HtmlWriter html, IReadOnlyList<BoardSummary> boards, DueItem[] overdue)
    {
        if (overdue.Length == 0)
        {
            return;
        }

        var designs = boards.ToLookup(board => board.Id.Value, board => board.Design, StringComparer.Ordinal);
        var groups = DueGroup.Group(overdue, board => designs[board].FirstOrDefault());
        new Ledger<DueGroup>(
            new("Since", group => PageFrame.Iso(group.Items[0].Last)) { IsShort = true },
            new("Whom", WhomTogether),
            new("What", group => group.Items[0].What),
            new("Why", group => group.Items.Length == 1 ? group.Items[0].Why : $"the oldest: {group.Items[0].At}, {group.Items[0].Why}")
        ).Write(html, "Overdue", groups.Take(MostOverdue));
        if (groups.Count > MostOverdue)
        {
            using var line = html.Open(Tag.P);
            html.Open(Tag.A)
                .To(LocalLink.ToFile(SiteAddress.Ahead))
                .Text(
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"{groups.Skip(MostOverdue).Sum(group => group.Items.Length)} more that are overdue"
                    )
                );
        }
    }

    private void WhomTogether(HtmlWriter html, DueGroup group)
    {
        if (group.Items.Length == 1)
        {
            Whom(html, group.Items[0]);
            return;
        }

        html.Text(
            string.Create(CultureInfo.InvariantCulture, $"{group.Items.Length} {(group.Kind == DueKind.Life ? "parts" : "boards")} of ")
        );
        CollectionTables.DesignLink(html, context, group.Design);
    }

    private LongTable<DueItem> Table(string path, string heading, string remark) =>
        new(
            path,
            heading,
            remark,
            new(
                new("When", item => item.When) { IsShort = true },
                new("Whom", Whom),
                new("What", item => item.What),
                new("Why", item => item.Why)
            ),
            250,
            item => item.When
        );

    private void Whom(HtmlWriter html, DueItem item)
    {
        if (item.Kind == DueKind.Calibration && context.Workshop.Instruments.ContainsKey(item.Whom))
        {
            html.Open(Tag.A, ClassName.Reference)
                .To(LocalLink.ToFile(SiteAddress.Instruments, 0, ElementId.For(IdPrefix.Instrument, item.Whom)))
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
            PartOfBoard(html, item.Whom, place);
        }
        else
        {
            html.Open(Tag.A, ClassName.Reference).To(LocalLink.ToFile(SiteAddress.Board(item.Whom))).Text(item.Whom);
        }
    }

    private static void PartOfBoard(HtmlWriter html, string board, string place) =>
        html.Open(Tag.A, ClassName.Reference)
            .To(LocalLink.ToFile(SiteAddress.Board(board), 0, ElementId.For(IdPrefix.Part, place)))
            .Text($"{board} {place}");

    private readonly record struct BoardLife(string Board, LifeDates Life);
}
