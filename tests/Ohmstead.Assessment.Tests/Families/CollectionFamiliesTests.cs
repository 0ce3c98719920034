using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Families;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.Families;

/// <summary>The families of several boards together.</summary>
public sealed class CollectionFamiliesTests
{
    // Two boards of three places; of maker Ostrel 2 of 4 are outside (limits 376 µF to 564 µF), of unknown maker 1 of 2.
    [Fact]
    public void Every_part_counts_in_its_kind_and_in_its_maker()
    {
        var families = CollectionFamilies.Count([Board("300 µF", "460 µF", "300 µF"), Board("300 µF", "460 µF", "460 µF")]);
        Assert.Equal(["aluminium electrolytic", "aluminium electrolytic, Ostrel"], families.Select(family => family.Name.Text));
        Assert.Equal(
            [(6, 6, 2, 3), (4, 4, 2, 2)],
            families.Select(family => (family.Parts, family.Measured, family.Boards, family.FailedAsFound))
        );
        Assert.Equal(0.5, families[0].Share!.Share);
        Assert.Null(families[1].Share);
    }

    // Made in 1980 and looked at in 2020: all six at 40 years, three of them bad.
    [Fact]
    public void Parts_of_one_age_are_counted_together()
    {
        var kind = CollectionFamilies.Count([Board("300 µF", "460 µF", "300 µF"), Board("300 µF", "460 µF", "460 µF")])[0];
        Assert.Equal([(40, 3, 6)], kind.FirstLooks.Select(look => (look.Age, look.Bad, look.Looked)));
        Assert.Equal((6, 3, 0), (kind.Ages.Observed, kind.Ages.FailedByFirstLook, kind.Ages.FailedBetweenLooks));
    }

    [Fact]
    public void The_largest_share_comes_first_and_too_few_come_last()
    {
        var paper = Board("300 µF", "300 µF", "300 µF", "paper");
        var tantalum = Board("300 µF", "460 µF", "460 µF", "tantalum");
        var mica = Board("300 µF", "300 µF", "300 µF", "mica");
        Assert.Equal(
            ["paper", "tantalum", "mica", "mica, Ostrel", "paper, Ostrel", "tantalum, Ostrel"],
            CollectionFamilies.Count([tantalum, mica, paper, tantalum, paper]).Select(family => family.Name.Text)
        );
    }

    [Fact]
    public void A_collection_without_readings_has_no_families() =>
        Assert.Empty(
            CollectionFamilies.Count([BoardSummary.From(Worked.Board("parts:\n  - { ref: C1, kind: paper, capacitance: 100 nF }"))])
        );

    private static BoardSummary Board(string first, string second, string third, string kind = "aluminium electrolytic")
    {
        string Part(string reference, string maker) =>
            $"  - {{ ref: {reference}, kind: {kind}, capacitance: 470 µF, tolerance: ±20 %{maker} }}\n";
        string Reading(string reference, string value) => $"\n      - {{ part: {reference}, circuit: out, capacitance: {value} }}";
        return BoardSummary.From(
            Worked.Board(
                "made: 1980\nparts:\n"
                    + Part("C1", ", maker: Ostrel")
                    + Part("C2", ", maker: Ostrel")
                    + Part("C3", string.Empty)
                    + "bench:\n  - date: 2020-03-14\n    readings:"
                    + Reading("C1", first)
                    + Reading("C2", second)
                    + Reading("C3", third)
            )
        );
    }
}
