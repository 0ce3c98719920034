using Ohmstead.Assessment.Families;
using Ohmstead.Assessment.Families.Statistics;
using Ohmstead.Electronics.Statistics;

namespace Ohmstead.Assessment.Tests.Families.Statistics;

/// <summary>When ages at failure can be told, and when not.</summary>
public sealed class AgesAtFailureTests
{
    [Fact]
    public void Four_parts_are_too_few_to_say() =>
        Assert.Equal("too few to say: 4 of known age, 5 or more wanted", AgesAtFailure.Compute(Good(4)).Steps.Refusal);

    [Fact]
    public void Parts_of_which_none_failed_have_no_ages_at_failure() =>
        Assert.Equal("none of 6 has failed, the oldest seen good at 45 years", AgesAtFailure.Compute(Good(6)).Steps.Refusal);

    // Six failed between 10 and 12 years, six between 20 and 24: half in each, by symmetry.
    [Fact]
    public void Failures_between_two_looks_share_by_their_numbers()
    {
        var ages = AgesAtFailure.Compute([new(LifeObservation.Between(10, 12), 6), new(LifeObservation.Between(20, 24), 6)]);
        Assert.Equal((12, 0, 12), (ages.Observed, ages.FailedByFirstLook, ages.FailedBetweenLooks));
        Assert.Equal(
            [new AgeStep("after 10 and by 12 years", "50 %", "50 %"), new AgeStep("after 20 and by 24 years", "50 %", "100 %")],
            FamilyAges.Steps(ages.Steps.Value)
        );
        Assert.Equal("too few to say: 2 distinct ages at failure, 3 or more wanted", ages.Life.Refusal);
    }

    // NIST/SEMATECH e-Handbook 8.4.1.2, from memory: ten of twenty units failed at these hours, the others ran 500 h; shape 1.7208, scale
    // 606.5280.
    [Fact]
    public void A_weibull_life_of_the_published_example_has_its_shape_and_its_scale()
    {
        double[] hours = [54, 187, 216, 240, 244, 335, 361, 373, 375, 386];
        var life = AgesAtFailure
            .Compute([.. hours.Select(age => new LikeItems(LifeObservation.FailedAt(age), 1)), new(LifeObservation.GoodAt(500), 10)])
            .Life.Value;
        Assert.Equal(1.7208, life.Fit.Life.Shape, 1e-3);
        Assert.Equal(606.5280, life.Fit.Life.Scale, 0.1);
        Assert.True(life.Shape.Low < 1.7208 && life.Shape.High > 1.7208);
    }

    // Three ages are enough and two are not, whatever else was looked at: common practice, which the message says.
    [Theory]
    [InlineData(3, true)]
    [InlineData(2, false)]
    public void Three_distinct_ages_are_enough(int distinct, bool isTold)
    {
        var life = AgesAtFailure
            .Compute([.. Enumerable.Range(0, distinct).Select(nth => new LikeItems(LifeObservation.FailedAt(10 + (4 * nth)), 4))])
            .Life;
        Assert.Equal(isTold, life.Is(out _, out var why));
        Assert.Equal(isTold ? null : "too few to say: 2 distinct ages at failure, 3 or more wanted", why);
    }

    // Three failures at ages nobody saw fit almost any life.
    [Fact]
    public void A_life_that_may_be_anything_is_not_told() =>
        Assert.False(
            AgesAtFailure
                .Compute([
                    new(LifeObservation.FoundBadAt(40), 1),
                    new(LifeObservation.FoundBadAt(41), 1),
                    new(LifeObservation.FoundBadAt(42), 1),
                    .. Good(3),
                ])
                .Life.Is(out _, out _)
        );

    private static IReadOnlyList<LikeItems> Good(int count) =>
        [.. Enumerable.Range(0, count).Select(i => new LikeItems(LifeObservation.GoodAt(40 + i), 1))];
}
