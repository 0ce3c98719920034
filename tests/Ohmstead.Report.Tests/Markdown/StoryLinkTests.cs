using Ohmstead.Report.Markdown;

namespace Ohmstead.Report.Tests.Markdown;

public class StoryLinkTests
{
    [Theory]
    [InlineData("[tables](https://tide.example/a?b=1&c=2)", "https://tide.example/a?b=1&c=2")]
    [InlineData("<https://tide.example/>", "https://tide.example/")]
    [InlineData("<keeper@tide.example>", "mailto:keeper@tide.example")]
    [InlineData("[tables][t]\n\n[t]: http://tide.example/ 'title'", "http://tide.example/")]
    [InlineData("[other board](SP-0009.md)", "../boards/SP-0009.html")]
    [InlineData("[its C3](./SP-0009.md#C3)", "../boards/SP-0009.html#p-C3")]
    [InlineData("[drawing](<../papers/servo drawing.pdf>)", "../papers/servo%20drawing.pdf")]
    [InlineData("[drawing](../papers/servo%20drawing.pdf)", "../papers/servo%20drawing.pdf")]
    [InlineData("# Pen motor\n\n[above](#pen-motor)", "#story-pen-motor")]
    [InlineData("[the part](#C12)", "#p-C12")]
    public void A_link_leads_where_it_says(string body, string expected)
    {
        var written = Written.From(body);
        Assert.Equal(expected, Assert.Single(written.Box.QuerySelectorAll("a")).GetAttribute("href"));
        Assert.Empty(written.Notes);
    }

    // Rows of attacks: schemes in every spelling, hosts without a scheme, and ways out of the collection.
    [Theory]
    [InlineData("[a](javascript:alert)")]
    [InlineData("[a](JaVaScRiPt:alert)")]
    [InlineData("[a](&#106;avascript:alert)")]
    [InlineData("[a](java&Tab;script:alert)")]
    [InlineData("[a](java&NewLine;script:alert)")]
    [InlineData("[a](&#1;javascript:alert)")]
    [InlineData("[a](<java script:alert>)")]
    [InlineData("[a](javascript&colon;alert)")]
    [InlineData("[a](javascript\\:alert)")]
    [InlineData("[a](vbscript:x)")]
    [InlineData("[a](data:text/html;base64,PHNjcmlwdD4=)")]
    [InlineData("[a](file:///etc/passwd)")]
    [InlineData("[a](blob:https://tide.example/1)")]
    [InlineData("[a](view-source:https://tide.example/)")]
    [InlineData("[a](//tide.example/)")]
    [InlineData("[a](\\\\\\\\tide.example\\\\x)")]
    [InlineData("[a](/\\tide.example)")]
    [InlineData("[a](https:tide.example)")]
    [InlineData("[a](https://good.example@tide.example/)")]
    [InlineData("[a][b]\n\n[b]: javascript:alert")]
    [InlineData("[a](/etc/passwd)")]
    [InlineData("[a](../../etc/passwd)")]
    [InlineData("[a](..\\\\x)")]
    [InlineData("[a](C:\\\\x)")]
    [InlineData("[a](C:/x)")]
    [InlineData("[a](%2e%2e/%2e%2e/etc/passwd)")]
    [InlineData("[a](..%2f..%2fetc/passwd)")]
    [InlineData("[a](%252e%252e/x)")]
    [InlineData("[a](x%00y)")]
    [InlineData("[a](x%0Ay)")]
    [InlineData("[a](..%5cx)")]
    [InlineData("[a](%E2%80%AEx)")]
    [InlineData("[a]()")]
    [InlineData("[a](#)")]
    [InlineData("[a](#nothing)")]
    [InlineData("[a](..)")]
    public void A_link_that_is_not_acceptable_keeps_its_words_only(string body)
    {
        var written = Written.From(body);
        Assert.Empty(written.Box.QuerySelectorAll("a"));
        Assert.Equal("a", written.Box.TextContent.Trim());
        var note = Assert.Single(written.Notes);
        Assert.Equal((StoryNoteKind.LinkRefused, 1), (note.Kind, note.Line));
        Assert.StartsWith("link dropped, its text kept: ", note.Message, StringComparison.Ordinal);

        // What a check of the record says of it, which knows no page: all but a name that only the page can look up.
        if (body != "[a](#nothing)")
        {
            Assert.Equal(
                new(1, 1, body.Contains('\n', StringComparison.Ordinal) ? 6 : body.Length),
                Assert.Single(StoryLinks.Instance.Dropped(body, "boards")).Spot
            );
        }
    }

    [Theory]
    [InlineData("word\n\n- <javascript:alert>\n", 3, 3)]
    [InlineData("| a | b |\n| - | - |\n| x | [y](data:text/html,z) |\n", 3, 7)]
    [InlineData("🔋 ![x](#here)\n", 1, 3)]
    [InlineData("> [a\n> b](vbscript:x)\n", 1, 3)]
    public void A_link_that_a_page_leaves_out_is_told_where_it_stands(string body, int line, int column)
    {
        var link = Assert.Single(StoryLinks.Instance.Dropped(body, "boards"));
        Assert.Equal((line, column), (link.Spot.Line, link.Spot.Column));
    }

    [Theory]
    [InlineData("no link: javascript:alert")]
    [InlineData("`[a](javascript:alert)`")]
    [InlineData("[a](https://tide.example/) <keeper@tide.example> ![x](../photos/x.png) [b](#pen-motor)")]
    public void What_is_no_link_and_what_leads_somewhere_is_not_told(string body) =>
        Assert.Empty(StoryLinks.Instance.Dropped(body, "boards"));

    [Fact]
    public void An_autolink_of_another_scheme_is_text()
    {
        var written = Written.From("<javascript:alert>");
        Assert.Empty(written.Box.QuerySelectorAll("a"));
        Assert.Equal("javascript:alert", written.Box.TextContent.Trim());
        Assert.Equal(StoryNoteKind.LinkRefused, Assert.Single(written.Notes).Kind);
    }

    [Theory]
    [InlineData("[https://good.example](https://tide.example/)", "(tide.example)")]
    [InlineData("[good.example/login](https://tide.example/)", "(tide.example)")]
    [InlineData("[go to **good**.example](https://tide.example/)", "(tide.example)")]
    [InlineData("[good.example.](https://good.example.tide.example/)", "(good.example.tide.example)")]
    [InlineData("[good\u3002example](https://tide.example/)", "(tide.example)")]
    [InlineData("[tidе.example](https://tide.example/)", "(tide.example)")]
    [InlineData("[help@good.example](mailto:x@tide.example)", "(tide.example)")]
    [InlineData("![good.example](https://tide.example/x.png)", "(tide.example)")]
    [InlineData("[https://tide.example/tables](https://tide.example/other)", null)]
    [InlineData("[TIDE.example](https://tide.example/)", null)]
    [InlineData("[tide tables, 4.7 µF. Then more](https://tide.example/)", null)]
    [InlineData("<https://tide.example/>", null)]
    public void Words_that_name_another_host_are_followed_by_the_true_one(string body, string? expected)
    {
        var written = Written.From(body);
        Assert.Equal(expected, written.Box.QuerySelector("span.host")?.TextContent);
        Assert.Single(written.Box.QuerySelectorAll("a"));
    }

    [Fact]
    public void No_link_stands_inside_another()
    {
        var written = Written.From("[C12 <https://a.example/> ![x](https://b.example/x.png)](https://tide.example/)");
        Assert.Empty(written.Box.QuerySelectorAll("a a"));
        Assert.NotEmpty(written.Box.QuerySelectorAll("a"));
    }

    [Fact]
    public void A_picture_of_the_collection_is_shown_with_its_description()
    {
        var written = Written.From("![Front, \"before\"](../photos/SP-0007/front.jpg \"as <found>\")");
        var picture = written.Box.QuerySelector("img")!;
        Assert.Equal("../photos/SP-0007/front.jpg", picture.GetAttribute("src"));
        Assert.Equal("Front, \"before\"", picture.GetAttribute("alt"));
        Assert.Equal("as <found>", picture.GetAttribute("title"));
        Assert.Equal("lazy", picture.GetAttribute("loading"));
        Assert.Empty(written.Notes);
    }

    [Theory]
    [InlineData("![x](https://video.example/watch?v=1)")]
    [InlineData("![x](http://tide.example/x.png)")]
    public void A_picture_from_elsewhere_is_a_link_and_is_not_loaded(string body)
    {
        var written = Written.From(body);
        Assert.Empty(written.Box.QuerySelectorAll("img"));
        Assert.Equal("x", Assert.Single(written.Box.QuerySelectorAll("a")).TextContent);
        Assert.Equal(StoryNoteKind.PictureElsewhere, Assert.Single(written.Notes).Kind);
    }

    [Theory]
    [InlineData("![x](javascript:alert)", StoryNoteKind.LinkRefused)]
    [InlineData("![x](data:image/svg+xml,x)", StoryNoteKind.LinkRefused)]
    [InlineData("![x](../../../secret.png)", StoryNoteKind.LinkRefused)]
    [InlineData("![x](#C12)", StoryNoteKind.LinkRefused)]
    [InlineData("![x](../photos/SP-0007/Front.jpg)", StoryNoteKind.FileMissing)]
    [InlineData("[x](nothing.md)", StoryNoteKind.FileMissing)]
    public void A_picture_or_file_that_is_not_there_keeps_its_words_only(string body, StoryNoteKind kind)
    {
        var written = Written.From(body);
        Assert.Equal("<p>x</p>", written.Inner);
        Assert.Equal(kind, Assert.Single(written.Notes).Kind);
    }
}
