using Ohmstead.Assessment.Families;
using Ohmstead.Assessment.Families.Statistics;
using Ohmstead.Electronics.Statistics;

namespace Ohmstead.Assessment.Tests.Families;

public sealed class FirstLooksTests
{
    // One share for one age: it stands in the steps below, which know later looks too. 4 of 10 beside "35 %" would be two.
    [Fact]
    public void First_looks_are_counted_and_have_no_share_of_their_own()
    {
        var looks = new[] { (20, 1), (30, 4), (40, 3), (50, 8) }
            .SelectMany(row => Enumerable.Range(0, 10).Select(i => new Inspection(row.Item1, i < row.Item2 ? 1 : 0, 1)))
            .ToArray();
        Assert.Equal(
            "Bad at the first inspection, by age: 20 years 1 of 10; 30 years 4 of 10; 40 years 3 of 10; 50 years 8 of 10.",
            FamilyAges.FirstLooks(Family(looks))
        );
    }

    [Fact]
    public void Four_parts_say_nothing_and_neither_do_many_of_one_age()
    {
        Assert.Empty(FamilyAges.FirstLooks(Family([new(20, 0, 1), new(30, 1, 1), new(31, 0, 1), new(40, 1, 1)])));
        Assert.Empty(FamilyAges.FirstLooks(Family([.. Enumerable.Repeat(new Inspection(40, 1, 1), 9)])));
    }

    private static FamilyStatistics Family(IReadOnlyList<Inspection> looks) =>
        new(new("paper", null, null), looks.Count, looks.Count, 1, 0, 0, 0, AgesAtFailure.Compute([])) { FirstLooks = looks };
}
