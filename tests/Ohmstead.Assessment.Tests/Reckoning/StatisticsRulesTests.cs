namespace Ohmstead.Assessment.Tests.Reckoning;

/// <summary>Rules of statistics as worked at the bench.</summary>
public sealed class StatisticsRulesTests
{
    // Miller's leukaemia data and Freireich's, as printed with the method (from memory).
    private const string Maintained = "ages=9,13,13+,18,23,28+,31,34,45+,48,161+";
    private const string Treated = "first=6,6,6,6+,7,9+,10,10+,11+,13,16,17+,19+,20+,22,23,25+,32+,32+,34+,35+";
    private const string Placebo = "second=1,1,2,2,3,4,4,5,5,8,8,8,8,11,11,12,12,15,17,22,23";

    // NIST/SEMATECH e-Handbook 8.4.1: ten failures, ten units that ran 500 h.
    private const string Units = "ages=54,187,216,240,244,335,361,373,375,386,500+,500+,500+,500+,500+,500+,500+,500+,500+,500+";

    [Theory]
    [InlineData("survival", Maintained, "good after 31", 0.6136 * 0.8, 5e-5)]
    [InlineData("survival", Maintained, "good after 13", 0.8182, 5e-5)]
    [InlineData("survival", Maintained, "median", 31, 0)]
    [InlineData("log-rank", Treated + " " + Placebo, "test statistic", 16.79, 5e-3)]
    [InlineData("weibull", Units, "shape beta", 1.7208, 5e-4)]
    [InlineData("weibull", Units, "scale eta", 606.528, 5e-3)]
    // eta (-ln 0.9)^(1 / beta) = 606.528 x 0.10536^0.58113, by hand calculator.
    [InlineData("weibull", Units, "age by which", 164.0, 0.2)]
    // 1 - exp((300/606.528)^1.7208 - (500/606.528)^1.7208), by hand calculator.
    [InlineData("weibull", Units + " good-at=300 later=500", "good at 300", 0.3426, 1e-4)]
    // Two of four failed by 10, one between 10 and 20, one is good at 20: the halves and quarters are plain.
    [InlineData("ages-at-failure", "ages=..10,..10,10..20,20+ by=10", "failed by 10", 0.5, 1e-6)]
    [InlineData("ages-at-failure", "ages=..10,..10,10..20,20+ by=10", "fail after 20", 0.25, 1e-6)]
    // Published with the pooling of neighbours: 1/10, then 4/10 and 3/10 together.
    [InlineData("inspected-once", "looks=1/10@10,4/10@20,3/10@30,8/10@40", "bad by 30", 0.35, 1e-12)]
    // Points (0, 0), (1, 1), (2, 1): slope 1/2, value 1/6, one degree of freedom and 1/6 left, so s = sqrt(1/6).
    [InlineData("trend", "readings=0:0,1:1,2:1", "slope", 0.5, 1e-12)]
    [InlineData("trend", "readings=0:0,1:1,2:1", "value at time 0", 0.166667, 1e-6)]
    [InlineData("trend", "readings=0:0,1:1,2:1", "scatter", 0.408248, 1e-6)]
    // R 4.2 on the same five readings: the upper prediction limit is at 0.42 after 6.94 years.
    [InlineData("trend", "readings=0:0.21,1:0.24,2:0.25,3:0.29,4:0.30 limit=0.42", "may reach", 6.942, 1e-3)]
    // 1 - 0.05^(1/20).
    [InlineData("proportion", "bad=0 looked=20", "none bad", 0.1391, 5e-5)]
    public void A_rule_of_statistics_gives_the_published_figure(string rule, string inputs, string what, double expected, double within) =>
        Bench.Expect(rule, inputs, what, expected, within);

    // Newcombe prints .0061 to .1718 for 1 of 29 and .0624 to .1605 for 15 of 148 by the score; exactly, 1 of 29 reaches from 1 -
    // 0.975^(1/29).
    [Theory]
    [InlineData("bad=1 looked=29", "Wilson", "0.61", "17.1")]
    [InlineData("bad=15 looked=148", "Wilson", "6.23", "16.0")]
    [InlineData("bad=1 looked=29", "exact", "0.087", "17.7")]
    public void An_interval_of_a_share_is_the_published_one(string inputs, string what, string low, string high)
    {
        var value = Bench.Line("proportion", inputs, what).Value;
        Assert.StartsWith(low, value, StringComparison.Ordinal);
        Assert.Contains("% to " + high, value, StringComparison.Ordinal);
    }
}
