using System.Text;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Ohmstead.Publishing;
using Ohmstead.Records.Model;
using Ohmstead.Report.Html;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Publishing;

/// <summary>The feed, read by an XML parser and held against RFC 4287 and RFC 4151.</summary>
public sealed partial class AtomFeedTests
{
    private static readonly XNamespace Atom = "http://www.w3.org/2005/Atom";

    // RFC 4287, 4.1.1 and 4.1.2: what a feed and an entry must have, once each; 3.3: dates.
    [Fact]
    public void It_has_what_a_feed_and_its_entries_must_have()
    {
        using var copy = DataFilesTests.Report();
        var feed = XDocument.Load(copy.At("pages/feed.xml")).Root!;
        Assert.Equal(Atom + "feed", feed.Name);
        Assert.Single(feed.Elements(Atom + "author"));
        var entries = feed.Elements(Atom + "entry").ToArray();
        Assert.NotEmpty(entries);
        Assert.All(entries.Prepend(feed), element =>
        {
            Assert.All(["id", "title", "updated"], (string name) => Assert.Single(element.Elements(Atom + name)));
            Assert.Matches(@"^\d{4}-\d\d-\d\dT00:00:00Z$", element.Element(Atom + "updated")!.Value);
        });
        var ids = entries.Select(Id).ToArray();
        Assert.Distinct(ids);
        Assert.All(ids, id => Assert.Matches(Tag, id));
        Assert.Equal(entries.Select(Updated).OrderDescending(StringComparer.Ordinal), entries.Select(Updated));
        Assert.Equal(Updated(entries[0]), Updated(feed));
    }

    [Fact]
    public void Every_date_comes_out_of_the_records_and_none_from_a_clock()
    {
        using var copy = DataFilesTests.Report();
        var before = copy.Read("pages/feed.xml");
        Run.Of("report", copy.Root, "--to", copy.At("pages"), "--as-of", "2031-01-01");
        Assert.Equal(before, copy.Read("pages/feed.xml"));
        Assert.All(XDocument.Parse(before).Root!.Elements(Atom + "entry"), entry =>
        {
            var board = Address(entry).Split('/', '.')[1];
            Assert.Contains(Updated(entry)[..10], copy.Read($"boards/{board}.md"), StringComparison.Ordinal);
        });
    }

    [Fact]
    public void Every_entry_leads_to_its_visit_on_the_page_of_its_board()
    {
        using var copy = DataFilesTests.Report();
        Assert.All(XDocument.Load(copy.At("pages/feed.xml")).Root!.Elements(Atom + "entry"), entry =>
        {
            var parts = Address(entry).Split('#');
            Assert.Contains($" id={parts[1]}", copy.Read("pages/" + parts[0]), StringComparison.Ordinal);
        });
    }

    [Fact]
    public void A_visit_that_is_added_moves_no_id()
    {
        using var copy = DataFilesTests.Report();
        string[] Ids() => [.. XDocument.Load(copy.At("pages/feed.xml")).Root!.Elements(Atom + "entry").Select(Id)];
        var before = Ids();
        Run.Of("found", "SP-0007", "C3", "--severity", "note", "--what", "dust", "--by", "RK", "--in", copy.Root, "--as-of", "2026-11-25");
        copy.Write(
            "boards/SP-0007.md",
            copy.Read("boards/SP-0007.md")
                .Replace("bench:\n", "bench:\n  - date: 2026-11-24\n    by: RK\n    note: dusted\n", StringComparison.Ordinal)
        );
        Run.Of("report", copy.Root, "--to", copy.At("pages"), "--as-of", "2026-11-25");
        Assert.Contains("v-2026-11-24", Assert.Single(Ids().Except(before)), StringComparison.Ordinal);
    }

    [Fact]
    public void With_a_site_every_id_and_link_is_a_whole_address_of_it()
    {
        using var copy = DataFilesTests.Report("--site", "https://boards.example.org/pad");
        var feed = XDocument.Load(copy.At("pages/feed.xml")).Root!;
        string[] all =
        [
            .. feed.Descendants(Atom + "id").Select(id => id.Value),
            .. feed.Descendants(Atom + "link").Select(link => link.Attribute("href")!.Value),
        ];
        Assert.All(all, address => Assert.StartsWith("https://boards.example.org/pad/", address, StringComparison.Ordinal));
        Assert.Equal(
            "https://boards.example.org/pad/feed.xml",
            feed.Elements(Atom + "link").Single(link => link.Attribute("rel")!.Value == "self").Attribute("href")!.Value
        );
    }

    [Theory]
    [InlineData("boards")]
    [InlineData("javascript:alert(1)")]
    [InlineData("file:///tmp")]
    [InlineData("https://user@example.org/")]
    [InlineData("https://example.org/?a=b")]
    public void What_is_no_address_of_a_site_is_refused(string address)
    {
        using var copy = CollectionCopy.Make();
        var run = Run.Of("report", copy.Root, "--to", copy.At("pages"), "--site", address);
        Assert.Equal(2, run.Exit);
        Assert.Contains("is no address of a site", run.Error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(copy.At("pages")));
    }

    [Theory]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("]]>&amp;<!--")]
    [InlineData("a\u0000b\u001b\u202e\ufffe\ud800c")]
    public void Hostile_text_is_text_in_the_feed(string hostile)
    {
        var collection = new CollectionFile("collection.yaml", hostile);
        var change = new Change("SP-1", new(2026, 3, 14), ElementId.For(IdPrefix.Visit, "2026-03-14"), hostile, hostile, [hostile]);
        var feed = XDocument.Parse(Encoding.UTF8.GetString(AtomFeed.Write(collection, Site.For(null, "a"), [change]))).Root!;
        Assert.All(feed.Descendants(), element => Assert.Equal(Atom, element.Name.Namespace));
        Assert.Empty(feed.Descendants(Atom + "script"));
        Assert.All(feed.Value, c => Assert.False(c != '\n' && char.IsControl(c), $"U+{(int)c:X4}"));
    }

    [Fact]
    public void A_collection_that_nobody_has_touched_has_a_feed_without_entries()
    {
        var feed = XDocument.Parse(Encoding.UTF8.GetString(AtomFeed.Write(CollectionFile.Nameless, Site.For(null, "Boards"), []))).Root!;
        Assert.Empty(feed.Elements(Atom + "entry"));
        Assert.Equal("1970-01-01T00:00:00Z", Updated(feed));
    }

    private static string Id(XElement entry) => entry.Element(Atom + "id")!.Value;

    private static string Updated(XElement entry) => entry.Element(Atom + "updated")!.Value;

    private static string Address(XElement entry) => entry.Elements(Atom + "link").Single().Attribute("href")!.Value;

    // RFC 4151, 2.1: tag, authority (a name of DNS), a day, what the authority calls the thing.
    [GeneratedRegex(@"^tag:[a-z0-9.-]+,\d{4}-\d\d-\d\d:[A-Za-z0-9\-._~!$&'()*+,;=:@/?%]+$", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Tag { get; }
}
