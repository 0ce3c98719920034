using System.Globalization;
using System.Reflection;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Tests.Html;

public class HtmlWriterTests
{
    [Fact]
    public void A_row_of_a_parts_table_reads_as_written()
    {
        var source = Probe.Source(html =>
        {
            using (html.Open(Tag.Tr).With(ElementId.For(IdPrefix.Part, "C12")))
            {
                html.Open(Tag.Th).With(FixedAttribute.ScopeRow).Text("C12");
                html.Open(Tag.Td, ClassName.Number).Text("391 µF");
            }
        });
        Assert.Equal("<tr id=p-C12><th scope=row>C12<td class=number>391\u00A0µF", source);
    }

    [Fact]
    public void A_void_element_has_no_end_tag() =>
        Assert.Equal(
            "a<br>b",
            Probe.Source(html =>
            {
                html.Text("a");
                html.Open(Tag.Br).Close();
                html.Text("b");
            })
        );

    [Fact]
    public void Numbers_are_written_the_same_in_every_culture()
    {
        var before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = new CultureInfo("de-DE");
        try
        {
            Assert.Equal(
                """−1.50<span>−12</span><rect x=0.5 width=-3 />""",
                Probe.Source(html =>
                {
                    html.Text(-1.50m);
                    html.Open(Tag.Span).Text(-12);
                    html.Open(Tag.Rect).With(NumberAttribute.X, 0.5m).With(NumberAttribute.Width, -3).Close();
                })
            );
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    // HTML, 13.1.2.3: an unquoted value is not empty and holds no blank, quote, equals sign, angle bracket or backtick.
    [Theory]
    [InlineData("")]
    [InlineData(" ")]
    [InlineData("a b")]
    [InlineData("a\tb")]
    [InlineData("a\nb")]
    [InlineData("a\fb")]
    [InlineData("a=b")]
    [InlineData("a>b")]
    [InlineData("a<b")]
    [InlineData("a`b")]
    [InlineData("a'b")]
    [InlineData("a\"b")]
    [InlineData("a/")]
    [InlineData("&amp;x=1")]
    [InlineData("11.5 µF")]
    [InlineData("\" onclick=x")]
    [InlineData("x onclick=x")]
    [InlineData("plain-1.5")]
    public void A_value_of_an_attribute_comes_back_as_it_was_whatever_its_characters(string value)
    {
        var body = Probe.Body(html =>
        {
            html.Open(Tag.Img).With(TextAttribute.Alt, value).Close();
            using (html.Open(Tag.Svg).With(TextAttribute.AriaLabel, value))
            {
                html.Open(Tag.Path).With(TextAttribute.PathData, value).Close();
                html.Open(Tag.Path).With(TextAttribute.Transform, value).Close();
            }

            html.Open(Tag.Td).With(TextAttribute.Column, value).Text("x");
        });
        // The one control character that is shown as its picture.
        var expected = value.Replace('\f', '\u240C');
        Assert.Equal(expected, body.QuerySelector("img")!.GetAttribute("alt"));
        Assert.Equal(expected, body.QuerySelector("svg")!.GetAttribute("aria-label"));
        Assert.Equal(["d", "transform"], body.QuerySelectorAll("svg > path").Select(path => Assert.Single(path.Attributes).Name));
        Assert.Equal(expected, body.QuerySelectorAll("path")[1].GetAttribute("transform"));
        Assert.All(body.QuerySelectorAll("*"), element => Assert.InRange(element.Attributes.Length, 0, 1));
    }

    // SVG 2, 9.3.9 and 8.6: numbers are parted by blanks or a comma.
    [Fact]
    public void Numbers_of_a_drawing_are_parted_by_commas_and_need_no_quotes() =>
        Assert.Equal(
            "<path d=M0,1l-4,-6h8z />",
            Probe.Source(html => html.Open(Tag.Path).With(TextAttribute.PathData, "M0 1l-4 -6h8z").Close())
        );

    // HTML, 4.4.1: the end of a paragraph may be left out before such an element and at the end of what it stands in, unless that is a
    // link.
    [Fact]
    public void The_end_of_a_paragraph_is_written_where_HTML_does_not_say_it()
    {
        Assert.Equal(
            "<div><p>a<p>b<ul><li>c\n</ul><p>d</div>",
            Probe.Source(html =>
            {
                using var box = html.Open(Tag.Div);
                html.Open(Tag.P).Text("a");
                html.Open(Tag.P).Text("b");
                using (html.Open(Tag.Ul))
                {
                    html.Open(Tag.Li).Text("c");
                }

                html.Open(Tag.P).Text("d");
            })
        );
        Assert.Equal(
            "<div><p>a</p>\nb<p>c</p>\n<a>d</a></div>",
            Probe.Source(html =>
            {
                using var box = html.Open(Tag.Div);
                html.Open(Tag.P).Text("a");
                html.Text("b");
                html.Open(Tag.P).Text("c");
                html.Open(Tag.A).Text("d");
            })
        );
        Assert.Equal(
            "<a><p>a</p>\n</a>",
            Probe.Source(html =>
            {
                using var link = html.Open(Tag.A);
                html.Open(Tag.P).Text("a");
            })
        );
    }

    // Where nothing follows, not even a line break, a style can tell an empty cell by its being empty.
    [Fact]
    public void An_empty_cell_is_empty() =>
        Assert.Equal(
            "<table><tbody><tr><th>a<td><tr><th>b<td></table>",
            Probe.Source(html =>
            {
                using var table = html.Open(Tag.Table);
                using var rows = html.Open(Tag.TBody);
                foreach (var name in new[] { "a", "b" })
                {
                    using var row = html.Open(Tag.Tr);
                    html.Open(Tag.Th).Text(name);
                    html.Open(Tag.Td).Close();
                }
            })
        );

    [Fact]
    public void Line_breaks_at_the_start_of_preformatted_text_survive_the_parser() =>
        Assert.Equal("\n\nfirst", Probe.Body(html => html.Open(Tag.Pre).Text("\n\nfirst")).FirstElementChild!.TextContent);

    [Fact]
    public void A_drawing_is_read_as_a_drawing_with_its_title_and_labels()
    {
        var body = Probe.Body(html =>
        {
            using (html.Open(Tag.Svg).With(FixedAttribute.RoleImage).With(TextAttribute.ViewBox, "0 0 10 10"))
            {
                html.Open(Tag.Title).Text("<script>x</script>]]>");
                html.Open(Tag.Path).With(TextAttribute.PathData, "M1 1h8").Close();
                html.Open(Tag.Text).With(NumberAttribute.X, 1).Text("</svg><img src=x onerror=y>");
            }
        });
        Harmless.Check(body);
        Assert.Equal("<script>x</script>]]>", body.QuerySelector("svg > title")!.TextContent);
        Assert.Equal("</svg><img src=x onerror=y>", body.QuerySelector("svg > text")!.TextContent);
        Assert.Equal("0,0,10,10", body.QuerySelector("svg")!.GetAttribute("viewBox"));
    }

    [Fact]
    public void An_attribute_after_content_is_refused() =>
        Refused(html =>
        {
            var cell = html.Open(Tag.Td);
            html.Text("x");
            cell.With(ClassName.Number);
        });

    [Fact]
    public void An_attribute_for_an_element_that_is_not_the_last_one_is_refused() =>
        Refused(html =>
        {
            var row = html.Open(Tag.Tr);
            html.Open(Tag.Td);
            row.With(ClassName.Number);
        });

    [Fact]
    public void The_same_attribute_twice_is_refused() =>
        Refused(html => html.Open(Tag.Td).With(FixedAttribute.ScopeRow).With(FixedAttribute.ScopeColumn).Close());

    [Fact]
    public void Content_in_a_void_element_is_refused() => Refused(html => html.Open(Tag.Img).Text("x"));

    [Fact]
    public void An_element_left_open_is_refused() => Refused(html => html.Open(Tag.P));

    [Fact]
    public void Elements_ended_in_the_wrong_order_are_refused() =>
        Refused(html =>
        {
            var outer = html.Open(Tag.P);
            html.Open(Tag.Em);
            outer.Close();
        });

    [Fact]
    public void An_element_ended_twice_is_refused() =>
        Refused(html =>
        {
            var element = html.Open(Tag.P);
            element.Close();
            element.Close();
        });

    [Fact]
    public void Only_a_link_leads_somewhere_and_only_a_picture_shows_a_file()
    {
        Assert.True(ExternalLink.TryRead("https://tide.example/", out var elsewhere, out _));
        Refused(html => html.Open(Tag.Link).To(elsewhere).Close());
        Refused(html => html.Open(Tag.A).Showing(LocalLink.ToFile("a.png")).Close());
        Refused(html => html.Open(Tag.A).StyleSheet(LocalLink.ToFile("a.css")).Close());
    }

    [Fact]
    public void The_document_type_comes_first() =>
        Refused(html =>
        {
            html.Text("x");
            html.DocumentType();
        });

    [Fact]
    public void A_page_nested_deeper_than_the_first_stack_is_written_whole()
    {
        var source = Probe.Source(html => Nest(html, 200));
        Assert.Equal(200, source.Split("<em>").Length - 1);
        Assert.Equal(200, source.Split("</em>").Length - 1);
    }

    [Fact]
    public void No_element_can_run_load_or_embed()
    {
        string[] never =
        [
            "script",
            "style",
            "iframe",
            "object",
            "embed",
            "applet",
            "base",
            "form",
            "input",
            "button",
            "textarea",
            "select",
            "template",
            "noscript",
            "frame",
            "frameset",
            "portal",
            "foreignObject",
            "image",
            "animate",
            "set",
            "audio",
            "video",
            "source",
            "track",
            "math",
            "plaintext",
            "xmp",
        ];
        Assert.Empty(Members<Tag>().Select(tag => tag.Name).Intersect(never, StringComparer.OrdinalIgnoreCase));
    }

    [Fact]
    public void A_use_shows_a_shape_of_the_page_itself_and_cannot_be_given_an_address()
    {
        Assert.Equal(
            "<use href=#i x=4 />",
            Probe.Source(html => html.Open(Tag.Use).Using(SharedShape.Inside).With(NumberAttribute.X, 4).Close())
        );
        Assert.Throws<InvalidOperationException>(() => Probe.Source(html => html.Open(Tag.Use).To(LocalLink.ToFile("other.svg"))));
        Assert.Throws<InvalidOperationException>(() => Probe.Source(html => html.Open(Tag.A).Using(SharedShape.Inside)));
    }

    [Fact]
    public void No_attribute_holds_a_script_a_style_or_an_address()
    {
        var names = Members<TextAttribute>()
            .Select(attribute => AttributeNames(element => element.With(attribute, "x")))
            .Concat(Members<FixedAttribute>().Select(attribute => AttributeNames(element => element.With(attribute))))
            .Concat(Members<NumberAttribute>().Select(attribute => AttributeNames(element => element.With(attribute, 1))))
            .SelectMany(found => found)
            .ToList();
        Assert.Contains("alt", names);
        Assert.DoesNotContain(names, name => name.StartsWith("on", StringComparison.Ordinal));
        Assert.Empty(
            names.Intersect(
                ["style", "src", "srcset", "srcdoc", "href", "xlink:href", "action", "formaction", "data", "ping", "poster"],
                StringComparer.Ordinal
            )
        );
    }

    private delegate Element Giving(Element element);

    private static IEnumerable<T> Members<T>()
        where T : class =>
        typeof(T).GetProperties(BindingFlags.Public | BindingFlags.Static).Select(property => (T)property.GetValue(null)!);

    private static List<string> AttributeNames(Giving give) =>
        [.. Probe.Body(html => give(html.Open(Tag.P)).Close()).FirstElementChild!.Attributes.Select(attribute => attribute.Name)];

    private static void Nest(HtmlWriter html, int levels)
    {
        if (levels > 0)
        {
            using var element = html.Open(Tag.Em);
            Nest(html, levels - 1);
        }
    }

    private static void Refused(Action<HtmlWriter> write) => Assert.Throws<InvalidOperationException>(() => Probe.Source(write));
}
