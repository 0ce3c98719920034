using System.Net;
using System.Text.RegularExpressions;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Publishing;

/// <summary>Links between the pages and what is seen elsewhere: the record at its commit, and the badge on another page.</summary>
public sealed class SeenElsewhereTests
{
    private const string Where = "repository: https://git.example/boards/blob/{commit}/records/{path}\n";

    [Fact]
    public void The_page_of_a_board_leads_to_its_record_at_the_commit()
    {
        using var copy = Made(Where, "--commit", "1a2b3c4");
        Assert.Contains(
            "<a href=https://git.example/boards/blob/1a2b3c4/records/boards/SP-0007.md rel=external noopener noreferrer",
            Links(copy.Read("pages/boards/SP-0007.html")),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "commit <a href=https://git.example/boards/blob/1a2b3c4/records/collection.yaml ",
            Links(copy.Read("pages/about.html")),
            StringComparison.Ordinal
        );
    }

    // Neither a commit without an address nor an address without a commit leads anywhere.
    [Theory]
    [InlineData("", "1a2b3c4")]
    [InlineData(Where, null)]
    public void Without_the_one_or_the_other_nothing_leads_out(string key, string? commit)
    {
        using var copy = Made(key, commit is null ? [] : ["--commit", commit]);
        Assert.DoesNotContain(
            "git.example",
            copy.Read("pages/boards/SP-0007.html") + copy.Read("pages/about.html"),
            StringComparison.Ordinal
        );
        Assert.Contains(
            commit is null ? "the commit was not given" : $"commit {commit}",
            Words(copy.Read("pages/about.html")),
            StringComparison.Ordinal
        );
        Assert.Contains("Record: boards/SP-0007.md; on one sheet", Words(copy.Read("pages/boards/SP-0007.html")), StringComparison.Ordinal);
    }

    // The name of a commit is said on the command line: whatever it is, it stays one name of a path.
    [Theory]
    [InlineData("\"><script>alert(1)</script>")]
    [InlineData("../../../../elsewhere")]
    [InlineData("{path}")]
    public void A_hostile_commit_leads_nowhere_else(string commit)
    {
        using var copy = Made(Where, "--commit", commit);
        var page = copy.Read("pages/boards/SP-0007.html");
        Assert.DoesNotContain("<script>alert", page + copy.Read("pages/about.html"), StringComparison.Ordinal);
        var link = Assert.Single(Regex.Matches(page, "href=\"?(https://git[^\" >]*)")).Groups[1].Value;
        Assert.Equal(
            ["/", "boards/", "blob/", Uri.EscapeDataString(commit) + "/", "records/", "boards/", "SP-0007.md"],
            new Uri(WebUtility.HtmlDecode(link)).Segments
        );
    }

    // What is pasted is what the languages ask: CommonMark 0.31, 6.4 and 6.3; HTML, 4.8.3.
    [Fact]
    public void What_is_pasted_shows_the_badge_and_leads_to_the_pages()
    {
        using var copy = Made("site: https://boards.example/a(b)&c/\n");
        var samples = Regex
            .Matches(copy.Read("pages/about.html"), "<pre[^>]*>\n(.*?)</pre>")
            .Select(one => WebUtility.HtmlDecode(one.Groups[1].Value));
        Assert.Equal(
            [
                "[![state of the boards](https://boards.example/a%28b%29&c/badge.svg)](https://boards.example/a%28b%29&c/index.html)",
                "<a href=\"https://boards.example/a(b)&amp;c/index.html\"><img src=\"https://boards.example/a(b)&amp;c/badge.svg\" "
                    + "alt=\"state of the boards\"></a>",
            ],
            samples
        );
        Assert.True(File.Exists(copy.At("pages/badge.svg")));
        Assert.True(File.Exists(copy.At("pages/badges/SP-0007.svg")));
    }

    [Fact]
    public void Without_a_site_the_page_says_that_its_address_is_to_be_put_before()
    {
        using var copy = Made(string.Empty);
        var page = copy.Read("pages/about.html");
        Assert.Contains("[![state of the boards](badge.svg)](index.html)", page, StringComparison.Ordinal);
        Assert.Contains("Nobody told at which address these pages are found", Words(page), StringComparison.Ordinal);
    }

    private static CollectionCopy Made(string key, params string[] more)
    {
        var copy = CollectionCopy.Make();
        copy.Write("collection.yaml", copy.Read("collection.yaml") + key);
        var run = Run.Of(["report", copy.Root, "--to", copy.At("pages"), "--as-of", "2026-11-25", .. more]);
        Assert.True(run.Exit is 0, run.Out + run.Error);
        return copy;
    }

    // Quotes stand only where an attribute needs them.
    private static string Links(string page) =>
        page.Replace("\"", string.Empty, StringComparison.Ordinal).Replace(" class=external", string.Empty, StringComparison.Ordinal);

    private static string Words(string page) => WebUtility.HtmlDecode(Regex.Replace(page, "<[^>]+>", string.Empty));
}
