namespace Ohmstead.Assessment.Tests.Support;

/// <summary>A case of a check: a small collection with the expected findings written as comments on their lines.</summary>
/// <param name="File">The file of cases, without its ending.</param>
/// <param name="Name">The heading.</param>
/// <param name="Blocks">The files of the collection.</param>
internal sealed record RecordCase(string File, string Name, IReadOnlyList<CaseBlock> Blocks)
{
    private const int ShortestFence = 3;

    /// <summary>All cases, in order of file and place.</summary>
    internal static IReadOnlyList<RecordCase> All { get; } =
    [
        .. Directory
            .GetFiles(Path.Combine(AppContext.BaseDirectory, "Checks"), "*.md")
            .Order(StringComparer.Ordinal)
            .SelectMany(path => Read(Path.GetFileNameWithoutExtension(path), System.IO.File.ReadAllText(path))),
    ];

    internal bool IsClean => !Blocks.SelectMany(block => block.Expected()).Any();

    internal static IReadOnlyList<RecordCase> Read(string file, string text)
    {
        var cases = new List<(string Name, List<CaseBlock> Blocks)>();
        var lines = text.Split('\n');
        for (var at = 0; at < lines.Length; at++)
        {
            if (lines[at].StartsWith("## ", StringComparison.Ordinal))
            {
                cases.Add((lines[at][3..].Trim(), []));
            }
            else if (FenceOf(lines[at]) is { } fence)
            {
                var end = Array.IndexOf(lines, fence, at + 1);
                var info = lines[at][fence.Length..].Split(' ', 2);
                cases[^1]
                    .Blocks.Add(
                        new CaseBlock(info[0], info[1].Trim(), at + 1, string.Concat(lines[(at + 1)..end].Select(line => line + "\n")))
                    );
                at = end;
            }
        }

        return [.. cases.Select(one => new RecordCase(file, one.Name, one.Blocks))];
    }

    private static string? FenceOf(string line)
    {
        var ticks = line.Length - line.TrimStart('`').Length;
        return ticks >= ShortestFence ? line[..ticks] : null;
    }
}
