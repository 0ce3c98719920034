using Ohmstead.Assessment.Checks;
using Ohmstead.Collections;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Commands;

/// <summary>Every check has a page, and a line in the list.</summary>
public sealed class ExplainCommandTests
{
    public static TheoryData<string> Checks { get; } =
        new(
            CheckCatalogue
                .Descriptions.Select(check => check.Name)
                .Append(FileReader.Unreadable)
                .Append(FileReader.Link)
                .Append("key-unknown")
                .Append("quantity-unreadable")
                .Append("alias-used")
                .Append("decimal-comma")
        );

    [Theory]
    [MemberData(nameof(Checks))]
    public void A_check_is_explained_from_its_name_to_what_to_do(string check)
    {
        var run = Run.Of("explain", check);
        Assert.Equal(0, run.Exit);
        Assert.StartsWith($"# {check}\n\n", run.Out, StringComparison.Ordinal);
        Assert.Contains("\n## What to do\n", run.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("fitted-part-fails", "it holds the board back from fit to run: what sits there was known to be bad when it was fitted")]
    [InlineData(
        "photograph-missing",
        "as an error it holds the board back from fit to run, as a warning it is told: the record names evidence that is not there"
    )]
    [InlineData("drift-nears-limit", "none, it is told: an estimate of what will be, beside the readings that say what is")]
    [InlineData(
        "work-after-proof",
        "the finding is told, and the state follows from the evidence: the obligation to prove each point after the last work"
    )]
    public void A_check_says_what_it_does_to_the_state(string check, string effect) =>
        Assert.EndsWith($"\n\nWhat it does to the state: {effect}.\n", Run.Of("explain", check).Out, StringComparison.Ordinal);

    [Fact]
    public void Without_a_name_each_check_stands_on_a_line_with_its_summary()
    {
        var lines = Run.Of("explain").Out.TrimEnd('\n').Split('\n');
        Assert.All(lines, line => Assert.Matches("^[a-z0-9-]+ {2,}[A-Z].+\\.$", line));
        Assert.Contains(lines, line =>
            line.StartsWith("polarity-from-print-alone ", StringComparison.Ordinal)
            && line.EndsWith(
                "  A polarised part was fitted the way the print on the board shows, and nothing else confirms it.",
                StringComparison.Ordinal
            )
        );
        Assert.Equal(lines.Select(line => line.Split(' ')[0]).Order(StringComparer.Ordinal), lines.Select(line => line.Split(' ')[0]));
    }
}
