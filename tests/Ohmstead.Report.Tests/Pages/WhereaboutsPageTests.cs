using System.Text;
using AngleSharp.Dom;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;
using Ohmstead.Report.Pages;

namespace Ohmstead.Report.Tests.Pages;

/// <summary>Where a board is, on its page and on that of the collection.</summary>
public sealed class WhereaboutsPageTests
{
    [Fact]
    public void The_page_of_a_board_says_first_where_it_is_and_tells_each_step()
    {
        var page = OneBoard.Page(
            Board(
                "X-1",
                "{ date: 2026-05-02, did: moved, at: store, by: TS }",
                "{ date: 2026-05-04, did: changed hands, owner: harbour office }",
                "{ date: 2026-06-02, did: lent, to: <b>museum</b>, until: 2026-11-30, note: in its case }"
            )
        );
        Assert.Equal(
            "on loan to <b>museum</b> since 2026-06-02, until 2026-11-30, owned by harbour office",
            page.QuerySelector("header p:nth-of-type(2)")!.TextContent
        );
        Assert.Equal(
            [
                "moved|2026-05-02|store|||told by TS",
                "changed hands|2026-05-04||harbour office||",
                "lent|2026-06-02||<b>museum</b>|2026-11-30|in its case",
            ],
            Section(page, "Where it went")!
                .QuerySelectorAll("tbody tr")
                .Select(row => string.Join('|', row.Children.Select(cell => cell.TextContent)))
        );
    }

    [Fact]
    public void A_board_that_was_sold_keeps_its_history_and_is_told_as_gone()
    {
        var page = OneBoard.Page(Board("X-1", "{ date: 2026-05-02, did: sold, to: Lantern Yard Spares }"));
        Assert.Equal("gone", page.QuerySelector("header p")!.TextContent.Trim());
        Assert.NotNull(Section(page, "At the bench"));
        Assert.DoesNotContain("Why it may be switched on", page.Body!.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("look again", page.QuerySelector("header")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void The_page_of_the_collection_counts_what_is_here_and_asks_nothing_of_the_rest()
    {
        var page = Collection(
            Board("X-1"),
            Board("X-2", "{ date: 2026-05-02, did: sold }"),
            Board("X-3", "{ date: 2026-05-02, did: broken up }"),
            Board("X-4", "{ date: 2026-05-02, did: retired }")
        );
        Assert.Equal(
            "The only board is fit to run. Besides, 1 kept for show, 1 gone, 1 broken up.",
            page.QuerySelector("header .lead")!.TextContent
        );
        Assert.Null(Section(page, "What to do next"));
        Assert.Equal(
            ["fit to run", "kept for show", "gone", "broken up"],
            page.QuerySelectorAll("header .tiles .state").Select(state => state.TextContent.Trim())
        );
    }

    private static IElement? Section(IDocument page, string heading) =>
        page.QuerySelectorAll("section").FirstOrDefault(section => section.QuerySelector("h2")?.TextContent == heading);

    private static IDocument Collection(params string[] records)
    {
        using var buffer = new PageBuffer();
        CollectionPage.Write(
            buffer,
            new ReportContext(Workshop.Empty, new HashSet<string>(StringComparer.Ordinal), Judged.Today, "0.0.0"),
            [.. records.Select(record => BoardSummary.From(Judged.Board(record)))]
        );
        return OneBoard.Parsed(Encoding.UTF8.GetBytes(Encoding.UTF8.GetString(buffer.Written)));
    }

    private static string Board(string number, params string[] steps) =>
        $"---\nboard: {number}\ntitle: Tide-gauge logger\nbench:\n  - date: 2026-03-14\n    proof:\n"
        + "      - { point: lamp, result: pass }\n"
        + "points:\n  - { point: lamp, measures: result }\n"
        + (steps.Length == 0 ? string.Empty : "whereabouts:\n" + string.Concat(steps.Select(step => $"  - {step}\n")))
        + "---\n";
}
