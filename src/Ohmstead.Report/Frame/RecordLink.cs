using Ohmstead.Report.Html;

namespace Ohmstead.Report.Frame;

/// <summary>A record as it was when it was judged, where the collection says at which address its repository is seen.</summary>
internal static class RecordLink
{
    /// <summary>Writes words that lead to a record, with the host that they lead to; the words alone where no address is known.</summary>
    /// <param name="html">Where to.</param>
    /// <param name="context">What every page knows.</param>
    /// <param name="path">The path of the record.</param>
    /// <param name="words">The words.</param>
    public static void Write(HtmlWriter html, ReportContext context, string path, string words)
    {
        if (
            context is not { Commit: { } commit, Workshop.Collection.Repository: { } repository }
            || !ExternalLink.TryRead(repository.Value.Of(commit, path), out var link, out _)
        )
        {
            html.Text(words);
            return;
        }

        html.Open(Tag.A, ClassName.External).To(link).Text(words);
        html.Text(" ");
        html.Open(Tag.Span, ClassName.Host).Text($"({link.Host})");
    }
}
