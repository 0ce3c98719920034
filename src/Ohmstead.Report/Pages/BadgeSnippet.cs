using System.Net;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Pages;

/// <summary>What to paste into another page so that it shows how the boards stand and leads here.</summary>
internal static class BadgeSnippet
{
    // The same for every collection: a name would have to be escaped for each place into which it is pasted.
    private const string InWords = "state of the boards";

    /// <summary>Writes it, folded.</summary>
    public static void Write(HtmlWriter html, ReportContext context)
    {
        var (badge, page) = (Address(context, SiteAddress.CollectionBadge), Address(context, SiteAddress.Collection));
        using var fold = html.Open(Tag.Details);
        html.Open(Tag.Summary).Text("A badge for another page");
        Sample(html, "In Markdown", $"[![{InWords}]({InMarkdown(badge)})]({InMarkdown(page)})");
        Sample(html, "In HTML", $"<a href=\"{InHtml(page)}\"><img src=\"{InHtml(badge)}\" alt=\"{InWords}\"></a>");
        html.Open(Tag.P)
            .Text(
                $"Of a board: {SiteAddress.Badge("SP-0007")} in place of {SiteAddress.CollectionBadge}, and {SiteAddress.Board("SP-0007")} "
                    + $"in place of {SiteAddress.Collection}, with its number."
            );
        if (context.Published is null)
        {
            html.Open(Tag.P)
                .Text(
                    "Nobody told at which address these pages are found: put it before both, or write it as site in collection.yaml, and "
                        + "it stands here."
                );
        }
    }

    private static string Address(ReportContext context, string path) =>
        context.Published?.Of(LocalLink.ToFile(path)) ?? LocalLink.ToFile(path).Encoded;

    // A bracket would end the address.
    private static string InMarkdown(string address) =>
        address.Replace("(", "%28", StringComparison.Ordinal).Replace(")", "%29", StringComparison.Ordinal);

    private static string InHtml(string address) => WebUtility.HtmlEncode(address);

    private static void Sample(HtmlWriter html, string where, string sample)
    {
        html.Open(Tag.P).Text(where + ":");
        html.Open(Tag.Pre).With(FixedAttribute.TabStop).Text(sample);
    }
}
