using System.Text;
using System.Xml.Linq;
using AngleSharp.Dom;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Drawings;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;
using Ohmstead.Report.Tests.Html;
using Ohmstead.Report.Tests.Pages;

namespace Ohmstead.Report.Tests.Frame;

/// <summary>What pages say of themselves to whoever does not see them.</summary>
public sealed class PageHeadTests(DemoPages demo) : IClassFixture<DemoPages>
{
    private static readonly ReportContext Context = new(
        Workshop.Empty,
        new HashSet<string>(StringComparer.Ordinal),
        new DateOnly(2026, 11, 25),
        "0.0.0"
    );

    // HTML, 4.2.5.1: the description, once; ogp.me: title and type.
    [Fact]
    public void Every_page_says_once_what_it_says()
    {
        Assert.All(demo.Pages, page =>
        {
            var says = Assert.Single(page.Value.QuerySelectorAll("meta[name=description]"));
            Assert.Equal("og:description", says.GetAttribute("property"));
            Assert.Matches("^[A-Z0-9].{10,}[.…]$", says.GetAttribute("content")!);
            Assert.Equal(page.Value.Title, Said(page.Value, "og:title"));
            Assert.Equal("website", Said(page.Value, "og:type"));
            Assert.Equal("https://boards.example/saltmarsh/" + page.Key, Said(page.Value, "og:url"));
        });
        Assert.NotEmpty(demo.Pages);
    }

    // The words of a state are told everywhere in the same way: the page in its lead, the head before all else.
    [Fact]
    public void The_sentence_of_a_board_begins_with_the_state_that_its_page_tells()
    {
        Assert.All(demo.Boards, board =>
        {
            var page = demo.Pages[SiteAddress.Board(board.Board.Id.Value)];
            var lead = page.QuerySelector(".lead")!.Words().Trim();
            Assert.StartsWith(lead, Said(page, "og:description"), StringComparison.OrdinalIgnoreCase);
            Assert.Contains(board.Board.Title.Value, Said(page, "og:description"), StringComparison.Ordinal);
        });
        Assert.Contains(demo.Boards, board => Words(board.Board.Id.Value).StartsWith("Make safe first: ", StringComparison.Ordinal));
    }

    // C9 of SP-0010 reads outside its limits: the first sentence of its page says so.
    [Fact]
    public void What_is_outside_is_counted() =>
        Assert.Equal("A fault stands: Valve receiver, watch room; 1 outside now.", Words("SP-0010"));

    [Theory]
    [InlineData("\"><script>alert(1)</script>", "\"><script>alert(1)</script>")]
    [InlineData("' onmouseover='alert(1)", "' onmouseover='alert(1)")]
    [InlineData("a\u0000\u202e\r\nb", "a␀[U+202E] b")]
    [InlineData("&quot;><img src=x onerror=alert(1)>", "&quot;><img src=x onerror=alert(1)>")]
    public void Hostile_words_are_text_in_the_head(string hostile, string shown)
    {
        var page = Page(new("boards/SP-1.html", hostile, hostile + " is what it says") { Picture = "photos/a.png" });
        Harmless.Check(page.DocumentElement);
        Assert.Equal(shown, Said(page, "og:title"));
        Assert.Equal(shown + " is what it says", Said(page, "og:description"));
        Assert.Equal(
            ["charset", "content", "http-equiv", "name", "property"],
            page.QuerySelectorAll("meta")
                .SelectMany(meta => meta.Attributes.Select(one => one.Name))
                .Distinct()
                .Order(StringComparer.Ordinal)
        );
    }

    // Nobody can follow a path without its site.
    [Fact]
    public void Without_a_site_no_address_is_told()
    {
        var page = Page(new("boards/SP-1.html", "SP-1", "Fit to run.") { Picture = "photos/a.png" });
        Assert.Empty(page.QuerySelectorAll("meta[property='og:url'], meta[property='og:image']"));
    }

    [Fact]
    public void With_a_site_the_address_and_the_picture_are_whole()
    {
        var page = Page(
            new("boards/SP-1.html", "SP-1", "Fit to run.") { Picture = "photos/ä b.png" },
            new(new Uri("https://boards.example/pad/"))
        );
        Assert.Equal("https://boards.example/pad/boards/SP-1.html", Said(page, "og:url"));
        Assert.Equal("https://boards.example/pad/photos/%C3%A4%20b.png", Said(page, "og:image"));
    }

    [Fact]
    public void Long_words_are_cut_between_letters()
    {
        var page = Page(new("a.html", string.Concat(Enumerable.Repeat("e\u0301", 500)), new string('m', 5000)));
        Assert.Equal(string.Concat(Enumerable.Repeat("e\u0301", 119)) + "…", Said(page, "og:title"));
        Assert.Equal(240, Said(page, "og:description").Length);
        Assert.Equal(1000, page.Title!.Length);
    }

    [Theory]
    [InlineData("index.html", "icon.svg")]
    [InlineData("boards/SP-1.html", "../icon.svg")]
    public void Every_page_names_the_small_picture(string path, string expected)
    {
        var icon = Assert.Single(Page(new(path, "a", "b")).QuerySelectorAll("link[rel=icon]"));
        Assert.Equal((expected, "image/svg+xml"), (icon.GetAttribute("href"), icon.GetAttribute("type")));
    }

    [Fact]
    public void The_small_picture_is_a_drawing_and_runs_nothing()
    {
        using var buffer = new PageBuffer();
        PlateIcon.Write(buffer);
        var drawing = XDocument.Parse(Encoding.UTF8.GetString(buffer.Written)).Root!;
        XNamespace svg = "http://www.w3.org/2000/svg";
        Assert.Equal(svg + "svg", drawing.Name);
        Assert.Equal(
            ["title", "style", "rect", "circle", "circle", "path"],
            drawing.Descendants().Select(element => element.Name.LocalName)
        );
        Assert.DoesNotContain(drawing.DescendantsAndSelf().Attributes(), attribute =>
            attribute.Name.LocalName.StartsWith("on", StringComparison.Ordinal) || attribute.Name.LocalName is "href" or "style"
        );
        Assert.DoesNotContain("url(", drawing.Element(svg + "style")!.Value, StringComparison.Ordinal);
        Assert.True(buffer.Length < 1000);
    }

    private string Words(string board) => Said(demo.Pages[SiteAddress.Board(board)], "og:description");

    private static string Said(IDocument page, string property) =>
        Assert.Single(page.QuerySelectorAll($"meta[property='{property}']")).GetAttribute("content")!;

    private static IDocument Page(PageHead head, PublishedAt? site = null)
    {
        using var buffer = new PageBuffer();
        PageFrame.Write(buffer, Context with { Published = site }, head, 0, static (_, _) => { });
        return OneBoard.Parsed(buffer.Written.ToArray());
    }
}
