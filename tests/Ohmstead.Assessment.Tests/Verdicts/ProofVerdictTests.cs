using Ohmstead.Assessment.Tests.Support;
using Ohmstead.Assessment.Verdicts;

namespace Ohmstead.Assessment.Tests.Verdicts;

public sealed class ProofVerdictTests
{
    private const string Rail = "nominal: 5 V, tolerance: 5 %, ripple_limit: 10 mV";

    // 5 x 0.95 = 4.75 V. a = 0.5 % x 4.78 + 2 x 0.01 = 0.0439 V, u = 0.02535 V, U = 0.0507 V; 4.78 - 4.75 = 0.03 V is less. Probability
    // inside:
    // normal integral of 0.03 / 0.02535 = 1.184, which is 0.882. JCGM 100:2008 4.3.7 and JCGM 106:2012, from memory.
    [Fact]
    public void A_rail_of_4_78_volts_on_a_three_digit_meter_is_too_close_to_4_75_volts_to_call()
    {
        var verdict = Worked.Proof(Rail, "voltage: 4.78 V, instrument: meter-1");
        Assert.Equal(VerdictOutcome.Undecided, verdict.Outcome);
        Assert.Equal(4.75m, verdict.Limit?.Interval.Lower?.Value);
        Assert.Equal(0.0507, (double)verdict.Uncertainty!.Value.Value, 0.0001);
        Assert.Equal(0.882, verdict.Probability!.Value, 0.001);
    }

    [Theory]
    [InlineData("4.75 V", VerdictOutcome.Inside)]
    [InlineData("4.74 V", VerdictOutcome.Outside)]
    [InlineData("5.25 V", VerdictOutcome.Inside)]
    [InlineData("5.26 V", VerdictOutcome.Outside)]
    public void A_rail_exactly_on_its_limit_is_inside(string reading, VerdictOutcome outcome) =>
        Assert.Equal(outcome, Worked.Proof(Rail, $"voltage: {reading}").Outcome);

    [Theory]
    [InlineData("-14.25 V", VerdictOutcome.Inside)]
    [InlineData("-14.24 V", VerdictOutcome.Outside)]
    [InlineData("-15.75 V", VerdictOutcome.Inside)]
    [InlineData("15.0 V", VerdictOutcome.Outside)]
    public void A_negative_rail_has_its_limits_the_right_way_round(string reading, VerdictOutcome outcome) =>
        Assert.Equal(outcome, Worked.Proof("nominal: -15 V, tolerance: 5 %", $"voltage: {reading}").Outcome);

    [Theory]
    [InlineData("10 mV", VerdictOutcome.Inside)]
    [InlineData("11 mV", VerdictOutcome.Outside)]
    public void Ripple_is_held_against_its_own_limit(string reading, VerdictOutcome outcome) =>
        Assert.Equal(outcome, Worked.Proof(Rail, $"ripple: {reading}").Outcome);

    [Theory]
    [InlineData("4", VerdictOutcome.Inside)]
    [InlineData("3.5", VerdictOutcome.Outside)]
    public void A_soak_lasts_at_least_the_hours_that_are_asked_for(string hours, VerdictOutcome outcome) =>
        Assert.Equal(outcome, Worked.Proof("measures: hours, hours: 4", $"hours: {hours}").Outcome);
}
