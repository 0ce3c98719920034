using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Slips;

/// <summary>Makes each slip in a small collection, reads what is told, and follows it.</summary>
public sealed class SlipTests
{
    public static TheoryData<string> Names { get; } = new(Slip.All.Select(slip => slip.Name));

    [Theory]
    [MemberData(nameof(Names))]
    public void One_slip_gives_one_message_with_its_line_its_cause_and_what_to_write(string name)
    {
        var slip = Find(name);

        var told = Findings(slip, slip.With(slip.Put));

        var finding = Assert.Single(told);
        Assert.Equal(slip.Path, finding.Path);
        Assert.Equal(slip.Told, SlipPage.Told(finding));
        Assert.Equal(slip.Next, finding.Next);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void What_the_message_leads_to_has_no_finding_and_has_lost_nothing(string name)
    {
        var slip = Find(name);
        if (!slip.Judged.Mended)
        {
            return;
        }

        Assert.Empty(Findings(slip, slip.With(slip.Mended)));
        Assert.Equal(WrittenItems.Count(slip.Path, slip.Sound), WrittenItems.Count(slip.Path, slip.With(slip.Mended)) - Added(slip));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_text_to_write_is_written_as_it_stands_and_mends_the_slip(string name)
    {
        var slip = Find(name);
        if (!slip.Judged.Mended || HintFollower.TextOf(slip.Next) is not { } text)
        {
            return;
        }

        var spoilt = slip.With(slip.Put);
        var finding = Findings(slip, spoilt)[0];
        var tries = HintFollower.Tries(spoilt, finding.Line, finding.Column, text).ToList();
        Assert.True(
            tries.Exists(mended => Findings(slip, mended).Count == 0 && Items(slip, mended) >= Items(slip, slip.Sound)),
            $"'{text}' mends nothing on line {finding.Line}:\n{string.Join("\n---\n", tries.Select(one => LineOf(one, finding.Line)))}"
        );
    }

    [Fact]
    public void The_collection_itself_has_no_finding() => Assert.Empty(Findings(Slip.All[0], Slip.All[0].Sound));

    [Fact]
    public void There_are_more_than_two_hundred_slips_and_nearly_all_are_told_well()
    {
        Assert.Distinct(Slip.All.Select(slip => slip.Name));
        Assert.InRange(Slip.All.Count, 201, int.MaxValue);
        var hundredths = Slip.All.Count * 97 / 100;
        Assert.InRange(Slip.All.Count(slip => slip.Judged.Line), hundredths, Slip.All.Count);
        Assert.InRange(Slip.All.Count(slip => slip.Judged.Cause), hundredths, Slip.All.Count);
        Assert.InRange(Slip.All.Count(slip => slip.Judged.Mended), hundredths, Slip.All.Count);
    }

    [Fact]
    public void The_page_of_the_slips_is_what_they_are_told() =>
        WrittenFile.IsCurrent("tests/Ohmstead.Tests/Slips/SLIPS.md", SlipPage.Write(Slip.All, TypedSlip.All));

    private static Slip Find(string name) => Slip.All.Single(slip => slip.Name == name);

    // What a slip brings that the collection had not: a second reading, another key.
    private static int Added(Slip slip) => Math.Max(0, Items(slip, slip.With(slip.Mended)) - Items(slip, slip.Sound));

    private static int Items(Slip slip, string text) => WrittenItems.Count(slip.Path, text);

    private static string LineOf(string text, int line) => text.Split('\n')[line - 1];

    private static IReadOnlyList<ShownFinding> Findings(Slip slip, string text)
    {
        using var copy = CollectionCopy.Empty();
        foreach (var (path, sound) in Slip.Collection)
        {
            copy.Write(path, path == slip.Path ? text : sound);
        }

        return ShownFinding.FromJson(Run.Of("check", copy.Root, "--form", "json", "--as-of", "2026-06-01").Out);
    }
}
