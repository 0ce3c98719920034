using Ohmstead.Report.Markdown;

namespace Ohmstead.Report.Tests.Markdown;

/// <summary>Texts written to break a page. Each is also checked to be harmless after an HTML parser has read it.</summary>
public class HostileStoryTests
{
    public static TheoryData<string> Markup =>
        [
            "<script>alert(1)</script>",
            "<img src=x onerror=alert(1)>",
            "<svg onload=alert(1)><script>alert(1)</script></svg>",
            "<iframe srcdoc='<script>alert(1)</script>'></iframe>",
            "text <b onmouseover=alert(1)>bold</b> text",
            "<base href='https://tide.example/'>",
            "<meta http-equiv=refresh content='0;url=https://tide.example'>",
            "<form action='https://tide.example'><input name=a></form>",
            "<style>* { background: url(https://tide.example/x) }</style>",
            "<math><mtext><table><mglyph><style><!--</style><img title=\"--&gt;&lt;img src=1 onerror=alert(1)&gt;\">",
            "<noscript><p title=\"</noscript><img src=x onerror=alert(1)>\">",
            "<template><script>alert(1)</script></template>",
            "<svg><foreignObject><iframe src='javascript:alert(1)'></iframe></foreignObject></svg>",
            "<!-- <script>alert(1)</script> -->",
            "text <!-- --> text",
            "<![CDATA[<script>alert(1)</script>]]>",
            "<?php echo 1 ?>",
            "</div></main><script>alert(1)</script>",
            "</textarea></title></style><script>alert(1)</script>",
        ];

    [Theory]
    [MemberData(nameof(Markup))]
    public void Html_is_shown_as_text_and_noted_once(string body)
    {
        var written = Written.From(body + "\n\n" + body);
        Assert.Equal(2, written.Box.TextContent.Split(body).Length - 1);
        Assert.Equal(StoryNoteKind.HtmlShownAsText, Assert.Single(written.Notes).Kind);
    }

    [Theory]
    [InlineData("# Title {onmouseover=alert(1) style=color:red}")]
    [InlineData("text {.verdict onclick=x}")]
    [InlineData("::: warning {onclick=x}\ntext\n:::")]
    [InlineData("[a]{onclick=x}")]
    [InlineData("```js {onclick=x} \"><script>\ncode\n```")]
    [InlineData("~~struck~~ ==marked== ^up^ :smile: $x^2$ [^1] - [ ] task")]
    public void What_is_not_plain_markdown_is_text(string body)
    {
        var written = Written.From(body);
        Assert.Empty(written.Box.QuerySelectorAll("[class]:not(.scroll)"));
        Assert.Empty(written.Notes);
    }

    [Theory]
    [InlineData("[a](https://tide.example '\"><script>x</script>')", "a", "title", "\"><script>x</script>")]
    [InlineData("![\"><script>x</script>](../photos/SP-0007/front.jpg)", "img", "alt", "\"><script>x</script>")]
    [InlineData("# \\\"><script\\>", "h3", "id", "story-script")]
    public void Quotes_and_angle_brackets_stay_in_their_attribute(string body, string element, string attribute, string expected)
    {
        var found = Written.From(body).Box.QuerySelector(element)!;
        Assert.Equal(expected, found.GetAttribute(attribute));
        Assert.DoesNotContain(found.Attributes, each => each.Name.Contains('>', StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("# location", "story-location")]
    [InlineData("# cookie", "story-cookie")]
    [InlineData("# __proto__", "story-proto")]
    [InlineData("# part-C12", "story-part-c12")]
    public void An_id_of_a_text_takes_the_name_of_nothing_else(string body, string id) =>
        Assert.Equal(id, Written.From(body).Box.QuerySelector("h3")!.Id);

    [Fact]
    public void Control_and_direction_characters_are_shown()
    {
        var written = Written.From("a\u001B[2J \u202Ecod\u202C `x\u2066y` [w\u200F](https://tide.example)");
        Assert.Contains("a␛[2J [U+202E]cod[U+202C]", written.Box.TextContent, StringComparison.Ordinal);
        Assert.Contains("x[U+2066]y", written.Box.TextContent, StringComparison.Ordinal);
        Assert.Contains("w[U+200F]", written.Box.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void A_text_that_imitates_a_verdict_stays_in_its_own_frame_without_the_marks_of_one()
    {
        var written = Written.From("# PASS\n\n**fit to run** 🟢\n\n| part | verdict |\n|---|---|\n| C12 | keep |\n");
        Assert.Equal("story-pass", written.Box.QuerySelector("h3")!.Id);
        Assert.Empty(written.Box.QuerySelectorAll("svg, [class]:not(.scroll):not(.reference)"));
    }

    [Theory]
    [InlineData(">", 100_000)]
    [InlineData("> ", 101)]
    [InlineData("1. ", 2000)]
    [InlineData("[ (](", 40_000)]
    [InlineData("[a](b", 30_000)]
    [InlineData("[a](", 40_000)]
    [InlineData("*a **a ", 20_000)]
    [InlineData("*a_ ", 20_000)]
    [InlineData("![a](b", 20_000)]
    [InlineData("[a]", 100_000)]
    [InlineData("|a|b\n|-|-\n", 60_000)]
    [InlineData("*a _b ", 200)]
    [InlineData("- x\n", 300_000)]
    [InlineData("# a\n\n", 60_000)]
    [InlineData("- - - - a\n", 20_000)]
    [InlineData("<a@b.example> ", 100_000)]
    [InlineData("The pen drifted. ", 130_000)]
    public void A_text_that_would_be_too_much_work_is_shown_as_written(string piece, int times)
    {
        var body = string.Concat(Enumerable.Repeat(piece, times));
        var written = Written.From(
            body + (piece.StartsWith("*a _b", StringComparison.Ordinal) ? string.Concat(Enumerable.Repeat("c_ d* ", times)) : "")
        );
        Assert.StartsWith(body, written.Box.QuerySelector("pre.as-written")!.TextContent, StringComparison.Ordinal);
        var note = Assert.Single(written.Notes);
        Assert.Equal(StoryNoteKind.ShownAsWritten, note.Kind);
        Assert.EndsWith(": the text is shown as written", note.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Lists_nested_500_deep_are_shown_as_written() =>
        ShownAsWritten(string.Concat(Enumerable.Range(0, 500).Select(level => new string(' ', level * 2) + "- a\n")));

    // Below the document each quote, the paragraph, its line and the text of that are one level each: a hundred are laid out.
    [Theory]
    [InlineData(97, false)]
    [InlineData(98, true)]
    public void Quotes_nested_a_hundred_levels_deep_are_laid_out_and_no_deeper(int quotes, bool isAsWritten)
    {
        var written = Written.From(new string('>', quotes) + " a\n");
        Assert.Equal(isAsWritten, written.Notes.Any(note => note.Kind == StoryNoteKind.ShownAsWritten));
        Assert.Equal(isAsWritten ? 0 : quotes, written.Box.QuerySelectorAll("blockquote").Length);
    }

    [Fact]
    public void Backtick_runs_of_every_length_are_shown_as_written() =>
        ShownAsWritten(string.Concat(Enumerable.Range(1, 1900).Select(length => "e" + new string('`', length))));

    [Fact]
    public void A_table_of_ten_thousand_columns_is_shown_as_written() =>
        ShownAsWritten(Row("|a", 10_000) + Row("|-", 10_000) + string.Concat(Enumerable.Repeat("|1|\n", 100)));

    [Fact]
    public void A_long_but_honest_text_is_laid_out()
    {
        var body =
            string.Concat(Enumerable.Repeat("The pen *drifted* after [an hour](https://tide.example/), see `C12` and C13.\n\n", 2000))
            + "| part | ESR |\n|---|---|\n"
            + string.Concat(Enumerable.Repeat("| C12 | 1.4 Ω |\n", 2000));
        var written = Written.From(body);
        Assert.Empty(written.Notes);
        Assert.Equal(2000, written.Box.QuerySelectorAll("p > em").Length);
        Assert.Equal(2000, written.Box.QuerySelectorAll("tbody tr").Length);
    }

    [Fact]
    public void A_thousand_headings_of_the_same_words_each_have_their_own_id()
    {
        var ids = Written
            .From(string.Concat(Enumerable.Repeat("# Pen motor\n\n", 1000)))
            .Box.QuerySelectorAll("h3")
            .Select(heading => heading.Id)
            .ToList();
        Assert.Equal("story-pen-motor-1000", ids[^1]);
        Assert.Equal(1000, ids.Distinct(StringComparer.Ordinal).Count());
    }

    [Fact]
    public void Random_pieces_of_markup_never_harm_a_page()
    {
        string[] pieces =
        [
            "[",
            "]",
            "(",
            ")",
            "![",
            "<",
            ">",
            "*",
            "_",
            "`",
            "```\n",
            "\n",
            "\n\n",
            "> ",
            "- ",
            "1. ",
            "    ",
            "|",
            "|-|-|\n",
            "# ",
            "<script>",
            "</script>",
            "<!--",
            "-->",
            "javascript:",
            "&#106;",
            "&lt;",
            "\"",
            "'",
            "\\",
            "https://tide.example",
            "C12",
            "SP-0007",
            "<a href=x onclick=y>",
            "[a]: javascript:x\n",
            "\u202E",
            "\0",
            "😀",
            "---\n",
            "<svg>",
            "]]>",
            "\t",
            "&",
        ];
        var random = new Random(7);
        for (var round = 0; round < 1500; round++)
        {
            var body = string.Concat(Enumerable.Range(0, random.Next(1, 40)).Select(_ => pieces[random.Next(pieces.Length)]));
            Assert.NotNull(Written.From(body));
        }
    }

    private static string Row(string cell, int times) => string.Concat(Enumerable.Repeat(cell, times)) + "|\n";

    private static void ShownAsWritten(string body)
    {
        var written = Written.From(body);
        Assert.NotNull(written.Box.QuerySelector("pre.as-written"));
        Assert.Equal(StoryNoteKind.ShownAsWritten, Assert.Single(written.Notes).Kind);
    }
}
