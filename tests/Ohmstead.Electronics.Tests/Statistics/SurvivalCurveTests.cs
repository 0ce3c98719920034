using CsCheck;
using Ohmstead.Electronics.Statistics;

namespace Ohmstead.Electronics.Tests.Statistics;

public sealed class SurvivalCurveTests
{
    // Miller, Survival Analysis, 1981 (data from memory), table as printed by R survival 3.5.
    [Fact]
    [Trait("CheckValue", "CV53")]
    public void The_maintained_leukaemia_group_gives_the_published_curve()
    {
        SurvivalCurve curve = SurvivalCurve.Estimate(Samples.Maintained).Value;
        Assert.Equal([9, 13, 18, 23, 31, 34, 48], curve.Steps.Select(s => s.Age));
        Assert.Equal([11, 10, 8, 7, 5, 4, 2], curve.Steps.Select(s => s.AtRisk));
        Same([0.9091, 0.8182, 0.7159, 0.6136, 0.4909, 0.3682, 0.1841], curve.Steps.Select(s => s.Survival), 5e-5);
        Same([0.0867, 0.1163, 0.1397, 0.1526, 0.1642, 0.1627, 0.1535], curve.Steps.Select(s => s.StandardError!.Value), 5e-5);
        Assert.Equal(31, curve.Median);
    }

    // The other group of the same book; log-rank by R survival 3.5.
    [Fact]
    public void The_other_leukaemia_group_falls_to_zero()
    {
        SurvivalCurve curve = SurvivalCurve.Estimate(Samples.NotMaintained).Value;
        Same([0.8333, 0.6667, 0.5833, 0.4861, 0.3889, 0.2917, 0.1944, 0.0972, 0], curve.Steps.Select(s => s.Survival), 5.1e-5);
        Assert.Null(curve.Steps[^1].StandardError);
        Assert.Equal(23, curve.Median);
        LogRank test = LogRank.Compare(Samples.Maintained, Samples.NotMaintained).Value;
        Assert.Equal(3.396, test.ChiSquare, 5e-4);
        Assert.Equal(0.0653, test.Probability, 5e-5);
    }

    // Freireich et al., Blood 21 (1963) 699 (data from memory); log-rank 16.79, expected 19.25.
    [Fact]
    [Trait("CheckValue", "CV54")]
    public void The_remission_study_gives_the_published_curve_and_test()
    {
        SurvivalCurve curve = SurvivalCurve.Estimate(Samples.Mercaptopurine).Value;
        Assert.Equal([6, 7, 10, 13, 16, 22, 23], curve.Steps.Select(s => s.Age));
        Same([0.857, 0.807, 0.753, 0.690, 0.627, 0.538, 0.448], curve.Steps.Select(s => s.Survival), 5e-4);
        Same([0.0764, 0.0869, 0.0963, 0.1068, 0.1141, 0.1282, 0.1346], curve.Steps.Select(s => s.StandardError!.Value), 5.1e-5);
        Assert.Equal(23, curve.Median);
        LogRank test = LogRank.Compare(Samples.Mercaptopurine, Samples.Placebo).Value;
        Assert.Equal(16.79, test.ChiSquare, 5e-3);
        Assert.Equal(19.25, test.ExpectedInFirst, 5e-3);
    }

    // Six items that entered late, by R survival 3.5: 0.80 0.64 0.48 0.24; by hand as well.
    [Fact]
    [Trait("CheckValue", "CV55")]
    public void Items_that_enter_late_are_not_at_risk_before()
    {
        FollowedItem[] items =
        [
            new(30, true, 10),
            new(40, false, 15),
            new(22, true),
            new(45, true, 20),
            new(18, true, 5),
            new(50, false, 12),
        ];
        SurvivalCurve curve = SurvivalCurve.Estimate(items).Value;
        Same([0.80, 0.64, 0.48, 0.24], curve.Steps.Select(s => s.Survival), 1e-12);
        SurvivalCurve ignoring = SurvivalCurve.Estimate([.. items.Select(i => i with { From = 0 })]).Value;
        Same([0.8333, 0.6667, 0.50, 0.25], ignoring.Steps.Select(s => s.Survival), 5e-5);
    }

    [Fact]
    public void A_median_that_was_not_reached_is_unknown() =>
        Assert.Null(SurvivalCurve.Estimate(Samples.Followed(5, -10, -10, -10)).Value.Median);

    [Fact]
    public void An_item_that_leaves_before_it_enters_is_refused() =>
        Assert.Equal("an item left at 5, not after it entered at 8", SurvivalCurve.Estimate([new(5, true, 8)]).Refusal);

    [Fact]
    public void No_item_at_all_is_refused() => Assert.Equal("no item was followed", SurvivalCurve.Estimate([]).Refusal);

    [Fact]
    public void A_curve_only_falls_and_stays_a_probability() =>
        Gen.Select(Gen.Int[1, 30], Gen.Bool)
            .Array[1, 40]
            .Sample(rows =>
            {
                double[] survival =
                [
                    1,
                    .. SurvivalCurve
                        .Estimate([.. rows.Select(r => new FollowedItem(r.Item1, r.Item2))])
                        .Value.Steps.Select(s => s.Survival),
                ];
                return survival.All(s => s is >= 0 and <= 1) && survival.Zip(survival.Skip(1)).All(p => p.Second <= p.First);
            });

    [Fact]
    public void A_group_compared_with_itself_shows_no_difference() =>
        Assert.Equal(0, LogRank.Compare(Samples.Maintained, Samples.Maintained).Value.ChiSquare, 1e-12);

    private static void Same(double[] expected, IEnumerable<double> actual, double within)
    {
        double[] found = [.. actual];
        Assert.Equal(expected.Length, found.Length);
        Assert.All(expected.Zip(found), p => Assert.Equal(p.First, p.Second, within));
    }
}
