using CsCheck;
using Ohmstead.Electronics.Statistics;

namespace Ohmstead.Electronics.Tests.Statistics;

public sealed class ProportionIntervalTests
{
    // Newcombe, Statistics in Medicine 17 (1998) 857-872, table I, from memory: the first four rows; the others by R 4.2 (prop.test).
    [Theory]
    [Trait("CheckValue", "CV50")]
    [InlineData(81, 263, 0.2553, 0.3662)]
    [InlineData(15, 148, 0.0624, 0.1605)]
    [InlineData(0, 20, 0.0000, 0.1611)]
    [InlineData(1, 29, 0.0061, 0.1718)]
    [InlineData(3, 25, 0.0417, 0.2996)]
    [InlineData(7, 40, 0.0875, 0.3195)]
    [InlineData(5, 5, 0.5655, 1.0000)]
    public void The_score_interval_gives_the_published_limits(int bad, int looked, double low, double high) =>
        Same(low, high, ProportionInterval.Wilson(bad, looked).Value);

    // The same table; the last rows by R 4.2.
    [Theory]
    [InlineData(81, 263, 0.2535, 0.3682)]
    [InlineData(15, 148, 0.0598, 0.1644)]
    [InlineData(0, 20, 0.0000, 0.2005)]
    [InlineData(1, 29, 0.0018, 0.1963)]
    [InlineData(12, 60, 0.1119, 0.3270)]
    [InlineData(5, 5, 0.4629, 1.0000)]
    public void The_corrected_score_interval_gives_the_published_limits(int bad, int looked, double low, double high) =>
        Same(low, high, ProportionInterval.WilsonCorrected(bad, looked).Value);

    // The same table; the last rows by R 4.2 (binom.test).
    [Theory]
    [InlineData(81, 263, 0.2527, 0.3676)]
    [InlineData(15, 148, 0.0578, 0.1617)]
    [InlineData(0, 20, 0.0000, 0.1684)]
    [InlineData(1, 29, 0.0009, 0.1776)]
    [InlineData(0, 30, 0.0000, 0.1157)]
    [InlineData(5, 5, 0.4782, 1.0000)]
    public void The_exact_interval_gives_the_published_limits(int bad, int looked, double low, double high) =>
        Same(low, high, ProportionInterval.ClopperPearson(bad, looked).Value);

    [Fact]
    public void None_bad_is_exactly_zero_and_all_bad_exactly_one()
    {
        Assert.Equal(0, ProportionInterval.Wilson(0, 30).Value.Low);
        Assert.Equal(1, ProportionInterval.Wilson(30, 30).Value.High);
    }

    [Fact]
    public void Nothing_looked_at_has_no_interval() =>
        Assert.Equal("nothing was looked at: there is no share and no interval", ProportionInterval.Wilson(0, 0).Refusal);

    [Fact]
    public void More_bad_than_looked_at_is_refused() =>
        Assert.Equal("5 bad of 4 cannot be", ProportionInterval.ClopperPearson(5, 4).Refusal);

    [Fact]
    public void Every_interval_lies_in_zero_to_one_and_holds_the_share() =>
        Gen.Select(Gen.Int[1, 2000], Gen.Double[0, 1])
            .Sample(
                (looked, part) =>
                {
                    int bad = (int)(part * looked);
                    double share = (double)bad / looked;
                    ConfidenceInterval[] all =
                    [
                        ProportionInterval.Wilson(bad, looked).Value,
                        ProportionInterval.WilsonCorrected(bad, looked).Value,
                        ProportionInterval.ClopperPearson(bad, looked).Value,
                    ];
                    return all.All(i => i.Low >= 0 && i.High <= 1 && i.Low <= share + 1e-12 && i.High >= share - 1e-12);
                }
            );

    // 1 - 0.05^(1/n), by hand calculator; 59 is the first number under 0.05.
    [Theory]
    [Trait("CheckValue", "CV51")]
    [InlineData(10, 0.2589)]
    [InlineData(20, 0.1391)]
    [InlineData(30, 0.0950)]
    [InlineData(50, 0.0582)]
    [InlineData(59, 0.0495)]
    [InlineData(300, 0.00994)]
    public void No_failure_at_all_still_leaves_an_upper_limit(int looked, double limit) =>
        Assert.Equal(limit, RuleOfThree.UpperLimit(looked).Value.Value, 5e-5);

    private static void Same(double low, double high, ConfidenceInterval interval)
    {
        Assert.Equal(low, interval.Low, 5.1e-5);
        Assert.Equal(high, interval.High, 5.1e-5);
    }
}
