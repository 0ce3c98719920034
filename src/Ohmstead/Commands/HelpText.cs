namespace Ohmstead.Commands;

/// <summary>The description of a command, taken apart: what it does, and how it is typed.</summary>
/// <param name="What">What it does, in paragraphs.</param>
/// <param name="Examples">How it is typed, line by line as it is to be typed; empty for none.</param>
internal sealed record HelpText(string What, string Examples)
{
    private const string Heading = "Examples:";

    /// <summary>Takes a description apart: the paragraph under its heading holds the examples.</summary>
    public static HelpText Parse(string? description)
    {
        var paragraphs = (description ?? string.Empty).Split("\n\n");
        return new(string.Join("\n\n", paragraphs.Where(one => !IsExamples(one))), string.Join('\n', paragraphs.Where(IsExamples)));
    }

    /// <summary>What it does in one line: as far as the first stop.</summary>
    public string InShort()
    {
        var line = What.Split('\n')[0];
        var end = Enumerable
            .Range(0, line.Length)
            .FirstOrDefault(at => line[at] is '.' or ':' or ';' && (at + 1 == line.Length || line[at + 1] == ' '), line.Length);
        return line[..end];
    }

    private static bool IsExamples(string paragraph) => paragraph.StartsWith(Heading, StringComparison.Ordinal);
}
