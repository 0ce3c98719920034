using Ohmstead.Assessment.Tests.Support;
using Ohmstead.Assessment.Verdicts;

namespace Ohmstead.Assessment.Tests.Verdicts;

/// <summary>A parallel path of a passive network can only lower R and only raise C; ESR, loss and inductance it may raise, by so much and
/// no more: circuit theory.</summary>
public sealed class InCircuitVerdictTests
{
    private const string Resistor = "kind: carbon film resistor, resistance: 4.7 kΩ, tolerance: 5 %";
    private const string Capacitor =
        "kind: aluminium electrolytic, capacitance: 470 µF, tolerance: 20 %, rated_voltage: 25 V, esr_limit: 0.45 Ω, esr_frequency: 100 "
        + "kHz";

    // 4.7 x 1.05 = 4.935 kΩ, 4.7 x 0.95 = 4.465 kΩ.
    [Theory]
    [InlineData("4.94 kΩ", VerdictOutcome.Outside)]
    [InlineData("4.70 kΩ", VerdictOutcome.ProvesNothing)]
    [InlineData("3.10 kΩ", VerdictOutcome.ProvesNothing)]
    public void A_resistor_that_reads_too_high_in_circuit_has_failed_and_any_other_reading_proves_nothing(
        string reading,
        VerdictOutcome outcome
    ) => Assert.Equal(outcome, Worked.Verdict(Resistor, $"circuit: in, resistance: {reading}").Outcome);

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

    // SV19 to SV22. tan delta 0.14 on 470 µF, worn, is 0.7901 ohm at 120 Hz; the least good part has 376 µF there, x = 3.527 ohm, and no
    // resistance beside it makes more than (0.7901² + 3.527²) / (2 x 3.527) = 1.852 ohm of it. At 100 kHz x = 4.2 milliohm, and nothing
    // raises it.
    [Theory]
    [InlineData("frequency: 120 Hz, esr: 0.9 Ω", VerdictOutcome.ProvesNothing)]
    [InlineData("frequency: 120 Hz, esr: 1.85 Ω", VerdictOutcome.ProvesNothing)]
    [InlineData("frequency: 120 Hz, esr: 1.86 Ω", VerdictOutcome.Outside)]
    [InlineData("frequency: 100 kHz, esr: 0.80 Ω", VerdictOutcome.Outside)]
    [InlineData("frequency: 100 kHz, esr: 0.78 Ω", VerdictOutcome.ProvesNothing)]
    public void A_high_ESR_in_circuit_has_failed_only_beyond_what_a_resistance_beside_it_makes(string reading, VerdictOutcome outcome) =>
        Assert.Equal(
            outcome,
            Worked
                .Verdict(
                    "kind: aluminium electrolytic, capacitance: 470 µF, tolerance: 20 %, rated_voltage: 25 V",
                    "circuit: in, " + reading
                )
                .Outcome
        );

    // SV19. 1 µF with a limit of 133 ohm at 120 Hz and 10 kΩ beside it reads 297.48 ohm: what explains it is told.
    [Fact]
    public void The_resistance_that_explains_a_high_ESR_is_told()
    {
        var verdict = Worked.Verdict(
            "kind: aluminium electrolytic, capacitance: 1 µF, tolerance: -0/+50 %, rated_voltage: 50 V, esr_limit: 133 Ω, "
                + "esr_frequency: 120 Hz",
            "circuit: in, frequency: 120 Hz, esr: 297.48 Ω"
        );
        Assert.Equal(VerdictOutcome.ProvesNothing, verdict.Outcome);
        Assert.Contains("10.0 kΩ beside it does that", verdict.Why, StringComparison.Ordinal);
    }

    // SV18. 100 nF at 1 kHz with D 0.016 against 0.001: 106 kΩ or less explains it. A capacitor beside it lowers it, so a low one proves
    // nothing either.
    [Theory]
    [InlineData("0.016", "106 kΩ beside it does that")]
    [InlineData("0.0005", "inside its limits")]
    public void A_dissipation_factor_read_in_circuit_proves_nothing(string reading, string why)
    {
        var verdict = Worked.Verdict(
            "kind: polypropylene film, capacitance: 100 nF, tolerance: -0/+20 %, rated_voltage: 250 V",
            $"circuit: in, frequency: 1 kHz, loss_factor: {reading}"
        );
        Assert.Equal(VerdictOutcome.ProvesNothing, verdict.Outcome);
        Assert.Contains(why, verdict.Why, StringComparison.Ordinal);
    }

    // SV23. 10 mH with 470 nF beside it reads 12.278 mH at 1 kHz; the upper limit is 11 mH, which 239 nF raise to that.
    [Theory]
    [InlineData("12.278 mH")]
    [InlineData("10 mH")]
    [InlineData("7 mH")]
    public void An_inductance_read_in_circuit_proves_nothing(string reading)
    {
        var verdict = Worked.Verdict(
            "kind: inductor, inductance: 10 mH, tolerance: 10 %",
            $"circuit: in, frequency: 1 kHz, inductance: {reading}"
        );
        Assert.Equal(VerdictOutcome.ProvesNothing, verdict.Outcome);
    }

    // Where the record does not say, it may have been in circuit. What a good part could read there does not decide, what a bad one could
    // proves nothing; a new part is out of circuit by nature.
    [Theory]
    [InlineData(Resistor, "resistance: 4.94 kΩ", VerdictOutcome.Outside)]
    [InlineData(Resistor, "resistance: 4.70 kΩ", VerdictOutcome.ProvesNothing)]
    [InlineData(Resistor, "resistance: 3.10 kΩ", VerdictOutcome.Undecided)]
    [InlineData(Resistor, "state: new, resistance: 4.70 kΩ", VerdictOutcome.Inside)]
    [InlineData(Resistor, "state: new, resistance: 3.10 kΩ", VerdictOutcome.Outside)]
    [InlineData(Capacitor, "frequency: 120 Hz, capacitance: 470 µF", VerdictOutcome.ProvesNothing)]
    [InlineData(Capacitor, "frequency: 120 Hz, capacitance: 900 µF", VerdictOutcome.Undecided)]
    [InlineData(Capacitor, "frequency: 120 Hz, capacitance: 47 µF", VerdictOutcome.Outside)]
    [InlineData(Capacitor, "state: new, frequency: 120 Hz, capacitance: 470 µF", VerdictOutcome.Inside)]
    [InlineData(Capacitor, "frequency: 100 kHz, esr: 0.2 Ω", VerdictOutcome.ProvesNothing)]
    [InlineData(Capacitor, "frequency: 100 kHz, esr: 1.9 Ω", VerdictOutcome.Outside)]
    [InlineData(Capacitor, "leakage: 2 µA, after: 2 min, at_voltage: 25 V", VerdictOutcome.Inside)]
    [InlineData(Capacitor, "leakage: 2 mA, after: 2 min, at_voltage: 25 V", VerdictOutcome.Undecided)]
    public void A_reading_that_does_not_say_where_the_part_was_may_have_been_in_circuit(
        string part,
        string reading,
        VerdictOutcome outcome
    ) => Assert.Equal(outcome, Worked.Verdict(part, reading).Outcome);
}
