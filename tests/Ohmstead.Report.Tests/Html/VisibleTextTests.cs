using System.Text;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Tests.Html;

public class VisibleTextTests
{
    [Theory]
    [InlineData("<script>alert(1)</script>", "&lt;script&gt;alert(1)&lt;/script&gt;")]
    [InlineData("R1 & R2", "R1 &amp; R2")]
    [InlineData("\" onload=\"x", "&quot; onload=&quot;x")]
    [InlineData("' onload='x", "&#39; onload=&#39;x")]
    [InlineData("&lt; stays what was typed", "&amp;lt; stays what was typed")]
    [InlineData("± Ω µ 😀", "± Ω µ 😀")]
    [InlineData("tab\tand\nline", "tab\tand\nline")]
    [InlineData("line\r\nline", "line\nline")]
    [InlineData("lone\rreturn", "lone␍return")]
    [InlineData("\0\u0001\b\u001B[2J\u007F", "␀␁␈␛[2J␡")]
    [InlineData("\u0085\u009B", "[U+0085][U+009B]")]
    [InlineData("C\u202E21\u202C", "C[U+202E]21[U+202C]")]
    [InlineData("\u2066\u2069\u200F\u061C", "[U+2066][U+2069][U+200F][U+061C]")]
    [InlineData("\uFEFF\uFFFF\u2028", "[U+FEFF][U+FFFF][U+2028]")]
    public void Text_is_escaped_and_nothing_in_it_is_hidden(string text, string expected)
    {
        Assert.Equal(expected, Probe.Source(html => html.Text(text)));
        Assert.Equal(
            $"""<p title="{expected}"></p>""" + "\n",
            Probe.Source(html => html.Open(Tag.P).With(TextAttribute.Title, text).Close())
        );
    }

    [Fact]
    public void Each_printable_character_is_escaped_as_the_library_escapes_it_wherever_it_stands_in_a_text_of_any_length()
    {
        foreach (var character in Enumerable.Range(' ', '~' - ' ' + 1).Select(c => (char)c).Append('\t').Append('\n'))
        {
            for (
                var (length, before) = (1, 0);
                length <= 25;
                (length, before) = before + 1 < length ? (length, before + 1) : (length + 1, 0)
            )
            {
                var text = $"{new string('a', before)}{character}{new string('b', length - before - 1)}";
                Assert.Equal(System.Net.WebUtility.HtmlEncode(text), Probe.Source(html => html.Text(text)));
            }
        }
    }

    [Fact]
    public void The_sign_of_a_unit_is_written_as_the_library_writes_it_wherever_it_stands_in_a_text_of_any_length()
    {
        foreach (var sign in "µΩ±°…".Select(c => c.ToString()))
        {
            for (
                var (length, before) = (1, 0);
                length <= 25;
                (length, before) = before + 1 < length ? (length, before + 1) : (length + 1, 0)
            )
            {
                var text = $"{new string('4', before)}{sign}{new string('7', length - before - 1)}{sign}";
                Assert.Equal(text, Probe.Source(html => html.Text(text)));
                Assert.Equal($"{text}&lt;", Probe.Source(html => html.Text(text + "<")));
            }
        }
    }

    [Fact]
    public void Half_a_character_is_named_and_not_passed_on()
    {
        // Built here because a lone surrogate cannot travel through a theory's row.
        Assert.Equal("a[U+D83D]b", Probe.Source(html => html.Text(['a', '\uD83D', 'b'])));
        Assert.Equal("[U+DE00]", Probe.Source(html => html.Text(['\uDE00'])));
    }

    [Fact]
    public void Letters_of_any_length_in_bytes_are_written_as_UTF_8_in_short_texts_and_in_long_ones()
    {
        var letters = string.Concat(Enumerable.Range(0, 0x10000).Select(c => (char)c).Where(char.IsLetterOrDigit));
        Assert.Equal(letters, Probe.Source(html => html.Text(letters)));
        Assert.Equal(
            letters,
            Probe.Source(html =>
            {
                foreach (var letter in letters)
                {
                    html.Text([letter]);
                }
            })
        );
        const string words = "where the age of the part counts from";
        Assert.Equal($"{words} µ{words}Ω… {words}", Probe.Source(html => html.Text($"{words} µ{words}Ω… {words}".AsSpan())));
    }

    [Fact]
    public void Letters_hidden_in_tag_characters_are_named() => Assert.Equal("[U+E0041]", Probe.Source(html => html.Text("\U000E0041")));

    [Fact]
    public void Any_text_comes_back_from_a_parser_as_the_same_text()
    {
        var random = new Random(20260314);
        for (var round = 0; round < 300; round++)
        {
            var text = RandomText(random);
            var element = Probe.Body(html => html.Open(Tag.Code).With(TextAttribute.Title, text).Text(text)).FirstElementChild!;
            Assert.Equal(text, element.TextContent);
            Assert.Equal(text, element.GetAttribute("title"));
            Assert.Single(element.Attributes);
            Assert.Empty(element.Children);
        }
    }

    private static string RandomText(Random random)
    {
        string[] pieces =
        [
            "<",
            ">",
            "&",
            "&amp;",
            "\"",
            "'",
            "</code>",
            "<!--",
            "-->",
            "]]>",
            "<svg onload=x>",
            "&#x3c;",
            "Ω",
            "😀",
            "\n",
            "\t",
            " ",
            "C12",
            "=",
            "`",
            "/",
        ];
        var text = new StringBuilder();
        for (var i = random.Next(1, 12); i > 0; i--)
        {
            text.Append(pieces[random.Next(pieces.Length)]);
        }

        return text.ToString();
    }
}
