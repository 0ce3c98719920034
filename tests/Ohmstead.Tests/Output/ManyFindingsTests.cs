using System.Text.Json;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Output;

/// <summary>A file with one mistake a thousand times and more: so many are told, all are counted, in each form, and the run ends as it
/// would with one.</summary>
public sealed class ManyFindingsTests
{
    private const int Many = 1_234;

    [Theory]
    [InlineData("text", "  1234  part-unknown\n", "; 1234 errors, 0 warnings\n")]
    [InlineData("annotations", "::warning::1225 more findings are in the log of this step\n", "; 1234 errors, 0 warnings\n")]
    public void People_are_told_how_many_there_are(string form, string counted, string summary)
    {
        using var copy = WithUnknownParts();
        var run = Run.Of("check", copy.Root, "--form", form, "--as-of", "2026-11-25");
        Assert.Equal(1, run.Exit);
        Assert.Contains(counted, run.Out, StringComparison.Ordinal);
        Assert.EndsWith(summary, run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_program_is_told_a_thousand_and_how_many_more()
    {
        using var copy = WithUnknownParts();
        var run = Run.Of("check", copy.Root, "--form", "json", "--as-of", "2026-11-25");
        using var document = JsonDocument.Parse(run.Out);
        var findings = document.RootElement.GetProperty("findings").EnumerateArray().ToArray();
        Assert.Equal((1, 1_000), (run.Exit, findings.Length));
        Assert.Equal(Many, findings.Sum(finding => 1 + finding.GetProperty("more").GetInt32()));
        Assert.Equal("this board has no part 'Q999X'; 234 more in this file", findings[^1].GetProperty("message").GetString());
    }

    private static CollectionCopy WithUnknownParts()
    {
        var copy = CollectionCopy.Empty();
        var readings = string.Concat(
            Enumerable.Range(0, Many).Select(i => $"      - {{ part: Q{i}X, circuit: out, resistance: 47 kΩ }}\n")
        );
        copy.Write(
            "boards/SP-0001.md",
            $"---\nboard: SP-0001\ntitle: x\nparts:\n  - {{ ref: R1, kind: carbon film resistor, resistance: 47 kΩ }}\nbench:\n  - "
                + $"date: 2026-03-14\n    readings:\n{readings}---\n"
        );
        return copy;
    }
}
