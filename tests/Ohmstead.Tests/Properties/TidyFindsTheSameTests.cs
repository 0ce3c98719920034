using System.Text.Json;
using System.Text.RegularExpressions;
using Ohmstead.Synthetic;
using Ohmstead.Synthetic.Files;
using Ohmstead.Synthetic.Text;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Properties;

/// <summary>The layout of a record says nothing: a check finds the same before and after it was laid out, on other lines.</summary>
public sealed partial class TidyFindsTheSameTests
{
    [Theory]
    [InlineData(7)]
    [InlineData(20260314)]
    public void A_check_finds_the_same_before_and_after_the_records_were_laid_out(int seed)
    {
        using var copy = CollectionCopy.Empty();
        var plan = new CollectionPlan(24, (ulong)seed);
        var number = 0;
        foreach (var (path, text) in SyntheticCollection.Files(plan))
        {
            // Without a drawer and without instruments there is something to find on every board.
            if (path.EndsWith(".md", StringComparison.Ordinal))
            {
                copy.Write(path, Sprinkle.Over(text, SeededRandom.For(plan.Seed, 9, number++)).Text);
            }
        }

        var before = Found(copy);
        Assert.Contains("tidied", Run.Of("tidy", copy.Root).Out, StringComparison.Ordinal);
        Assert.NotEmpty(before);
        Assert.Equal(before, Found(copy));
    }

    private static string[] Found(CollectionCopy copy)
    {
        using var document = JsonDocument.Parse(Run.Of("check", copy.Root, "--form", "json", "--as-of", "2026-11-25").Out);
        var states = document
            .RootElement.GetProperty("boards")
            .EnumerateArray()
            .Select(board => $"{board.GetProperty("path")} {board.GetProperty("state")}");

        // A number sign behind a value is told by where it stands, and laying out moves remarks.
        var findings = document
            .RootElement.GetProperty("findings")
            .EnumerateArray()
            .Where(finding => finding.GetProperty("check").GetString() != "value-cut-by-comment")
            .Select(finding =>
                Line()
                    .Replace(
                        $"{finding.GetProperty("path")} {finding.GetProperty("severity")} {finding.GetProperty("check")} "
                            + $"{finding.GetProperty("message")} {finding.GetProperty("next")}",
                        "line"
                    )
            );
        return [.. states, .. findings.Order(StringComparer.Ordinal)];
    }

    [GeneratedRegex("line [0-9]+")]
    private static partial Regex Line();
}
