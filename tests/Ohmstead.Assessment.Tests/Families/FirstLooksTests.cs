using Ohmstead.Assessment.Families;
using Ohmstead.Electronics.Statistics;

namespace Ohmstead.Assessment.Tests.Families;

public sealed class FirstLooksTests
{
    // 1/10, 4/10, 3/10, 8/10 bad at 20, 30, 40, 50 years: pooling gives 0.10 0.35 0.35 0.80 (R isoreg).
    [Fact]
    public void The_share_bad_at_the_first_look_never_falls_with_age()
    {
        var looks = new[] { (20, 1), (30, 4), (40, 3), (50, 8) }.SelectMany(row => Enumerable.Range(0, 10).Select(i => new Inspection(row.Item1, i < row.Item2 ? 1 : 0, 1))).ToArray();
        var words = FamilyAges.FirstLooks(Family(looks));
        Assert.StartsWith("Bad at the first look, by age: 20 years 1 of 10, 10 %; 30 years 4 of 10, 35 %; 40 years 3 of 10, 35 %; 50 years 8 of 10, 80 %.", words, StringComparison.Ordinal);
    }

    [Fact]
    public void Four_parts_say_nothing_and_neither_do_many_of_one_age()
    {
        Assert.Empty(FamilyAges.FirstLooks(Family([new(20, 0, 1), new(30, 1, 1), new(31, 0, 1), new(40, 1, 1)])));
        Assert.Empty(FamilyAges.FirstLooks(Family([.. Enumerable.Repeat(new Inspection(40, 1, 1), 9)])));
    }

    private static FamilyStatistics Family(IReadOnlyList<Inspection> looks) =>
        new(new("paper", null, null), looks.Count, looks.Count, 1, 0, 0, 0, AgesAtFailure.Of([])) { FirstLooks = looks };
}
