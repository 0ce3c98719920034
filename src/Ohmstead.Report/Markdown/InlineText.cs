using System.Text;
using Markdig.Syntax.Inlines;

namespace Ohmstead.Report.Markdown;

/// <summary>The words of inline nodes without their marks.</summary>
internal static class InlineText
{
    /// <summary>The words of the node and all it contains.</summary>
    public static string Read(Inline? inline)
    {
        var text = new StringBuilder();
        Add(text, inline);
        return text.ToString();
    }

    private static void Add(StringBuilder text, Inline? inline)
    {
        switch (inline)
        {
            case LiteralInline literal:
                text.Append(literal.Content.AsSpan());
                break;
            case CodeInline code:
                text.Append(code.Content);
                break;
            case HtmlEntityInline entity:
                text.Append(entity.Transcoded.AsSpan());
                break;
            case HtmlInline html:
                text.Append(html.Tag);
                break;
            case AutolinkInline link:
                text.Append(link.Url);
                break;
            case LineBreakInline:
                text.Append(' ');
                break;
            case ContainerInline container:
                text.Append(container is DelimiterInline left ? left.ToLiteral() : "");
                foreach (var child in container)
                {
                    Add(text, child);
                }

                break;
        }
    }
}
