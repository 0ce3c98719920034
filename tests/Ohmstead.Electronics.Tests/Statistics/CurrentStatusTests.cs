using CsCheck;
using Ohmstead.Electronics.Statistics;

namespace Ohmstead.Electronics.Tests.Statistics;

public sealed class CurrentStatusTests
{
    // 1/10, 4/10, 3/10, 8/10 bad at 20, 30, 40, 50 years; R isoreg gives 0.10 0.35 0.35 0.80.
    [Fact]
    [Trait("CheckValue", "CV52")]
    public void An_age_that_looks_better_than_a_younger_one_is_pooled_with_it()
    {
        IReadOnlyList<ShareBad> estimate = CurrentStatus.Estimate([new(20, 1, 10), new(30, 4, 10), new(40, 3, 10), new(50, 8, 10)]).Value;
        Assert.Equal([0.10, 0.35, 0.35, 0.80], estimate.Select(s => s.Share));
        Assert.Equal([1, 4, 3, 8], estimate.Select(s => s.Bad));
    }

    [Fact]
    public void Inspections_of_one_age_are_counted_together() =>
        Assert.Equal([0.25], CurrentStatus.Estimate([new(20, 1, 2), new(20, 0, 2)]).Value.Select(s => s.Share));

    [Fact]
    public void The_estimate_never_falls_with_age_and_keeps_the_total_of_bad_ones() =>
        Rows.Sample(rows =>
        {
            IReadOnlyList<ShareBad> estimate = CurrentStatus.Estimate(rows).Value;
            double[] shares = [.. estimate.Select(s => s.Share)];
            return shares.Zip(shares.Skip(1)).All(p => p.Second >= p.First)
                && Math.Abs(estimate.Sum(s => s.Share * s.Looked) - rows.Sum(r => r.Bad)) < 1e-9;
        });

    // Both are the maximum likelihood estimate of the same data, so they must agree.
    [Fact]
    public void The_self_consistent_estimate_agrees_where_each_item_was_looked_at_once() =>
        Rows.Sample(
            rows =>
            {
                LifeObservation[] observations =
                [
                    .. rows.SelectMany(r =>
                        Enumerable
                            .Repeat(LifeObservation.FoundBadAt(r.Age), r.Bad)
                            .Concat(Enumerable.Repeat(LifeObservation.GoodAt(r.Age), r.Looked - r.Bad))
                    ),
                ];
                IntervalCensoredEstimate estimate = IntervalCensoredEstimate.Compute(observations).Value;
                return CurrentStatus.Estimate(rows).Value.All(s => Math.Abs(estimate.ShareFailedBy(s.Age) - s.Share) < 1e-3);
            },
            iter: 50
        );

    [Fact]
    public void The_self_consistent_estimate_gives_the_pooled_shares_of_the_worked_case()
    {
        Inspection[] rows = [new(20, 1, 10), new(30, 4, 10), new(40, 3, 10), new(50, 8, 10)];
        LifeObservation[] observations =
        [
            .. rows.SelectMany(r =>
                Enumerable
                    .Repeat(LifeObservation.FoundBadAt(r.Age), r.Bad)
                    .Concat(Enumerable.Repeat(LifeObservation.GoodAt(r.Age), r.Looked - r.Bad))
            ),
        ];
        IntervalCensoredEstimate estimate = IntervalCensoredEstimate.Compute(observations).Value;
        Assert.All(new[] { (20.0, 0.10), (30.0, 0.35), (40.0, 0.35), (50.0, 0.80) }, row =>
            Assert.Equal(row.Item2, estimate.ShareFailedBy(row.Item1), 1e-4)
        );
    }

    private static Gen<Inspection[]> Rows { get; } =
        Gen.Select(Gen.Int[1, 12], Gen.Int[0, 12])
            .Array[1, 6]
            .Select(pairs => pairs.Select((p, i) => new Inspection(10 * (i + 1), Math.Min(p.Item2, p.Item1), p.Item1)).ToArray());
}
