using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Mistakes;

/// <summary>Puts each slip into a copy of the demo collection and checks the whole of it.</summary>
public sealed class MistakeTests
{
    private static readonly Lazy<IReadOnlyList<ShownFinding>> Clean = new(() => Findings(CollectionCopy.Untouched));

    public static TheoryData<string> Names { get; } = new(Mistake.All.Select(mistake => mistake.Name));

    [Theory]
    [MemberData(nameof(Names))]
    public void One_mistake_gives_one_finding_more_which_alone_is_enough_to_mend_it(string name)
    {
        var mistake = Mistake.All.Single(one => one.Name == name);
        using var copy = CollectionCopy.Make();
        var original = copy.Read(mistake.Path);
        copy.Write(mistake.Path, mistake.Spoil(original));
        var (line, column) = mistake.Place(original, copy.Read(mistake.In));

        // Lines below the slip may have moved, so what was there before is told by its file, check and message.
        var after = Findings(copy.Root);
        var more = after.ExceptBy(Clean.Value.Select(Identity), Identity).ToList();
        var expected = mistake.AlsoIn is null ? 1 : 2;
        Assert.True(more.Count == expected, $"expected {expected}, found {more.Count}:\n{string.Join('\n', more)}");
        Assert.Equal(Clean.Value.Count + expected, after.Count);
        var finding = Assert.Single(more, one => one.Path != mistake.AlsoIn);
        Assert.All(more.Where(one => one != finding), other =>
            Assert.True(other.Check == mistake.Check && other.Message.Contains(mistake.In, StringComparison.Ordinal), other.Message)
        );
        Assert.Equal(
            $"{mistake.In}:{line}:{column}: {mistake.Severity} {mistake.Check}",
            $"{finding.Path}:{finding.Line}:{finding.Column}: {finding.Severity} {finding.Check}"
        );
        Assert.All(mistake.Words, word => Assert.Contains(word, $"{finding.Message}\n{finding.Next}", StringComparison.Ordinal));
    }

    [Fact]
    public void The_demo_collection_has_no_error_and_the_five_warnings_that_its_stories_tell_of() =>
        Assert.Equal(
            [
                "boards/SP-0002.md warning work-after-proof",
                "boards/SP-0010.md warning date-code-impossible",
                "boards/SP-0011.md warning calibration-expired",
                "boards/SP-0015.md warning proof-incomplete",
                "boards/SP-0019.md warning replacement-doubtful",
            ],
            Clean.Value.Select(finding => $"{finding.Path} {finding.Severity} {finding.Check}")
        );

    [Fact]
    public void Every_mistake_has_a_name_of_its_own_and_there_are_more_than_twenty()
    {
        Assert.Distinct(Mistake.All.Select(mistake => mistake.Name));
        Assert.InRange(Mistake.All.Count, 21, int.MaxValue);
    }

    private static (string Path, string Check, string Message) Identity(ShownFinding finding) =>
        (finding.Path, finding.Check, finding.Message);

    private static IReadOnlyList<ShownFinding> Findings(string root) =>
        ShownFinding.FromJson(Run.Of("check", root, "--form", "json", "--as-of", "2026-11-25").Out);
}
