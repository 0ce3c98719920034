using System.Globalization;
using Ohmstead.Report.Markdown;
using Ohmstead.Report.Tests.Html;

namespace Ohmstead.Report.Tests.Markdown;

public class StoryWriterTests
{
    // The expected forms follow the CommonMark specification 0.31.2, section by section.
    [Theory]
    [InlineData("The pen *drifted*.", "<p>The pen <em>drifted</em>.</p>")]
    [InlineData("The pen **drifted**.", "<p>The pen <strong>drifted</strong>.</p>")]
    [InlineData("`a < b`", "<p><code>a &lt; b</code></p>")]
    [InlineData("one  \ntwo", "<p>one<br>\ntwo</p>")]
    [InlineData("one\\\ntwo", "<p>one<br>\ntwo</p>")]
    [InlineData("one\ntwo", "<p>one\ntwo</p>")]
    [InlineData("a\n\n---\n\nb", "<p>a</p><hr>\n<p>b</p>")]
    [InlineData("> said\n> the keeper", "<blockquote><p>said\nthe keeper</p></blockquote>")]
    [InlineData("- a\n- b", "<ul><li>a\n</li><li>b\n</li></ul>")]
    [InlineData("- a\n\n- b", "<ul><li><p>a</p></li><li><p>b</p></li></ul>")]
    [InlineData("1. a\n2. b", "<ol><li>a\n</li><li>b\n</li></ol>")]
    [InlineData("7. a", "<ol start=\"7\"><li>a\n</li></ol>")]
    [InlineData("```text onclick=x\na < b\n\nc\n```", "<pre tabindex=\"0\"><code>a &lt; b\n\nc</code></pre>")]
    [InlineData("    indented", "<pre tabindex=\"0\"><code>indented</code></pre>")]
    [InlineData("5 &Omega; &lt; 6", "<p>5 Ω &lt; 6</p>")]
    [InlineData("\\*no emphasis\\*", "<p>*no emphasis*</p>")]
    [InlineData("R = 5 < 6", "<p>R = 5 &lt; 6</p>")]
    [InlineData("", "")]
    public void Markdown_is_laid_out(string body, string expected)
    {
        var written = Written.From(body);
        Assert.Equal(expected, written.Inner);
        Assert.Empty(written.Notes);
    }

    [Fact]
    public void A_table_has_column_heads_and_keeps_its_alignment()
    {
        var written = Written.From("| part | ESR | mark |\n|---|--:|:-:|\n| C12 | 1.4 Ω | a |\n| C13 | 0.1 Ω |");
        var table = written.Box.QuerySelector("div.scroll[tabindex='0'] > table")!;
        Assert.Equal(["part", "ESR", "mark"], table.QuerySelectorAll("thead th[scope=col]").Select(cell => cell.Words()));
        Assert.Equal(2, table.QuerySelectorAll("tbody tr").Length);
        Assert.Equal(["1.4 Ω", "0.1 Ω"], table.QuerySelectorAll("td.right").Select(cell => cell.Words()));
        Assert.Equal("a", table.QuerySelector("td.centred")!.Words());
        Assert.Empty(written.Notes);
    }

    [Fact]
    public void Headings_stand_below_those_of_the_page_and_skip_no_rank()
    {
        var written = Written.From("## Story\n\n#### Pen\n\n## Proof\n\n# Later\n\n## Next\n\n### Third\n\n#### Fourth\n\n##### Fifth");
        Assert.Equal(
            ["H3 Story", "H4 Pen", "H3 Proof", "H3 Later", "H4 Next", "H5 Third", "H6 Fourth", "H6 Fifth"],
            written.Box.QuerySelectorAll("h1, h2, h3, h4, h5, h6").Select(heading => $"{heading.TagName} {heading.Words()}")
        );
    }

    [Fact]
    public void Headings_of_the_same_words_have_ids_of_their_own()
    {
        var written = Written.From("# Pen motor\n\n# Pen *motor*\n\n# Pen motor 2\n\n# !!\n\n# Überblick");
        Assert.Equal(
            ["story-pen-motor", "story-pen-motor-2", "story-pen-motor-2-2", "story-heading", "story-überblick"],
            written.Box.QuerySelectorAll("h3").Select(heading => heading.Id)
        );
    }

    [Fact]
    public void The_same_text_gives_the_same_bytes()
    {
        const string body =
            "# A\n\nC12 and [a](https://tide.example), ![x](https://tide.example/x.png)\n\n| a | b |\n|---|---|\n| 1 | 2 |\n";
        Assert.Equal(Written.From(body).Source, Written.From(body).Source);
    }

    [Theory]
    [InlineData("tr-TR")]
    [InlineData("ar-SA")]
    [InlineData("th-TH")]
    public void The_same_text_gives_the_same_bytes_in_every_culture(string culture)
    {
        const string body = "# IMPEDANCE\n\n7. first\n8. second\n\n[a](HTTPS://TIDE.EXAMPLE/I)\n";
        var expected = Written.From(body).Source;
        var before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = new CultureInfo(culture);
        try
        {
            Assert.Equal(expected, Written.From(body).Source);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }

        Assert.Contains("id=story-impedance", expected, StringComparison.Ordinal);
    }

    [Fact]
    public void Line_ends_of_either_kind_give_the_same_page()
    {
        const string body = "# A\n\none  \ntwo\n\n```\ncode\n\nmore\n```\n\n| a |\n|---|\n| 1 |\n";
        Assert.Equal(Written.From(body).Source, Written.From(body.ReplaceLineEndings("\r\n")).Source);
    }

    [Fact]
    public void Notes_come_in_order_of_line_with_the_line_in_the_body()
    {
        var written = Written.From("text\n\n[a](javascript:x)\n\n![](../photos/SP-0007/front.jpg)\n\n<b>x</b>\n\n- [c](missing.md)\n");
        Assert.Equal(
            [
                (StoryNoteKind.LinkRefused, 3),
                (StoryNoteKind.PictureWithoutDescription, 5),
                (StoryNoteKind.HtmlShownAsText, 7),
                (StoryNoteKind.FileMissing, 9),
            ],
            written.Notes.Select(note => (note.Kind, note.Line))
        );
        Assert.All(written.Notes, note => Assert.DoesNotContain('\n', note.Message));
    }
}
