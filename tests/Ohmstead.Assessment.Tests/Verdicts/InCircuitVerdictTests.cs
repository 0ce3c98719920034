using Ohmstead.Assessment.Tests.Support;
using Ohmstead.Assessment.Verdicts;

namespace Ohmstead.Assessment.Tests.Verdicts;

/// <summary>A parallel path of a passive network can only lower R and ESR and only raise C: common practice, from circuit theory.</summary>
public sealed class InCircuitVerdictTests
{
    private const string Resistor = "kind: carbon film resistor, resistance: 4.7 kΩ, tolerance: 5 %";
    private const string Capacitor = "kind: aluminium electrolytic, capacitance: 470 µF, tolerance: 20 %, rated_voltage: 25 V, esr_limit: 0.45 Ω";

    // 4.7 x 1.05 = 4.935 kΩ, 4.7 x 0.95 = 4.465 kΩ.
    [Theory]
    [InlineData("4.94 kΩ", VerdictOutcome.Outside)]
    [InlineData("4.70 kΩ", VerdictOutcome.ProvesNothing)]
    [InlineData("3.10 kΩ", VerdictOutcome.ProvesNothing)]
    public void A_resistor_that_reads_too_high_in_circuit_has_failed_and_any_other_reading_proves_nothing(string reading, VerdictOutcome outcome) =>
        Assert.Equal(outcome, Worked.Verdict(Resistor, $"circuit: in, resistance: {reading}").Outcome);

    [Theory]
    [InlineData("301 µF", "suspect")]
    [InlineData("470 µF", "not below its lower limit")]
    [InlineData("900 µF", "a parallel part does the same")]
    public void A_capacitance_read_in_circuit_proves_nothing(string reading, string why)
    {
        var verdict = Worked.Verdict(Capacitor, $"circuit: in, capacitance: {reading}");
        Assert.Equal(VerdictOutcome.ProvesNothing, verdict.Outcome);
        Assert.Contains(why, verdict.Why, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("1.9 Ω", VerdictOutcome.Outside)]
    [InlineData("0.2 Ω", VerdictOutcome.ProvesNothing)]
    public void An_ESR_that_reads_too_high_in_circuit_has_failed_and_a_low_one_proves_nothing(string reading, VerdictOutcome outcome) =>
        Assert.Equal(outcome, Worked.Verdict(Capacitor, $"circuit: in, frequency: 100 kHz, esr: {reading}").Outcome);

    [Theory]
    [InlineData("2 µA")]
    [InlineData("2 mA")]
    public void Leakage_cannot_be_read_in_circuit(string reading) =>
        Assert.Equal(VerdictOutcome.ProvesNothing, Worked.Verdict(Capacitor, $"circuit: in, leakage: {reading}, after: 2 min").Outcome);
}
