namespace Ohmstead.Report.Tests.Markdown;

public class LinkedNamesTests
{
    [Theory]
    [InlineData("C12 was out.", "C12")]
    [InlineData("Both C12/C13 (and R4).", "C12 C13 R4")]
    [InlineData("C12-C13 in a row", "C12 C13")]
    [InlineData("C12's print is worn", "C12")]
    [InlineData("see SP-0009, not SP-0010", "SP-0009")]
    [InlineData("SP-0009-", "SP-0009")]
    [InlineData("**C12** and *R4*", "C12 R4")]
    [InlineData("# About C12", "C12")]
    [InlineData("XC12 C123 c12 C12a _C12 ÄC12 C12é 4C12 SP-00091 ASP-0009", "")]
    [InlineData("C99 is not on this board", "")]
    [InlineData("`C12` is code", "")]
    [InlineData("[about C12](https://tide.example/) has one target", "about C12")]
    [InlineData("C\u202E12", "")]
    public void A_name_in_the_text_leads_to_what_it_names(string body, string links) =>
        Assert.Equal(links, string.Join(' ', Written.From(body).Box.QuerySelectorAll("a").Select(link => link.TextContent)));

    [Fact]
    public void The_words_stay_as_they_were()
    {
        const string body = "C12-C13, then SP-0007: R4 (C99) - C12.";
        var written = Written.From(body);
        Assert.Equal(body, written.Box.TextContent.Trim());
        Assert.Equal("#p-C12", written.Box.QuerySelector("a")!.GetAttribute("href"));
        Assert.Equal("../boards/SP-0007.html", written.Box.QuerySelector("a.reference")!.GetAttribute("href"));
    }

    [Fact]
    public void A_name_in_a_table_leads_to_its_row() =>
        Assert.Equal("#p-R4", Written.From("| part |\n|---|\n| R4 |").Box.QuerySelector("td > a")!.GetAttribute("href"));
}
