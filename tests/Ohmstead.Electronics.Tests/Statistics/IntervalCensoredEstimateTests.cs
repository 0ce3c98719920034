using CsCheck;
using Ohmstead.Electronics.Statistics;

namespace Ohmstead.Electronics.Tests.Statistics;

public sealed class IntervalCensoredEstimateTests
{
    // With exact failures and right censoring the estimate is the product-limit curve (Turnbull 1976).
    [Fact]
    public void It_is_the_product_limit_curve_when_failures_are_exact()
    {
        foreach (FollowedItem[] items in new[] { Samples.Maintained, Samples.NotMaintained, Samples.Mercaptopurine })
        {
            IntervalCensoredEstimate estimate = IntervalCensoredEstimate.Compute(Samples.Observed(items)).Value;
            Assert.All(SurvivalCurve.Estimate(items).Value.Steps, s => Assert.Equal(1 - s.Survival, estimate.ShareFailedBy(s.Age), 1e-6));
        }
    }

    [Fact]
    public void It_agrees_with_the_product_limit_curve_for_any_right_censored_items() =>
        Gen.Select(Gen.Int[1, 15], Gen.Bool)
            .Array[1, 25]
            .Sample(
                rows =>
                {
                    FollowedItem[] items = [.. rows.Select(r => new FollowedItem(r.Item1, r.Item2))];
                    IntervalCensoredEstimate estimate = IntervalCensoredEstimate.Compute(Samples.Observed(items)).Value;
                    return SurvivalCurve
                        .Estimate(items)
                        .Value.Steps.All(s => Math.Abs(1 - s.Survival - estimate.ShareFailedBy(s.Age)) < 1e-5);
                },
                iter: 100
            );

    // Two disjoint intervals, two items each: half in each, by symmetry.
    [Fact]
    public void Disjoint_intervals_share_by_their_numbers()
    {
        IntervalCensoredEstimate estimate = IntervalCensoredEstimate
            .Compute([
                LifeObservation.Between(1, 2),
                LifeObservation.Between(1, 2),
                LifeObservation.Between(3, 4),
                LifeObservation.Between(3, 4),
            ])
            .Value;
        Assert.Equal([new FailureMass(1, 2, 0.5), new FailureMass(3, 4, 0.5)], estimate.Masses);
    }

    // A thousand in one and three thousand in the other: a quarter and three quarters.
    [Fact]
    public void Items_that_are_counted_already_count_as_many() =>
        Assert.Equal(
            [new FailureMass(1, 2, 0.25), new FailureMass(3, 4, 0.75)],
            IntervalCensoredEstimate
                .OfCounted([new(LifeObservation.Between(1, 2), 1000), new(LifeObservation.Between(3, 4), 3000)])
                .Value.Masses
        );

    // (0,2] and (1,3] overlap in (1,2]: all the mass goes there.
    [Fact]
    public void Overlapping_intervals_put_their_mass_where_they_overlap() =>
        Assert.Equal(
            new FailureMass(1, 2, 1),
            IntervalCensoredEstimate.Compute([LifeObservation.Between(0, 2), LifeObservation.Between(1, 3)]).Value.Masses.Single()
        );

    [Fact]
    public void What_outlives_all_looks_stays_unfailed()
    {
        IntervalCensoredEstimate estimate = IntervalCensoredEstimate
            .Compute([LifeObservation.FailedAt(5), LifeObservation.GoodAt(9)])
            .Value;
        Assert.Equal(0.5, estimate.ShareFailedBy(9), 1e-6);
        Assert.Equal(double.PositiveInfinity, estimate.Masses[^1].By);
    }

    [Fact]
    public void The_masses_are_probabilities_that_add_to_one() =>
        Gen.Select(Gen.Int[0, 20], Gen.Int[0, 10], Gen.Bool)
            .Array[1, 20]
            .Sample(
                rows =>
                {
                    LifeObservation[] items =
                    [
                        .. rows.Select(r =>
                            r.Item3 ? LifeObservation.GoodAt(r.Item1) : LifeObservation.Between(r.Item1, r.Item1 + r.Item2 + 1)
                        ),
                    ];
                    IReadOnlyList<FailureMass> masses = IntervalCensoredEstimate.Compute(items).Value.Masses;
                    return masses.All(m => m.Probability is >= 0 and <= 1.000001) && Math.Abs(masses.Sum(m => m.Probability) - 1) < 1e-9;
                },
                iter: 100
            );

    [Fact]
    public void An_item_bad_before_it_was_good_is_refused() =>
        Assert.Equal("failed by 3 but good at 5", IntervalCensoredEstimate.Compute([LifeObservation.Between(5, 3)]).Refusal);
}
