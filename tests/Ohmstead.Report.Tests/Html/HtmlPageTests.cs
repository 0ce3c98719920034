using System.Text;
using AngleSharp.Html.Parser;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Tests.Html;

public class HtmlPageTests
{
    private static readonly HtmlPage Page = new("SP-0007 <Barograph> & servo", LocalLink.ToFile("report.css", 1));

    [Fact]
    public void A_page_is_a_whole_document_in_standards_mode_without_parse_errors()
    {
        using var buffer = new PageBuffer();
        Page.Write(buffer, "C12", static (html, part) => html.Open(Tag.P).Text(part));
        var document = new HtmlParser(new HtmlParserOptions { IsStrictMode = true }).ParseDocument(Encoding.UTF8.GetString(buffer.Written));
        Assert.Equal("SP-0007 <Barograph> & servo", document.Title);
        Assert.Equal("CSS1Compat", document.CompatMode);
        Assert.Equal("C12", document.Body!.QuerySelector("p")!.TextContent);
        Harmless.Check(document.DocumentElement);
    }

    [Fact]
    public void A_page_forbids_itself_inline_scripts_and_everything_from_elsewhere()
    {
        using var buffer = new PageBuffer();
        Page.Write(buffer, 0, static (_, _) => { });
        var document = new HtmlParser().ParseDocument(Encoding.UTF8.GetString(buffer.Written));
        Assert.Equal(
            "default-src 'none'; img-src 'self'; style-src 'self'; script-src 'self'",
            document.QuerySelector("meta[http-equiv=Content-Security-Policy]")!.GetAttribute("content")
        );
        Assert.Equal("../report.css", document.QuerySelector("link[rel=stylesheet]")!.GetAttribute("href"));
    }

    [Fact]
    public void The_buffer_is_emptied_before_the_next_page_and_gives_the_same_bytes_again()
    {
        using var buffer = new PageBuffer(16);
        Page.Write(buffer, 1000, Rows);
        var first = buffer.Written.ToArray();
        Page.Write(buffer, 3, Rows);
        Page.Write(buffer, 1000, Rows);
        Assert.Equal(first, buffer.Written.ToArray());
    }

    [Fact]
    public void A_page_that_leaves_an_element_open_is_refused() =>
        Assert.Throws<InvalidOperationException>(() =>
        {
            using var buffer = new PageBuffer();
            Page.Write(buffer, 0, static (html, _) => html.Open(Tag.P));
        });

    [Fact]
    public void Writing_a_page_again_takes_no_memory_for_its_elements()
    {
        using var buffer = new PageBuffer();
        Page.Write(buffer, 1000, Rows);
        var before = GC.GetAllocatedBytesForCurrentThread();
        Page.Write(buffer, 1000, Rows);
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 2000);
    }

    private static void Rows(HtmlWriter html, int count)
    {
        using var table = html.Open(Tag.Table);
        for (var i = 0; i < count; i++)
        {
            using var row = html.Open(Tag.Tr);
            html.Open(Tag.Td, ClassName.Number).Text(i);
            html.Open(Tag.Td).With(TextAttribute.Title, "as found & out of circuit").Text("391 µF < limit");
        }
    }
}
