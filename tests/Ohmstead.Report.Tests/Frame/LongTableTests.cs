using System.Text;
using System.Text.Json;
using AngleSharp.Html.Parser;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;
using Ohmstead.Report.Pages;

namespace Ohmstead.Report.Tests.Frame;

/// <summary>A collection that has outgrown its first page: three thousand boards, a third of them with something to do.</summary>
public sealed class LongTableTests : IDisposable
{
    private const int Count = 3_000;
    private const int Most = 100_000;
    private const string Hostile = "</script><img src=x onerror=alert(1)>\u2028`${1}` \\ \" ' 漢";

    private readonly KeptFiles files = new();
    private readonly BoardSummary[] boards =
    [
        .. Enumerable
            .Range(1, Count)
            .Select(number => new BoardSummary(
                $"boards/SP-{number:0000}.md",
                new($"SP-{number:0000}", $"SP-{number:0000}", new(2, 8)),
                number == 7 ? Hostile : "Tide gauge logger, with a title of some length",
                null,
                number % 3 == 0 ? BoardState.ProofDue : BoardState.FitToRun,
                number % 3 == 0 ? [new(BoardState.ProofDue, "rail +5", Hostile, "prove it", "point-proved")] : []
            )
            {
                LastSeen = new DateOnly(2026, 1, 1).AddDays(number % 300),
            }),
    ];

    private static Workshop Nothing => new(new("collection.yaml", "Saltmarsh Point"), null, null, []);

    public LongTableTests()
    {
        var context = new ReportContext(
            Nothing,
            boards.Select(board => board.Id.Value).ToHashSet(StringComparer.Ordinal),
            new DateOnly(2026, 11, 25),
            "0.0.0"
        );
        CollectionPage.WriteRest(files, context, boards);
        using var buffer = new PageBuffer();
        CollectionPage.Write(buffer, context, boards);
        files.Put(SiteAddress.Collection, buffer.Written);
    }

    public void Dispose() => files.Dispose();

    [Fact]
    public void No_page_is_larger_than_a_hundred_kilobytes()
    {
        Assert.True(files.Pages.Count() >= 40, $"{files.Pages.Count()} pages");
        Assert.All(files.Pages, page => Assert.InRange(page.Bytes.Length, 1_000, Most));
    }

    [Fact]
    public void Every_board_stands_on_one_of_the_pages_in_the_order_of_the_records() =>
        Assert.Equal(
            boards.Select(board => board.Id.Value),
            Pages("boards").SelectMany(page => Parsed(page).QuerySelectorAll("tbody th a").Select(link => link.TextContent))
        );

    [Fact]
    public void The_first_page_tells_how_many_there_are_and_leads_to_all_of_them()
    {
        var first = Parsed(files.Text("index.html"));
        Assert.Equal("All 3000 boards", first.QuerySelector("a[href='boards.html']")!.TextContent);
        Assert.Equal("What to do next, all of them", first.QuerySelector("a[href='next.html']")!.TextContent);
        Assert.Contains("All 1000 are told here together; one by one:", first.Body!.TextContent, StringComparison.Ordinal);
    }

    // A thousand boards about which the same is to be done are one row, whose link asks for them in the words of the long table.
    [Fact]
    public void A_thousand_boards_with_one_cause_are_one_row_with_a_link_to_all_of_them()
    {
        var row = Assert.Single(
            Parsed(files.Text("index.html")).QuerySelectorAll("[aria-labelledby=s-next] tbody tr:not(:has(th[scope]))")
        );
        Assert.Equal("1000 boards", row.QuerySelector("th")!.TextContent);
        var more = row.QuerySelectorAll("a")[^1];
        Assert.Equal("and 992 more", more.TextContent);
        Assert.Equal("next.html#what-to-do-next.only=proof%20due%20Prove%20it", more.GetAttribute("href"));
    }

    [Fact]
    public void Every_page_leads_to_every_other_by_the_first_name_on_it()
    {
        string[] pages = [.. Pages("boards")];
        Assert.Equal(30, pages.Length);
        Assert.All(pages.Index(), page =>
        {
            var nav = Parsed(page.Item).QuerySelector("nav.pages")!;
            Assert.Equal(29, nav.QuerySelectorAll("a").Length);
            Assert.All(nav.QuerySelectorAll("a"), link =>
                Assert.True(files.Has(Uri.UnescapeDataString(link.GetAttribute("href")!)), link.OuterHtml)
            );
            Assert.Equal($"SP-{(page.Index * 100) + 1:0000}", nav.QuerySelector("b")!.TextContent);
        });
    }

    [Fact]
    public void The_rows_beside_the_pages_are_those_of_the_pages()
    {
        var script = files.Text("boards.rows.js");
        const string start = "globalThis.ohmsteadRows = ";
        Assert.StartsWith(start, script, StringComparison.Ordinal);
        var rows = JsonSerializer.Deserialize<string[]>(script[start.Length..].TrimEnd('\n', ';'))!;
        Assert.Equal(Count, rows.Length);
        var pages = string.Concat(Pages("boards"));
        Assert.All(rows, row => Assert.Contains(row, pages, StringComparison.Ordinal));
    }

    // In a file of script no text can end the script; put into a page, the text is text.
    [Fact]
    public void Hostile_text_stays_text_in_pages_and_rows()
    {
        var script = files.Text("boards.rows.js");
        Assert.DoesNotContain("<img", script, StringComparison.Ordinal);
        Assert.DoesNotContain("</script", script, StringComparison.Ordinal);
        Assert.All(files.Pages, page => Assert.Empty(Parsed(page.Text).QuerySelectorAll("img, main script, [onerror]")));
        Assert.Contains(
            "<img src=x onerror=alert(1)>",
            Parsed(files.Text("boards.html")).QuerySelector("#board-SP-0007")!.TextContent,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_small_collection_has_no_such_pages()
    {
        using var few = new KeptFiles();
        CollectionPage.WriteRest(few, new ReportContext(Nothing, new HashSet<string>(), new DateOnly(2026, 11, 25), "0.0.0"), boards[..20]);
        Assert.Empty(few.Pages);
    }

    private IEnumerable<string> Pages(string table) =>
        Enumerable
            .Range(1, Count)
            .Select(page => page == 1 ? $"{table}.html" : $"{table}~{page}.html")
            .TakeWhile(files.Has)
            .Select(files.Text);

    private static AngleSharp.Html.Dom.IHtmlDocument Parsed(string page) =>
        new HtmlParser(new HtmlParserOptions { IsStrictMode = true }).ParseDocument(page);

    /// <summary>A report in memory.</summary>
    private sealed class KeptFiles : IReportFiles, IDisposable
    {
        private readonly Dictionary<string, byte[]> files = new(StringComparer.Ordinal);
        private readonly DirectoryInfo started = Directory.CreateTempSubdirectory("ohmstead-");

        public IEnumerable<(byte[] Bytes, string Text)> Pages =>
            files
                .Where(file => file.Key.EndsWith(".html", StringComparison.Ordinal))
                .Select(file => (file.Value, Encoding.UTF8.GetString(file.Value)));

        public bool Has(string path) => files.ContainsKey(path);

        public string Text(string path) => Encoding.UTF8.GetString(files[path]);

        public void Put(string path, ReadOnlySpan<byte> bytes) => files.Add(path, bytes.ToArray());

        public FileStream Start(string path) => File.Create(Path.Combine(started.FullName, path));

        public void Put(string path, FileStream started)
        {
            started.Dispose();
            Put(path, File.ReadAllBytes(started.Name));
        }

        public void Dispose() => started.Delete(recursive: true);
    }
}
