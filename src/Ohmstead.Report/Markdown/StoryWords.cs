using Markdig.Syntax;

namespace Ohmstead.Report.Markdown;

/// <summary>What a story says, without its marks: for whoever looks for words in it.</summary>
internal static class StoryWords
{
    /// <summary>The paragraphs, headings, cells and other pieces of a story, in order.</summary>
    /// <param name="body">The Markdown. One that cannot be laid out is read line by line, as it is shown.</param>
    public static IEnumerable<string> Read(string body) =>
        StoryTree.Read(body, out _) is { } tree ? tree.Descendants<LeafBlock>().Select(Words) : body.Split('\n');

    private static string Words(LeafBlock block) => block.Inline is { } inline ? InlineText.Read(inline) : block.Lines.ToString();
}
