using AngleSharp.Dom;

namespace Ohmstead.Report.Tests.Html;

/// <summary>What every page must be, judged on the tree that an HTML parser makes of it.</summary>
internal static class Harmless
{
    private static readonly HashSet<string> Allowed = new(
        """
        html head meta link title body header footer main nav section article aside div h1 h2 h3 h4 h5 h6 p hr pre blockquote
        ol ul li dl dt dd figure figcaption table caption thead tbody tfoot tr th td details summary a abbr b i br code em strong
        small span time bdi data img sub sup svg g desc rect line path circle text symbol use
        """.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries),
        StringComparer.Ordinal
    );

    private static readonly string[] Loading =
    [
        "src",
        "srcset",
        "data",
        "poster",
        "background",
        "action",
        "formaction",
        "xlink:href",
        "srcdoc",
        "style",
        "ping",
    ];

    /// <summary>Fails unless nothing under the node can run, load from elsewhere, or lead to a scheme that is not allowed.</summary>
    public static void Check(IElement root)
    {
        Assert.DoesNotContain(root.Descendants(), node => node is IComment);
        foreach (var element in root.QuerySelectorAll("*"))
        {
            if (element.LocalName == "script")
            {
                CheckScript(element);
                continue;
            }

            Assert.Contains(element.LocalName, Allowed);
            foreach (var attribute in element.Attributes)
            {
                CheckAttribute(element, attribute);
            }
        }
    }

    // The one script is the file beside the pages; nothing of a record can stand in it.
    private static void CheckScript(IElement element)
    {
        Assert.Equal("head", element.ParentElement!.LocalName);
        Assert.Empty(element.TextContent);
        Assert.Equal(["defer", "src"], element.Attributes.Select(attribute => attribute.Name).Order(StringComparer.Ordinal));
        Assert.Matches(@"^(\.\./)?ohmstead\.js$", element.GetAttribute("src")!);
    }

    private static void CheckAttribute(IElement element, IAttr attribute)
    {
        Assert.False(attribute.Name.StartsWith("on", StringComparison.OrdinalIgnoreCase), $"event attribute {attribute.Name}");
        switch (attribute.Name)
        {
            case "href":
                // A shape comes out of the page itself.
                Assert.True(element.LocalName != "use" || IsShape(attribute.Value), attribute.Value);
                CheckAddress(attribute.Value, mayLeave: element.LocalName == "a");
                break;
            case "src" when element.LocalName == "img":
                CheckAddress(attribute.Value, mayLeave: false);
                break;
            case "id":
                // No text of a record gets an id without a prefix.
                Assert.True(
                    element.LocalName == "symbol"
                        ? IsShape($"#{attribute.Value}")
                        : attribute.Value.Contains('-', StringComparison.Ordinal),
                    attribute.Value
                );
                break;
            default:
                Assert.DoesNotContain(attribute.Name, Loading);
                break;
        }
    }

    private static bool IsShape(string place) => place is ['#', .. { Length: 1 or 2 } name] && name.All(char.IsAsciiLetterLower);

    private static void CheckAddress(string address, bool mayLeave)
    {
        Assert.DoesNotContain('\\', address);
        Assert.All(address, c => Assert.InRange(c, '!', '~'));
        if (
            mayLeave
            && (
                address.StartsWith("http://", StringComparison.Ordinal)
                || address.StartsWith("https://", StringComparison.Ordinal)
                || address.StartsWith("mailto:", StringComparison.Ordinal)
            )
        )
        {
            return;
        }

        Assert.False(address.StartsWith('/'), address);
        Assert.DoesNotContain(':', address.Split('#')[0]);
    }
}
