namespace Ohmstead.Assessment.Tests.Reckoning;

/// <summary>Rules of uncertainty as worked at the bench.</summary>
public sealed class UncertaintyRulesTests
{
    // JCGM 100:2008, H.2: five readings of a voltage, and of a current in milliampere at the same times (from memory).
    private const string Volts = "readings=5.007,4.994,5.005,4.990,4.999";
    private const string Milliamperes = "second=19.663,19.639,19.640,19.685,19.678";

    [Theory]
    // 0.5 % of 412.0 and five counts of 0.1 make 2.56; over sqrt 3.
    [InlineData("uncertainty", "reading=412.0 accuracy=0.5% digits=5 resolution=0.1", "limits of error", 2.56, 0)]
    [InlineData("uncertainty", "reading=412.0 accuracy=0.5% digits=5 resolution=0.1", "standard uncertainty", 1.4780, 1e-4)]
    [InlineData("uncertainty", "reading=412.0 accuracy=0.5% digits=5 resolution=0.1", "expanded uncertainty", 2.9560, 1e-4)]
    // 0.1 over sqrt 12, sqrt 6, sqrt 3, sqrt 2 and 2, by hand calculator.
    [InlineData("standard-uncertainty", "shape=resolution value=0.1", "standard", 0.028868, 1e-6)]
    [InlineData("standard-uncertainty", "shape=triangular value=0.1", "standard", 0.040825, 1e-6)]
    [InlineData("standard-uncertainty", "shape=rectangular value=0.1", "standard", 0.057735, 1e-6)]
    [InlineData("standard-uncertainty", "shape=u-shaped value=0.1", "standard", 0.070711, 1e-6)]
    [InlineData("standard-uncertainty", "shape=certificate value=0.1 k=2", "standard", 0.05, 1e-9)]
    [InlineData("repeated", Volts, "mean", 4.9990, 1e-9)]
    [InlineData("repeated", Volts, "standard uncertainty of the mean", 0.0032, 5e-5)]
    [InlineData("repeated", Volts + " " + Milliamperes, "correlation", -0.36, 0.005)]
    // 3 and 4 make 5; fully correlated they add.
    [InlineData("budget", "components=3,4", "combined", 5, 1e-9)]
    [InlineData("budget", "components=3,4 correlation=1", "combined", 7, 1e-9)]
    // Two equal components of four degrees each: (sqrt 2)^4 / (1/4 + 1/4) = 8; Student's t for 95 % at 8 is tabled as 2.306.
    [InlineData("budget", "components=1@4,1@4", "effective degrees", 8, 1e-9)]
    [InlineData("budget", "components=1@4,1@4", "coverage factor", 2.306, 5e-4)]
    // 0.03 below the limit is 1.6313 standard uncertainties; normal table.
    [InlineData("decision", "reading=0.42 uncertainty=0.03678 high=0.45", "inside with probability", 0.94859, 1e-4)]
    // 10 % of 470 over 2 x 25.5 / sqrt 3.
    [InlineData("uncertainty-ratio", "tolerance=47 uncertainty=29.445", "ratio", 1.596, 1e-3)]
    public void A_rule_of_uncertainty_gives_the_worked_figure(string rule, string inputs, string what, double expected, double within) =>
        Bench.Expect(rule, inputs, what, expected, within);

    [Fact]
    public void A_reading_inside_by_less_than_its_uncertainty_is_accepted_by_the_simple_rule_and_not_by_the_guarded_one()
    {
        const string inputs = "reading=0.42 uncertainty=0.03678 high=0.45";
        Assert.Equal("inside, but not proved: accepted", Bench.Line("decision", inputs, "simple acceptance").Value);
        Assert.Equal("inside, but not proved: not accepted", Bench.Line("decision", inputs, "guard band of U").Value);
    }
}
