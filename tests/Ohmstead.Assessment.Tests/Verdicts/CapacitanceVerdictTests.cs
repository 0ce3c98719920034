using Ohmstead.Assessment.Limits;
using Ohmstead.Assessment.Tests.Support;
using Ohmstead.Assessment.Verdicts;

namespace Ohmstead.Assessment.Tests.Verdicts;

public sealed class CapacitanceVerdictTests
{
    private const string Reservoir = "kind: aluminium electrolytic, capacitance: 2200 µF, tolerance: 20 %, rated_voltage: 25 V";
    private const string Filter = "kind: aluminium electrolytic, capacitance: 470 µF, tolerance: -20/+50 %, rated_voltage: 25 V";

    // 2200 x 0.8 = 1760, 2200 x 1.2 = 2640; common practice.
    [Fact]
    public void A_part_of_2200_microfarad_and_20_per_cent_may_read_from_1760_to_2640_microfarad()
    {
        var limit = Worked.Verdict(Reservoir, "circuit: out, capacitance: 2046 µF").Limit;
        Assert.NotNull(limit);
        Assert.Equal(LimitKind.Delivery, limit.Kind);
        Assert.Equal(0.00176m, limit.Interval.Lower?.Value);
        Assert.Equal(0.00264m, limit.Interval.Upper?.Value);
    }

    // (2046 - 2200) / 2200 = -0.07; (2823 - 2200) / 2200 = +0.2832; common practice.
    [Theory]
    [InlineData("2046 µF", VerdictOutcome.Inside, "-7.0 %")]
    [InlineData("2823 µF", VerdictOutcome.Outside, "+28.3 %")]
    public void A_verdict_says_how_far_the_reading_is_from_its_mark(string reading, VerdictOutcome outcome, string deviation)
    {
        var verdict = Worked.Verdict(Reservoir, $"circuit: out, capacitance: {reading}");
        Assert.Equal(outcome, verdict.Outcome);
        Assert.Equal(deviation, VerdictWords.Percent(verdict.Deviation!.Value));
    }

    // A value on the limit conforms: JCGM 106:2012, from memory.
    [Theory]
    [InlineData("1760 µF", VerdictOutcome.Inside)]
    [InlineData("1759.9 µF", VerdictOutcome.Outside)]
    [InlineData("2640 µF", VerdictOutcome.Inside)]
    [InlineData("2640.1 µF", VerdictOutcome.Outside)]
    [InlineData("2640000 nF", VerdictOutcome.Inside)]
    [InlineData("2640.0000000001 µF", VerdictOutcome.Outside)]
    public void A_reading_exactly_on_its_limit_is_inside_and_one_last_place_beyond_is_outside(string reading, VerdictOutcome outcome) =>
        Assert.Equal(outcome, Worked.Verdict(Reservoir, $"circuit: out, capacitance: {reading}").Outcome);

    // a = 0.5 % x 412.0 + 5 x 0.1 = 2.56, U = 2 x 2.56 / sqrt(3) = 2.956 µF; 412.0 - 376 = 36 µF is far more. JCGM 100:2008 4.3.7, from
    // memory.
    [Fact]
    public void On_this_bridge_412_microfarad_is_inside_a_lower_limit_of_376_microfarad()
    {
        var verdict = Worked.Verdict(Filter, "circuit: out, instrument: bridge-2, capacitance: 412.0 µF");
        Assert.Equal(VerdictOutcome.Inside, verdict.Outcome);
        Assert.Equal(2.956e-6, (double)verdict.Uncertainty!.Value.Value, 0.001e-6);
        Assert.Contains(verdict.Remarks, remark => remark.Text.Contains("0.5 % of 412 µF + 5 x 0.1 µF", StringComparison.Ordinal));
    }

    // a = 0.5 % x 377.5 + 0.5 = 2.3875, u = 1.3784, U = 2.757 µF; 377.5 - 376 = 1.5 µF is less. Probability inside: normal integral of
    // 1.5 / 1.3784 = 1.088, which is 0.862. JCGM 100:2008 4.3.7 and JCGM 106:2012, from memory.
    [Fact]
    public void On_this_bridge_377_5_microfarad_is_too_close_to_376_microfarad_to_call()
    {
        var verdict = Worked.Verdict(Filter, "circuit: out, instrument: bridge-2, capacitance: 377.5 µF");
        Assert.Equal(VerdictOutcome.Undecided, verdict.Outcome);
        Assert.Equal(2.757e-6, (double)verdict.Uncertainty!.Value.Value, 0.001e-6);
        Assert.Equal(0.862, verdict.Probability!.Value, 0.001);
    }

    [Fact]
    public void Without_an_instrument_377_5_microfarad_is_taken_as_it_stands() =>
        Assert.Equal(VerdictOutcome.Inside, Worked.Verdict(Filter, "circuit: out, capacitance: 377.5 µF").Outcome);

    // 470 x 0.8 = 376, 470 x 1.5 = 705; common practice where no tolerance is written.
    [Theory]
    [InlineData("376 µF", VerdictOutcome.Inside)]
    [InlineData("375.9 µF", VerdictOutcome.Outside)]
    [InlineData("705 µF", VerdictOutcome.Inside)]
    public void An_electrolytic_without_a_tolerance_may_have_lost_a_fifth(string reading, VerdictOutcome outcome)
    {
        var verdict = Worked.Verdict("kind: aluminium electrolytic, capacitance: 470 µF", $"circuit: out, capacitance: {reading}");
        Assert.Equal(outcome, verdict.Outcome);
        Assert.Equal(LimitKind.EndOfLife, verdict.Limit!.Kind);
    }

    [Fact]
    public void What_the_circuit_needs_governs_and_the_marking_is_shown_beside_it()
    {
        var verdict = Worked.Verdict(Filter + ", low: 300 µF", "circuit: out, capacitance: 350 µF");
        Assert.Equal(VerdictOutcome.Inside, verdict.Outcome);
        Assert.Equal(LimitKind.Circuit, verdict.Limit!.Kind);
        var (marking, isInside) = Assert.Single(verdict.Others);
        Assert.Equal(LimitKind.Delivery, marking.Kind);
        Assert.False(isInside);
    }

    [Fact]
    public void A_film_capacitor_without_a_tolerance_has_no_limit() =>
        Assert.Equal(
            VerdictOutcome.NoLimit,
            Worked.Verdict("kind: polyester film, capacitance: 100 nF", "circuit: out, capacitance: 61 nF").Outcome
        );
}
