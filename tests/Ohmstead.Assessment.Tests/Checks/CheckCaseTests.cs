using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.Checks;

/// <summary>Runs the cases that stand as Markdown beside this file. Every check runs over every case: a finding too many fails like one too
/// few.</summary>
public sealed class CheckCaseTests
{
    public static TheoryData<string, string> Cases { get; } =
        new(RecordCase.All.Select(one => new TheoryDataRow<string, string>(one.File, one.Name)));

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_case_has_the_findings_that_its_comments_ask_for(string file, string name)
    {
        var one = RecordCase.All.Single(candidate => candidate.File == file && candidate.Name == name);
        var findings = new SmallCollection(one.Blocks).Findings();
        var found = findings.Select(finding => new Expectation(finding.Place.Path, finding.Place.Line, finding.Check)).ToList();
        var expected = one.Blocks.SelectMany(block => block.Expected()).ToList();
        string[] wrong =
        [
            .. Less(expected, found).Select(missing => $"missing: {Where(one, missing)} {missing.Check}"),
            .. Less(found, expected)
                .Select(extra =>
                    $"unexpected: {Where(one, extra)} {extra.Check}: "
                    + $"{findings.First(f => f.Check == extra.Check && f.Place.Line == extra.Line).Message}"
                ),
        ];
        Assert.True(wrong.Length == 0, string.Join('\n', wrong));
    }

    // Whatever is found in any case, by a check or by reading.
    [Fact]
    public void Every_finding_says_what_to_do_next() =>
        Assert.Empty(
            RecordCase
                .All.SelectMany(one => new SmallCollection(one.Blocks).Findings())
                .Where(finding => string.IsNullOrWhiteSpace(finding.NextStep))
                .Select(finding => $"{finding.Check}: {finding.Message}")
        );

    [Fact]
    public void Every_file_of_cases_has_one_that_fails_and_one_that_is_clean()
    {
        string[] onesided =
        [
            .. RecordCase
                .All.GroupBy(one => one.File, StringComparer.Ordinal)
                .Where(group => !group.Any(one => one.IsClean) || group.All(one => one.IsClean))
                .Select(group => group.Key),
        ];
        Assert.Empty(onesided);
    }

    [Fact]
    public void Every_name_of_a_case_is_used_once_in_its_file() =>
        Assert.Empty(
            RecordCase.All.GroupBy(one => (one.File, one.Name)).Where(group => group.Count() > 1).Select(group => group.Key.ToString())
        );

    private static IEnumerable<Expectation> Less(IEnumerable<Expectation> from, IEnumerable<Expectation> what)
    {
        var left = from.ToList();
        foreach (var one in what)
        {
            left.Remove(one);
        }

        return left;
    }

    private static string Where(RecordCase one, Expectation expectation)
    {
        var block = one.Blocks.FirstOrDefault(block => block.Path == expectation.Path);
        return $"{expectation.Path}:{expectation.Line} (Checks/{one.File}.md:{block?.LineBefore + expectation.Line})";
    }
}
