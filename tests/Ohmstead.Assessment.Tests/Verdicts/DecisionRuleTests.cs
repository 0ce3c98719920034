using Ohmstead.Assessment.Tests.Support;
using Ohmstead.Assessment.Verdicts;

namespace Ohmstead.Assessment.Tests.Verdicts;

/// <summary>
/// 5 V ±5 % on a meter of 0.5 % and 2 digits of 10 mV: at 4.78 V a = 0.0439 V and U = 2 a / sqrt(3) = 0.0507 V. Guard bands of 1, 0.83, 1.5
/// and 3 U:
/// ILAC-G8:09/2019 table 1 and ISO 14253-1:2017, as quoted by Harper Metrology, 24 October 2024.
/// </summary>
public sealed class DecisionRuleTests
{
    private const string Rail = "nominal: 5 V, tolerance: 5 %";

    // 4.78 V is 0.03 V inside, less than 0.83 U = 0.042 V; 4.80 V is 0.05 V inside, less than U = 0.0508 V but more than 0.83 U = 0.0422 V.
    [Theory]
    [InlineData("guarded", "4.78 V", VerdictOutcome.Undecided)]
    [InlineData("simple", "4.78 V", VerdictOutcome.Inside)]
    [InlineData("uncritical", "4.78 V", VerdictOutcome.Inside)]
    [InlineData("guarded to five per cent", "4.78 V", VerdictOutcome.Undecided)]
    [InlineData("guarded", "4.80 V", VerdictOutcome.Undecided)]
    [InlineData("guarded to five per cent", "4.80 V", VerdictOutcome.Inside)]
    public void A_reading_just_inside_is_told_by_the_rule_of_the_collection(string rule, string reading, VerdictOutcome outcome) =>
        Assert.Equal(outcome, Worked.Proof(Rail, $"voltage: {reading}, instrument: meter-1", rule).Outcome);

    // 4.83 V is 0.08 V inside: more than 1.5 U = 0.0765 V, less than 3 U = 0.153 V.
    [Theory]
    [InlineData("guarded", VerdictOutcome.Inside)]
    [InlineData("three sigma", VerdictOutcome.Inside)]
    [InlineData("six sigma", VerdictOutcome.Undecided)]
    public void A_wider_guard_band_asks_for_more_room(string rule, VerdictOutcome outcome) =>
        Assert.Equal(outcome, Worked.Proof(Rail, "voltage: 4.83 V, instrument: meter-1", rule).Outcome);

    // 4.72 V is 0.03 V outside, less than U = 0.0503 V; 4.69 V is 0.06 V outside, more than U = 0.0502 V.
    [Theory]
    [InlineData("guarded", "4.72 V", VerdictOutcome.Undecided)]
    [InlineData("simple", "4.72 V", VerdictOutcome.Outside)]
    [InlineData("uncritical", "4.72 V", VerdictOutcome.Undecided)]
    [InlineData("uncritical", "4.69 V", VerdictOutcome.Outside)]
    public void A_reading_outside_by_less_than_its_uncertainty_is_rejected_by_the_simple_rule_alone(
        string rule,
        string reading,
        VerdictOutcome outcome
    ) => Assert.Equal(outcome, Worked.Proof(Rail, $"voltage: {reading}, instrument: meter-1", rule).Outcome);

    [Fact]
    public void A_verdict_names_the_rule_that_decided()
    {
        Assert.Equal("guard band of U", Worked.Proof(Rail, "voltage: 5 V, instrument: meter-1").Rule?.Name);
        Assert.Equal("simple acceptance", Worked.Proof(Rail, "voltage: 5 V, instrument: meter-1", "simple").Rule?.Name);
        Assert.Null(Worked.Proof(Rail, "voltage: 5 V").Rule);
    }

    // 100 nF ±20 %; a = 0.005 x 0.12 + 0.5 = 0.5006 µF is far more than the 0.4 nF between 120.4 nF and its limit of 120 nF.
    [Theory]
    [InlineData("simple", VerdictOutcome.Outside)]
    [InlineData("uncritical", VerdictOutcome.Undecided)]
    public void A_suppressor_is_not_accepted_on_a_doubt(string rule, VerdictOutcome outcome)
    {
        var board = Worked.Board(
            "parts:\n  - { ref: C1, kind: suppression capacitor, capacitance: 100 nF, tolerance: 20 %, safety_class: X2 }\nbench:\n  - "
                + "date: 2026-03-14\n    readings:\n      - { part: C1, circuit: out, frequency: 1 kHz, instrument: bridge-2, "
                + "capacitance: 120.4 nF }",
            decision: rule
        );
        var verdict = Assert.Single(Assert.Single(board.Readings).Verdicts);
        Assert.Equal((outcome, rule == "simple" ? "simple acceptance" : "guard band of U"), (verdict.Outcome, verdict.Rule?.Name));
    }

    // ±2 % of 5 V is 0.1 V; a = 0.005 x 5 + 0.02 = 0.045 V, U = 0.05196 V, ratio 1.92. ±5 %: 0.25 / 0.05196 = 4.81. ANSI/NCSL Z540.3, 3.11,
    // from memory.
    [Theory]
    [InlineData("2 %", true)]
    [InlineData("5 %", false)]
    public void A_meter_less_than_four_times_as_good_as_the_tolerance_is_warned_of(string tolerance, bool isWarned) =>
        Assert.Equal(
            isWarned,
            Worked
                .Proof($"nominal: 5 V, tolerance: {tolerance}", "voltage: 5.00 V, instrument: meter-1")
                .Remarks.Any(remark => remark.Text.StartsWith("warning: test uncertainty ratio 1.92 to 1", StringComparison.Ordinal))
        );

    // U of the specification 2.956 µF as at this value without a certificate; 1 % of 412 µF = 4.12 µF; root of the squares 5.071 µF. JCGM
    // 100:2008 5.1.2, from memory.
    [Fact]
    public void The_uncertainty_of_the_calibration_adds_as_the_root_of_squares()
    {
        var verdict = Worked.Verdict(
            "kind: aluminium electrolytic, capacitance: 470 µF, tolerance: 20 %",
            "circuit: out, frequency: 120 Hz, instrument: bridge-3, capacitance: 412.0 µF"
        );
        Assert.Equal(5.071e-6, (double)verdict.Uncertainty!.Value.Value, 0.001e-6);
    }
}
