using Ohmstead.Assessment.Limits;
using Ohmstead.Assessment.Tests.Support;
using Ohmstead.Assessment.Verdicts;

namespace Ohmstead.Assessment.Tests.Verdicts;

/// <summary>Points of which only the nominal voltage is known: the usual range of what the rail feeds, data books, from memory; ripple by
/// common practice.</summary>
public sealed class UsualRailVerdictTests
{
    [Theory]
    [InlineData("nominal: 5 V", "4.75 V", VerdictOutcome.Inside)]
    [InlineData("nominal: 5 V", "4.74 V", VerdictOutcome.Outside)]
    [InlineData("nominal: 5 V, rail: CMOS 4000B", "4.74 V", VerdictOutcome.Inside)]
    [InlineData("nominal: -15 V", "-14.2 V", VerdictOutcome.Outside)]
    [InlineData("nominal: 80 V", "60 V", VerdictOutcome.NoLimit)]
    [InlineData("nominal: 5 V, low: 4.5 V", "4.6 V", VerdictOutcome.Inside)]
    public void A_rail_without_a_tolerance_is_held_against_what_is_usual(string point, string reading, VerdictOutcome outcome) =>
        Assert.Equal(outcome, Worked.Proof(point, $"voltage: {reading}").Outcome);

    [Theory]
    [InlineData("nominal: 5 V", "50 mV", VerdictOutcome.Inside)]
    [InlineData("nominal: 5 V", "51 mV", VerdictOutcome.Outside)]
    [InlineData("nominal: 42 V, rail: unregulated", "4.2 V", VerdictOutcome.Inside)]
    [InlineData("nominal: 42 V, rail: unregulated", "4.3 V", VerdictOutcome.Outside)]
    [InlineData("nominal: 42 V", "4.3 V", VerdictOutcome.NoLimit)]
    public void Ripple_without_a_limit_is_held_against_what_is_usual(string point, string reading, VerdictOutcome outcome) =>
        Assert.Equal(outcome, Worked.Proof(point, $"ripple: {reading}").Outcome);

    [Fact]
    public void A_usual_limit_says_that_it_is_one_and_where_it_comes_from()
    {
        var limit = Worked.Proof("nominal: 5 V", "voltage: 5.01 V").Limit!;
        Assert.Equal(LimitKind.Circuit, limit.Kind);
        Assert.Contains("the usual limit", limit.Origin, StringComparison.Ordinal);
        Assert.Contains("from memory", limit.Source, StringComparison.Ordinal);
    }
}
