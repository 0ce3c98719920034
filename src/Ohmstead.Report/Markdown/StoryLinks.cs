using Markdig.Syntax;
using Markdig.Syntax.Inlines;
using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Text;

namespace Ohmstead.Report.Markdown;

/// <summary>Finds the links and pictures of a story whose addresses no page takes, whatever the collection holds.</summary>
public sealed class StoryLinks : IStories
{
    private StoryLinks() { }

    /// <summary>The one there is.</summary>
    public static StoryLinks Instance { get; } = new();

    /// <inheritdoc/>
    public IEnumerable<DroppedLink> Dropped(string body, string folder)
    {
        // Most stories have no link, and then nothing is laid out. One that is too much work is shown as written, without links.
        if (!MayHoldLinks(body) || StoryTree.Read(body, out _) is not { } tree)
        {
            yield break;
        }

        SourceText? source = null;
        foreach (var inline in tree.Descendants<Inline>())
        {
            var (address, isPicture) = inline switch
            {
                AutolinkInline link => (link.IsEmail ? "mailto:" + link.Url : link.Url, false),
                LinkInline link => (link.Url ?? string.Empty, link.IsImage),
                _ => (null, false),
            };
            if (address is null)
            {
                continue;
            }

            var why = StoryAddress.Read(address, folder) switch
            {
                StoryAddress.Refused refused => refused.Reason,
                StoryAddress.SamePage when isPicture => "an address that names no picture",
                _ => null,
            };
            if (why is not null)
            {
                source ??= new(string.Empty, body);
                yield return new(source.SpotAt(inline.Span.Start, inline.Span.Length), address, why);
            }
        }
    }

    private static bool MayHoldLinks(string body) =>
        body.Contains('<', StringComparison.Ordinal)
        || body.Contains("](", StringComparison.Ordinal)
        || body.Contains("]:", StringComparison.Ordinal);
}
