using System.Text.RegularExpressions;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Nodes;

namespace Ohmstead.Records.Tests.Reading;

/// <summary>Every check has its page, and the examples on it are read as the page says.</summary>
public sealed partial class TextCheckPageTests
{
    public static TheoryData<string> Names => [.. TextChecks.All];

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_check_has_a_page_with_all_its_parts(string name)
    {
        var page = Page(name);

        Assert.Equal(
            [$"# {name}", "## Why", "## Wrong", "## Right", "## What to do"],
            page.Split('\n').Where(line => line.StartsWith('#') && !line.StartsWith("## Story", StringComparison.Ordinal))
        );
        Assert.EndsWith(".", page.Split('\n')[2], StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_wrong_example_is_reported_and_the_right_one_is_not(string name)
    {
        // A few faults cannot be shown in text as they stand; their pages describe them.
        if (name is TextChecks.BinaryFile or TextChecks.MixedLineEnds or TextChecks.TooLarge or TextChecks.NotUtf8)
        {
            Assert.Empty(Read(name, "Right").Findings);
            return;
        }

        Assert.Contains(name, Read(name, "Wrong").Findings.Select(finding => finding.Check));
        Assert.Empty(Read(name, "Right").Findings);
    }

    private static NodeReading Read(string name, string part)
    {
        var match = Example().Match(Page(name)[Page(name).IndexOf($"## {part}\n", StringComparison.Ordinal)..]);
        return match.Groups["language"].Value switch
        {
            "markdown" => ReadText.Markdown(match.Groups["text"].Value),
            "yaml" => ReadText.Yaml(match.Groups["text"].Value),
            _ => ReadText.Yaml(string.Empty),
        };
    }

    private static string Page(string name)
    {
        using var stream = typeof(TextChecks).Assembly.GetManifestResourceStream($"Ohmstead.Records.Findings.Pages.{name}.md");
        Assert.NotNull(stream);
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }

    [GeneratedRegex("```(?<language>[a-z]+)\n(?<text>.*?)```", RegexOptions.Singleline | RegexOptions.ExplicitCapture)]
    private static partial Regex Example();
}
