using Ohmstead.Report.Html;

namespace Ohmstead.Report.Tests.Html;

public class LinkTests
{
    // RFC 3986, 2.1 and 2.3: everything but letters, digits and -._~ is percent-encoded as its UTF-8 bytes.
    [Theory]
    [InlineData("boards/SP-0007.html", "boards/SP-0007.html")]
    [InlineData("photos/front view.jpg", "photos/front%20view.jpg")]
    [InlineData("photos/#1?.jpg", "photos/%231%3F.jpg")]
    [InlineData("photos/100%.jpg", "photos/100%25.jpg")]
    [InlineData("photos/\"quoted'.jpg", "photos/%22quoted%27.jpg")]
    [InlineData("photos/line\nbreak.jpg", "photos/line%0Abreak.jpg")]
    [InlineData("photos/-rf;.jpg", "photos/-rf%3B.jpg")]
    [InlineData("photos/Ω.jpg", "photos/%CE%A9.jpg")]
    [InlineData("photos/a\\b.jpg", "photos/a%5Cb.jpg")]
    [InlineData("javascript:alert(1)", "javascript%3Aalert%281%29")]
    public void Every_name_of_a_file_is_percent_encoded(string path, string expected) =>
        Assert.Equal(expected, LocalLink.ToFile(path).Encoded);

    [Theory]
    [InlineData("")]
    [InlineData("/etc/passwd")]
    [InlineData("../secret")]
    [InlineData("a//b")]
    [InlineData("a/./b")]
    [InlineData("a/../../b")]
    [InlineData("a/")]
    public void A_path_that_names_no_file_below_the_root_is_refused(string path) =>
        Assert.Throws<ArgumentException>(() => LocalLink.ToFile(path));

    [Fact]
    public void A_page_in_a_folder_reaches_the_root_and_a_place_in_another_page() =>
        Assert.Equal(
            "../boards/SP-0007.html#p-C12",
            LocalLink.ToFile("boards/SP-0007.html", 1, ElementId.For(IdPrefix.Part, "C12")).Encoded
        );

    [Fact]
    public void A_place_in_the_same_page_is_a_fragment() =>
        Assert.Equal("#story-%C3%BCberblick", LocalLink.ToFragment(ElementId.For(IdPrefix.Story, "überblick")).Encoded);

    [Theory]
    [InlineData("C12", "p-C12")]
    [InlineData("+15V", "p-_2B_15V")]
    [InlineData("a b", "p-a_20_b")]
    [InlineData("a_20_b", "p-a_5F_20_5F_b")]
    [InlineData("__proto__", "p-_5F__5F_proto_5F__5F_")]
    [InlineData("\" onclick=\"x", "p-_22__20_onclick_3D__22_x")]
    public void An_id_holds_nothing_but_letters_digits_and_marks(string name, string expected) =>
        Assert.Equal(expected, ElementId.For(IdPrefix.Part, name).Value);

    [Theory]
    [InlineData("https://tide.example/a?b=c&d#e", "https://tide.example/a?b=c&d#e", "tide.example")]
    [InlineData("HTTP://Tide.Example", "http://tide.example", "tide.example")]
    [InlineData("https://tide.example:8443/", "https://tide.example:8443/", "tide.example")]
    [InlineData("https://tide.example/Ω<\">", "https://tide.example/%CE%A9%3C%22%3E", "tide.example")]
    [InlineData("https://tide.example/100%25", "https://tide.example/100%25", "tide.example")]
    [InlineData("mailto:keeper@tide.example", "mailto:keeper@tide.example", "tide.example")]
    public void An_address_out_of_the_report_is_http_https_or_mailto(string written, string expected, string host)
    {
        Assert.True(ExternalLink.TryRead(written, out var link, out _));
        Assert.Equal(expected, link.Encoded);
        Assert.Equal(host, link.Host);
    }

    [Theory]
    [InlineData("javascript:alert(1)")]
    [InlineData("JaVaScRiPt:alert(1)")]
    [InlineData(" javascript:alert(1)")]
    [InlineData("java\tscript:alert(1)")]
    [InlineData("vbscript:x")]
    [InlineData("data:text/html,x")]
    [InlineData("file:///etc/passwd")]
    [InlineData("blob:https://tide.example/1")]
    [InlineData("//tide.example/")]
    [InlineData("\\\\tide.example\\share")]
    [InlineData("https:\\\\tide.example")]
    [InlineData("https:tide.example")]
    [InlineData("https://")]
    [InlineData("https:///path")]
    [InlineData("https://user@tide.example/")]
    [InlineData("https://tide.example@other.example/")]
    [InlineData("https://tide.example:x/")]
    [InlineData("https://ti\u202Ede.example/")]
    [InlineData("https://tidе.example/")]
    [InlineData("https://a b/")]
    [InlineData("mailto:nobody")]
    [InlineData("mailto:@tide.example")]
    [InlineData("tide.example")]
    [InlineData("")]
    public void Any_other_address_is_refused_with_a_reason(string written)
    {
        Assert.False(ExternalLink.TryRead(written, out var link, out var fault));
        Assert.Null(link);
        Assert.NotEmpty(fault);
    }

    [Fact]
    public void An_address_longer_than_the_limit_is_refused()
    {
        // 2048 characters are accepted, 2049 are not.
        const string site = "https://tide.example/";
        Assert.True(ExternalLink.TryRead(site + new string('a', 2048 - site.Length), out _, out _));
        Assert.False(ExternalLink.TryRead(site + new string('a', 2049 - site.Length), out _, out _));
    }

    [Fact]
    public void A_link_out_of_the_report_tells_its_target_nothing()
    {
        Assert.True(ExternalLink.TryRead("https://tide.example/?a=1&b=2", out var link, out _));
        var a = Probe.Body(html => html.Open(Tag.A).To(link).Text("tide tables")).FirstElementChild!;
        Assert.Equal("https://tide.example/?a=1&b=2", a.GetAttribute("href"));
        Assert.Equal("external noopener noreferrer", a.GetAttribute("rel"));
    }
}
