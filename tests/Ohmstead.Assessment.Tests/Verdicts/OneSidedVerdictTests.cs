using Ohmstead.Assessment.Tests.Support;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics.Uncertainty;

namespace Ohmstead.Assessment.Tests.Verdicts;

/// <summary>Readings that are no figure: a bound decides where every value that it allows says the same, a word where no good part could
/// have given it.</summary>
public sealed class OneSidedVerdictTests
{
    private const string Resistor = "kind: carbon film resistor, resistance: 100 kΩ, tolerance: 5 %";

    // 10 nA at 100 V is 10 GΩ at least, Ohm's law.
    private const string Film = "kind: polyester film, capacitance: 100 nF, leakage_limit: 10 nA";
    private const string Electrolytic = "kind: aluminium electrolytic, capacitance: 470 µF, tolerance: 20 %, rated_voltage: 25 V";

    // 100 kΩ ±5 % ends at 95 and 105 kΩ. More than 105 kΩ is outside, more than 95 kΩ may be either; at 105 kΩ or more the limit itself is
    // left, which is inside.
    [Theory]
    [InlineData("\"> 105 kΩ\"", VerdictOutcome.Outside)]
    [InlineData("\"> 104.9 kΩ\"", VerdictOutcome.Undecided)]
    [InlineData("≥ 105 kΩ", VerdictOutcome.Undecided)]
    [InlineData("≥ 105.1 kΩ", VerdictOutcome.Outside)]
    [InlineData("\">= 105.1 kΩ\"", VerdictOutcome.Outside)]
    [InlineData("\"> 1 kΩ\"", VerdictOutcome.Undecided)]
    [InlineData("< 95 kΩ", VerdictOutcome.Outside)]
    [InlineData("< 95.1 kΩ", VerdictOutcome.Undecided)]
    [InlineData("≤ 95 kΩ", VerdictOutcome.Undecided)]
    [InlineData("≤ 94.9 kΩ", VerdictOutcome.Outside)]
    [InlineData("< 1 MΩ", VerdictOutcome.Undecided)]
    public void Between_two_limits_a_bound_can_prove_outside_alone(string read, VerdictOutcome expected) =>
        Assert.Equal(expected, Worked.Verdict(Resistor, $"circuit: out, resistance: {read}").Outcome);

    [Theory]
    [InlineData("\"> 10 GΩ\"", VerdictOutcome.Inside)]
    [InlineData("≥ 10 GΩ", VerdictOutcome.Inside)]
    [InlineData("\"> 9.9 GΩ\"", VerdictOutcome.Undecided)]
    [InlineData("< 10 GΩ", VerdictOutcome.Outside)]
    [InlineData("≤ 10 GΩ", VerdictOutcome.Undecided)]
    [InlineData("< 10.1 GΩ", VerdictOutcome.Undecided)]
    public void Where_only_a_lower_limit_is_a_bound_at_it_or_above_is_inside(string read, VerdictOutcome expected) =>
        Assert.Equal(expected, Worked.Verdict(Film, $"circuit: out, at_voltage: 100 V, after: 1 min, insulation: {read}").Outcome);

    [Theory]
    [InlineData("< 10 nA", VerdictOutcome.Inside)]
    [InlineData("≤ 10 nA", VerdictOutcome.Inside)]
    [InlineData("< 10.1 nA", VerdictOutcome.Undecided)]
    [InlineData("\"> 10 nA\"", VerdictOutcome.Outside)]
    [InlineData("\"> 9.9 nA\"", VerdictOutcome.Undecided)]
    public void Where_only_an_upper_limit_is_a_bound_at_it_or_below_is_inside(string read, VerdictOutcome expected) =>
        Assert.Equal(expected, Worked.Verdict(Film, $"circuit: out, at_voltage: 100 V, after: 5 min, leakage: {read}").Outcome);

    // JCGM 100:2008, 4.3.7: U = 2 x 5 % / sqrt(3) = 5.77 % of the reading: 0.58 GΩ at 10 GΩ, 0.635 GΩ at 11 GΩ, so 11 GΩ proves 10 GΩ and
    // 10.5 GΩ does not.
    [Theory]
    [InlineData("\"> 10.5 GΩ\"", VerdictOutcome.Undecided)]
    [InlineData("\"> 11 GΩ\"", VerdictOutcome.Inside)]
    [InlineData("< 9.6 GΩ", VerdictOutcome.Undecided)]
    [InlineData("< 9.4 GΩ", VerdictOutcome.Outside)]
    public void The_uncertainty_of_the_meter_holds_at_the_bound(string read, VerdictOutcome expected)
    {
        var verdict = Worked.Verdict(Film, $"circuit: out, instrument: ohms-1, at_voltage: 100 V, after: 1 min, insulation: {read}");
        Assert.Equal(expected, verdict.Outcome);
        Assert.NotNull(verdict.Uncertainty);
        Assert.Equal(DecisionRule.Guarded, verdict.Rule);
    }

    [Fact]
    public void Over_range_is_inside_only_where_the_end_of_the_range_is_written_and_lies_above_the_limit()
    {
        const string taken = "circuit: out, at_voltage: 100 V, after: 1 min, insulation: over range";
        Assert.Equal(VerdictOutcome.Inside, Worked.Verdict(Film, taken + ", instrument: ohms-1").Outcome);
        var unknown = Worked.Verdict(Film, taken);
        Assert.Equal(VerdictOutcome.Undecided, unknown.Outcome);
        Assert.Contains("the end of the range", unknown.Why.Text, StringComparison.Ordinal);
        Assert.Equal(
            VerdictOutcome.Undecided,
            Worked.Verdict("kind: polyester film, capacitance: 100 nF, leakage_limit: 1 nA", taken + ", instrument: ohms-1").Outcome
        );
    }

    // The largest range of the meter ends at 20 MΩ.
    [Fact]
    public void Over_range_of_a_resistor_is_outside_where_its_limit_lies_below_the_end_of_the_largest_range()
    {
        Assert.Equal(VerdictOutcome.Outside, Worked.Verdict(Resistor, "circuit: out, instrument: ohms-1, resistance: over range").Outcome);
        Assert.Equal(VerdictOutcome.Undecided, Worked.Verdict(Resistor, "circuit: out, resistance: over range").Outcome);
        Assert.Equal(
            VerdictOutcome.Undecided,
            Worked
                .Verdict(
                    "kind: carbon film resistor, resistance: 22 MΩ, tolerance: 5 %",
                    "circuit: out, instrument: ohms-1, resistance: over range"
                )
                .Outcome
        );
    }

    [Theory]
    [InlineData(Resistor, "resistance: open")]
    [InlineData("kind: carbon film resistor", "resistance: open")]
    [InlineData("kind: fuse, current: 1 A", "resistance: open")]
    [InlineData("kind: fuse, current: 1 A", "circuit: in, resistance: open")]
    [InlineData("kind: relay, resistance: 700 Ω", "resistance: open")]
    [InlineData("kind: transformer", "resistance: open")]
    [InlineData("kind: inductor, inductance: 10 mH", "circuit: in, inductance: open")]
    [InlineData("kind: diode", "forward_voltage: open")]
    [InlineData("kind: diode", "circuit: in, forward_voltage: open")]
    [InlineData("kind: transistor", "circuit: out, forward_voltage: short")]
    [InlineData("kind: zener diode", "circuit: out, resistance: short")]
    [InlineData(Electrolytic, "esr: open")]
    [InlineData(Electrolytic, "capacitance: open")]
    [InlineData(Electrolytic, "circuit: out, capacitance: short")]
    [InlineData(Electrolytic, "circuit: out, resistance: short")]
    [InlineData(Electrolytic, "circuit: out, leakage: short")]
    [InlineData("kind: tantalum", "circuit: out, capacitance: short")]
    [InlineData(Film, "circuit: out, insulation: short")]
    [InlineData("kind: resistor network, resistance: 10 kΩ, tolerance: 5 %", "circuit: out, resistance: short")]
    public void What_no_good_part_could_have_shown_is_outside_whatever_its_mark(string part, string read)
    {
        var verdict = Worked.Verdict(part, read);
        Assert.Equal(VerdictOutcome.Outside, verdict.Outcome);
        Assert.Null(verdict.Deviation);
        Assert.Null(verdict.Margin);
        Assert.Null(verdict.Probability);
    }

    [Theory]
    [InlineData(Electrolytic, "circuit: in, capacitance: short")]
    [InlineData(Electrolytic, "circuit: in, resistance: short")]
    [InlineData("kind: diode", "circuit: in, forward_voltage: short")]
    public void In_circuit_a_short_may_be_any_path_and_proves_nothing(string part, string read)
    {
        var verdict = Worked.Verdict(part, read);
        Assert.Equal(VerdictOutcome.ProvesNothing, verdict.Outcome);
        Assert.Contains("lift one leg", verdict.Why.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_short_of_which_nobody_wrote_whether_it_was_in_the_circuit_does_not_decide()
    {
        var verdict = Worked.Verdict(Electrolytic, "capacitance: short");
        Assert.Equal(VerdictOutcome.Undecided, verdict.Outcome);
        Assert.Contains("write circuit: out", verdict.Why.Text, StringComparison.Ordinal);
        Assert.Equal(VerdictOutcome.Outside, Worked.Verdict(Electrolytic, "state: new, capacitance: short").Outcome);
    }

    // Its range ends at 20 GΩ: whatever it shows beyond is no measurement.
    [Fact]
    public void A_bound_of_a_meter_beyond_its_range_does_not_decide() =>
        Assert.Equal(
            VerdictOutcome.Undecided,
            Worked.Verdict(Film, "circuit: out, instrument: ohms-1, at_voltage: 100 V, after: 1 min, insulation: \"> 50 GΩ\"").Outcome
        );

    [Theory]
    [InlineData("kind: carbon film resistor, resistance: 10 MΩ, tolerance: 5 %", "resistance: open")]
    [InlineData("kind: wire-wound resistor, resistance: 0.47 Ω, tolerance: 5 %", "resistance: short")]
    [InlineData("kind: ceramic class 1, capacitance: 10 pF, tolerance: 5 %", "capacitance: open")]
    [InlineData("kind: inductor, inductance: 4.7 µH, tolerance: 10 %", "inductance: short")]
    public void A_word_that_the_end_of_the_meter_can_give_of_a_good_part_does_not_decide(string part, string read) =>
        Assert.Equal(VerdictOutcome.Undecided, Worked.Verdict(part, "circuit: out, " + read).Outcome);

    // 0 Ω ESR asks for a d.c. check: a shorted part reads best of all.
    [Fact]
    public void An_esr_that_reads_short_asks_for_a_direct_current_check()
    {
        var verdict = Worked.Verdict(Electrolytic, "circuit: out, esr: short");
        Assert.Equal(VerdictOutcome.Undecided, verdict.Outcome);
        Assert.Contains("direct current", verdict.Why.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(Electrolytic, "leakage: open")]
    [InlineData(Electrolytic, "loss_factor: open")]
    [InlineData("kind: cell", "voltage: open")]
    [InlineData("kind: transistor", "gain: short")]
    public void A_word_that_says_nothing_of_a_quantity_proves_nothing(string part, string read) =>
        Assert.Equal(VerdictOutcome.ProvesNothing, Worked.Verdict(part, read).Outcome);

    [Fact]
    public void Where_no_limit_is_known_a_bound_has_none() =>
        Assert.Equal(VerdictOutcome.NoLimit, Worked.Verdict("kind: switch", "resistance: < 0.1 Ω").Outcome);

    // In circuit nothing can raise a resistance, anything can lower it.
    [Theory]
    [InlineData("\"> 105 kΩ\"", VerdictOutcome.Outside)]
    [InlineData("< 95 kΩ", VerdictOutcome.ProvesNothing)]
    public void In_circuit_a_bound_proves_what_a_figure_on_that_side_would(string read, VerdictOutcome expected) =>
        Assert.Equal(expected, Worked.Verdict(Resistor, $"circuit: in, resistance: {read}").Outcome);

    [Theory]
    [InlineData("ripple: < 10 mV", VerdictOutcome.Inside)]
    [InlineData("ripple: < 11 mV", VerdictOutcome.Undecided)]
    [InlineData("ripple: \"> 10 mV\"", VerdictOutcome.Outside)]
    public void A_proof_may_be_one_sided(string read, VerdictOutcome expected) =>
        Assert.Equal(expected, Worked.Proof("nominal: 15 V, tolerance: 5 %, ripple_limit: 10 mV", read).Outcome);

    [Fact]
    public void Other_limits_that_a_bound_does_not_decide_are_left_out()
    {
        // Marked 100 kΩ ±5 % to 105 kΩ; with 2 % of ageing to 107 kΩ: common practice.
        Assert.Empty(Worked.Verdict(Resistor, "circuit: out, resistance: \"> 106 kΩ\"").Others);
        Assert.False(Assert.Single(Worked.Verdict(Resistor, "circuit: out, resistance: \"> 107 kΩ\"").Others).Inside);
    }
}
