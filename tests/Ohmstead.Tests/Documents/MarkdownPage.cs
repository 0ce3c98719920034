using System.Text.RegularExpressions;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Documents;

/// <summary>A document of the project: its blocks and its links.</summary>
/// <param name="Path">Where it lies, from the root of the project.</param>
internal sealed partial record MarkdownPage(string Path)
{
    private static readonly string[] NotOurs = ["artifacts", ".git", "bin", "obj", "raw"];

    /// <summary>All documents: every Markdown file that is no record, no page of a check and no case of a test.</summary>
    public static IReadOnlyList<MarkdownPage> All { get; } =
    [
        .. Directory
            .EnumerateFiles(
                ProjectFolder.Root,
                "*.md",
                new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = FileAttributes.None }
            )
            .Select(file => System.IO.Path.GetRelativePath(ProjectFolder.Root, file).Replace('\\', '/'))
            .Where(path => !path.Split('/').Intersect(NotOurs, StringComparer.Ordinal).Any())
            .Where(path => UpperCase().IsMatch(System.IO.Path.GetFileName(path)) || path.StartsWith(".github/", StringComparison.Ordinal))
            .Order(StringComparer.Ordinal)
            .Select(path => new MarkdownPage(path)),
    ];

    /// <summary>Its text.</summary>
    public string Text { get; } = File.ReadAllText(ProjectFolder.At(Path)).ReplaceLineEndings("\n");

    /// <summary>Its fenced blocks, each with the heading above it and the remark in front of it.</summary>
    public IEnumerable<Block> Blocks()
    {
        var (heading, remark, fence, kind, first) = (string.Empty, string.Empty, string.Empty, string.Empty, 0);
        var lines = new List<string>();
        foreach (var (at, line) in Text.Split('\n').Index())
        {
            if (fence.Length == 0 && line.StartsWith("```", StringComparison.Ordinal))
            {
                kind = line.TrimStart('`');
                fence = line[..^kind.Length];
                first = at + 1;
            }
            else if (fence.Length > 0 && line == fence)
            {
                yield return new(heading, remark, kind, first + 1, [.. lines]);
                lines.Clear();
                (fence, remark) = (string.Empty, string.Empty);
            }
            else if (fence.Length > 0)
            {
                lines.Add(line);
            }
            else if (line.StartsWith('#'))
            {
                heading = line;
            }
            else if (line.StartsWith("<!-- ", StringComparison.Ordinal))
            {
                remark = line[5..].Replace(" -->", string.Empty, StringComparison.Ordinal);
            }
        }
    }

    /// <summary>The targets of its links and pictures, outside of blocks.</summary>
    public IEnumerable<string> Links() => Link().Matches(Fenced().Replace(Text, string.Empty)).Select(match => match.Groups[1].Value);

    /// <summary>The anchors of its headings, as a host makes them.</summary>
    public IEnumerable<string> Anchors() =>
        Text.Split('\n')
            .Where(line => line.StartsWith('#'))
            .Select(line => NotInAnchor().Replace(line.TrimStart('#').Trim().ToLowerInvariant(), string.Empty).Replace(' ', '-'));

    [GeneratedRegex("^[A-Z]+(_[A-Z]+)*\\.md$")]
    private static partial Regex UpperCase();

    [GeneratedRegex(@"\]\(([^)\s]+)\)")]
    private static partial Regex Link();

    [GeneratedRegex("(?ms)^(`{3,})[^\n]*\n.*?^\\1$|`[^`\n]+`")]
    private static partial Regex Fenced();

    [GeneratedRegex(@"[^\p{L}\p{Nd} _-]")]
    private static partial Regex NotInAnchor();

    /// <summary>A fenced block.</summary>
    /// <param name="Heading">The heading above it.</param>
    /// <param name="Remark">The remark just in front of it: what the tests are to do with it.</param>
    /// <param name="Kind">What its fence says: sh, text, yaml.</param>
    /// <param name="Line">The number of its first line.</param>
    /// <param name="Lines">Its lines.</param>
    internal sealed record Block(string Heading, string Remark, string Kind, int Line, IReadOnlyList<string> Lines);
}
