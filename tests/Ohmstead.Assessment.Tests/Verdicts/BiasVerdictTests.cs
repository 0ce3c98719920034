using Ohmstead.Assessment.Tests.Support;
using Ohmstead.Assessment.Verdicts;

namespace Ohmstead.Assessment.Tests.Verdicts;

/// <summary>Class 2 ceramic loses capacitance under a d.c. voltage, so a reading under bias is no reading of its marking; common
/// practice.</summary>
public sealed class BiasVerdictTests
{
    private const string Ceramic = "kind: ceramic class 2, capacitance: 100 nF, tolerance: 20 %, rated_voltage: 50 V";

    [Theory]
    [InlineData("bias: 25 V", "62 nF", VerdictOutcome.ProvesNothing)]
    [InlineData("bias: 25 V", "92 nF", VerdictOutcome.ProvesNothing)]
    [InlineData("bias: 25 V", "121 nF", VerdictOutcome.Outside)]
    [InlineData("bias: 0 V", "62 nF", VerdictOutcome.Outside)]
    [InlineData("frequency: 1 kHz", "92 nF", VerdictOutcome.Inside)]
    public void A_class_2_ceramic_read_under_bias_cannot_be_held_against_its_marking(string how, string reading, VerdictOutcome outcome) =>
        Assert.Equal(outcome, Worked.Verdict(Ceramic, $"circuit: out, {how}, capacitance: {reading}").Outcome);

    [Fact]
    public void What_its_place_needs_is_judged_under_bias() =>
        Assert.Equal(
            VerdictOutcome.Inside,
            Worked.Verdict(Ceramic + ", low: 50 nF", "circuit: out, bias: 25 V, capacitance: 62 nF").Outcome
        );

    [Fact]
    public void A_film_capacitor_does_not_mind_bias() =>
        Assert.Equal(
            VerdictOutcome.Outside,
            Worked
                .Verdict("kind: polyester film, capacitance: 100 nF, tolerance: 10 %", "circuit: out, bias: 25 V, capacitance: 80 nF")
                .Outcome
        );

    // IEC 60384-4, 4.3, from memory: 1 V at most.
    [Fact]
    public void An_electrolytic_read_under_more_bias_than_its_standard_has_is_told_so()
    {
        var verdict = Worked.Verdict(
            "kind: aluminium electrolytic, capacitance: 100 µF, tolerance: 20 %, rated_voltage: 25 V",
            "circuit: out, frequency: 120 Hz, bias: 5 V, capacitance: 95 µF"
        );
        Assert.Equal(VerdictOutcome.Inside, verdict.Outcome);
        Assert.Contains(verdict.Remarks, remark =>
            remark.Text.StartsWith("read under 5 V of bias; its value holds under 1 V at most", StringComparison.Ordinal)
        );
    }
}
