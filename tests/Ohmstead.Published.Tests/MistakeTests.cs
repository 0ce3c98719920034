using Ohmstead.Tests.Mistakes;
using Ohmstead.Tests.Support;

namespace Ohmstead.Published.Tests;

/// <summary>Slips in the demo, found by both programs: the schema library, which looks at its own types, has its say in each.</summary>
public sealed class MistakeTests(PublishedProgram published)
{
    // One of each check.
    private static readonly IReadOnlyList<Mistake> Chosen = [.. Mistake.All.DistinctBy(mistake => mistake.Check)];

    /// <summary>Every third of them, each put into a demo of its own.</summary>
    public static TheoryData<string> Names { get; } = new(Chosen.Where((_, at) => at % 3 == 0).Select(mistake => mistake.Name));

    [Theory]
    [MemberData(nameof(Names))]
    public async Task A_mistake_is_told_alike_to_people(string name)
    {
        var mistake = Mistake.All.Single(one => one.Name == name);
        var outcome = await SideBySide.AsOneAsync(published, "$ohmstead check . --thorough", copy => Spoil(copy, mistake));
        Assert.Equal(mistake.Severity == "error" ? 1 : 0, outcome.Run.Exit);
        Assert.Contains($"[{mistake.Check}]", outcome.Run.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("text")]
    [InlineData("json")]
    [InlineData("annotations")]
    public async Task Many_mistakes_at_once_are_told_alike_in_every_form(string form)
    {
        // In each file the first that is meant for it.
        var perFile = Chosen.DistinctBy(mistake => mistake.Path).ToList();
        var outcome = await SideBySide.AsOneAsync(published, $"$ohmstead check . --thorough --workers 2 --form {form}", copy =>
            perFile.ForEach(mistake => Spoil(copy, mistake))
        );
        Assert.Equal(1, outcome.Run.Exit);
        Assert.All(perFile.Where(mistake => mistake.AlsoIn is null), mistake =>
            Assert.Contains(mistake.Check, outcome.Run.Out, StringComparison.Ordinal)
        );
    }

    [Fact]
    public void A_good_dozen_of_them_is_asked_and_every_kind_of_file()
    {
        Assert.InRange(Names.Count, 13, int.MaxValue);
        Assert.InRange(Chosen.DistinctBy(mistake => mistake.Path).Count(), 8, int.MaxValue);
    }

    private static void Spoil(CollectionCopy copy, Mistake mistake) => copy.Write(mistake.Path, mistake.Spoil(copy.Read(mistake.Path)));
}
