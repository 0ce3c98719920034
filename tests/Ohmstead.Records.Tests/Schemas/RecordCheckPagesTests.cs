using Ohmstead.Records.Findings;

namespace Ohmstead.Records.Tests.Schemas;

public sealed class RecordCheckPagesTests
{
    public static TheoryData<string> Names => [.. RecordChecks.All];

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_check_has_a_page_with_its_reason_an_example_and_a_way_out(string name)
    {
        using var stream = typeof(RecordChecks).Assembly.GetManifestResourceStream($"Ohmstead.Records.Findings.Pages.{name}.md");
        using var reader = new StreamReader(Assert.IsType<Stream>(stream, exactMatch: false));
        var page = reader.ReadToEnd();

        Assert.StartsWith($"# {name}\n\n", page, StringComparison.Ordinal);
        var headings = page.Split('\n').Where(line => line.StartsWith("## ", StringComparison.Ordinal));
        Assert.Equal(["## Why", "## Wrong", "## Right", "## What to do"], headings);
    }
}
