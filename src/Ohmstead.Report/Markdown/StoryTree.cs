using Markdig;
using Markdig.Extensions.Tables;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace Ohmstead.Report.Markdown;

/// <summary>Makes the syntax tree of a text, or says why there is none.</summary>
internal static class StoryTree
{
    /// <summary>How deep the tree may be: what walks it calls itself, and the stack is not endless.</summary>
    private const int Deepest = 100;

    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder()
        .UsePreciseSourceLocation()
        .UsePipeTables(new PipeTableOptions { UseGfmRules = true })
        .Build();

    /// <summary>Reads the text. Exactly one of tree and refusal is null.</summary>
    /// <param name="body">The Markdown.</param>
    /// <param name="refusal">Why the text cannot be laid out.</param>
    public static MarkdownDocument? Read(string body, out StoryNote? refusal)
    {
        refusal = null;
        if (StoryWork.Refusal(body, out var line) is { } tooMuch)
        {
            refusal = Refused(line, tooMuch);
            return null;
        }

        try
        {
            var tree = Markdig.Markdown.Parse(body, Pipeline);
            if (!IsDeeperThan(tree, Deepest))
            {
                return tree;
            }
        }
        catch (Exception fault) when (fault is not OutOfMemoryException)
        {
            // The library throws at its own limit of nesting, and its text speaks of internals. Whatever else it may throw, the
            // text of one record must not stop the pages of the others.
        }

        refusal = Refused(1, "lists, quotes, links or emphasis nested too deep");
        return null;
    }

    private static StoryNote Refused(int line, string what) =>
        new(StoryNoteKind.ShownAsWritten, line, $"{what}: the text is shown as written");

    private static bool IsDeeperThan(MarkdownDocument tree, int limit)
    {
        var pending = new Stack<(MarkdownObject Node, int Depth)>();
        pending.Push((tree, 0));
        while (pending.TryPop(out var next))
        {
            if (next.Depth > limit)
            {
                return true;
            }

            foreach (var child in Children(next.Node))
            {
                pending.Push((child, next.Depth + 1));
            }
        }

        return false;
    }

    private static IEnumerable<MarkdownObject> Children(MarkdownObject node) =>
        node switch
        {
            ContainerBlock blocks => blocks,
            ContainerInline inlines => inlines,
            LeafBlock { Inline: { } inline } => [inline],
            _ => [],
        };
}
