namespace Ohmstead.Assessment.Tests.Support;

/// <summary>One fenced block of a case: a file of a small collection.</summary>
/// <param name="Form">markdown, yaml or text.</param>
/// <param name="Path">The path of the file in the collection.</param>
/// <param name="LineBefore">The line of the fence in the file of cases.</param>
/// <param name="Text">The file.</param>
internal sealed record CaseBlock(string Form, string Path, int LineBefore, string Text)
{
    private const string Mark = "# expect: ";

    internal IReadOnlyList<string> Lines { get; } = Text.Split('\n');

    /// <summary>The findings that the comments ask for.</summary>
    internal IEnumerable<Expectation> Expected() =>
        Lines.SelectMany(
            (line, index) =>
                line.IndexOf(Mark, StringComparison.Ordinal) is var at and >= 0
                    ? line[(at + Mark.Length)..]
                        .Split(',', StringSplitOptions.TrimEntries)
                        .Select(check => new Expectation(Path, index + 1, check))
                    : []
        );

    /// <summary>A line as a person would have written it, without the mark of the case.</summary>
    internal string LineWithoutMark(int number)
    {
        var line = Lines[number - 1];
        var at = line.IndexOf(Mark, StringComparison.Ordinal);
        return (at < 0 ? line : line[..at]).Trim();
    }
}

/// <summary>A check that must speak on a line of a file.</summary>
internal sealed record Expectation(string Path, int Line, string Check);
