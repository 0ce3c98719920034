using Ohmstead.Assessment.Limits;
using Ohmstead.Assessment.Tests.Support;
using Ohmstead.Assessment.Verdicts;

namespace Ohmstead.Assessment.Tests.Verdicts;

public sealed class EsrVerdictTests
{
    private const string OwnLimit = "kind: aluminium electrolytic, capacitance: 470 µF, rated_voltage: 25 V, esr_limit: 0.45 Ω";
    private const string ByLoss = "kind: aluminium electrolytic, capacitance: 1000 µF, rated_voltage: 25 V, loss_factor_limit: 0.16";

    // The limit is what the record says: common practice.
    [Theory]
    [InlineData("0.420 Ω", VerdictOutcome.Inside)]
    [InlineData("0.45 Ω", VerdictOutcome.Inside)]
    [InlineData("0.451 Ω", VerdictOutcome.Outside)]
    public void An_ESR_is_held_against_the_limit_that_is_written(string reading, VerdictOutcome outcome) =>
        Assert.Equal(outcome, Worked.Verdict(OwnLimit, $"circuit: out, frequency: 100 kHz, esr: {reading}").Outcome);

    // ESR = tan delta / (2 pi f C) = 0.16 / (6.28319 x 120 x 0.001) = 0.2122 ohm, IEC 60384-1; twice that for a worn part: common practice.
    [Theory]
    [InlineData("new", 0.2122, LimitKind.Delivery)]
    [InlineData("as found", 0.4244, LimitKind.EndOfLife)]
    public void A_dissipation_factor_of_0_16_at_120_hertz_gives_the_ESR_limit_of_1000_microfarad(string state, double ohms, LimitKind kind)
    {
        var limit = Worked.Verdict(ByLoss, $"state: {state}, circuit: out, frequency: 120 Hz, esr: 0.1 Ω").Limit;
        Assert.NotNull(limit);
        Assert.Equal(ohms, (double)limit.Interval.Upper!.Value.Value, 0.0001);
        Assert.Equal(kind, limit.Kind);
    }

    [Theory]
    [InlineData("new", "0.21 Ω", VerdictOutcome.Inside)]
    [InlineData("new", "0.22 Ω", VerdictOutcome.Outside)]
    [InlineData("as found", "0.42 Ω", VerdictOutcome.Inside)]
    [InlineData("as found", "0.43 Ω", VerdictOutcome.Outside)]
    public void A_worn_part_may_have_twice_the_ESR_of_a_new_one(string state, string reading, VerdictOutcome outcome) =>
        Assert.Equal(outcome, Worked.Verdict(ByLoss, $"state: {state}, circuit: out, frequency: 120 Hz, esr: {reading}").Outcome);

    // From the formula above: without f there is no limit to hold it against.
    [Theory]
    [InlineData("0.1 Ω")]
    [InlineData("0.9 Ω")]
    public void An_ESR_without_its_test_frequency_proves_nothing_against_a_dissipation_factor(string reading)
    {
        var verdict = Worked.Verdict(ByLoss, $"circuit: out, esr: {reading}");
        Assert.Equal(VerdictOutcome.ProvesNothing, verdict.Outcome);
        Assert.Contains("the test frequency is not recorded", verdict.Why, StringComparison.Ordinal);
    }

    // The loss of the dielectric falls with frequency, so ESR at 100 kHz is the smaller: common practice.
    [Theory]
    [InlineData("0.1 Ω", VerdictOutcome.ProvesNothing)]
    [InlineData("0.9 Ω", VerdictOutcome.Outside)]
    public void An_ESR_at_100_kilohertz_can_break_a_limit_of_120_hertz_but_not_keep_it(string reading, VerdictOutcome outcome) =>
        Assert.Equal(outcome, Worked.Verdict(ByLoss, $"circuit: out, frequency: 100 kHz, esr: {reading}").Outcome);

    [Theory]
    [InlineData("0.32", VerdictOutcome.Inside)]
    [InlineData("0.321", VerdictOutcome.Outside)]
    public void A_worn_part_may_have_twice_its_dissipation_factor(string reading, VerdictOutcome outcome) =>
        Assert.Equal(outcome, Worked.Verdict(ByLoss, $"circuit: out, frequency: 120 Hz, loss_factor: {reading}").Outcome);

    [Fact]
    public void A_dissipation_factor_without_its_test_frequency_proves_nothing() =>
        Assert.Equal(VerdictOutcome.ProvesNothing, Worked.Verdict(ByLoss, "circuit: out, loss_factor: 0.9").Outcome);
}
