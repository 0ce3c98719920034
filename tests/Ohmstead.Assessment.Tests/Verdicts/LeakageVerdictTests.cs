using Ohmstead.Assessment.Tests.Support;
using Ohmstead.Assessment.Verdicts;

namespace Ohmstead.Assessment.Tests.Verdicts;

/// <summary>The rule is 0.01 CV or 3 µA, whichever is more, after 2 minutes at the rated voltage: Lelon RGA data sheet; Vishay 038 RSU data
/// sheet 28309.</summary>
public sealed class LeakageVerdictTests
{
    private const string Decoupling = "kind: aluminium electrolytic, capacitance: 100 µF, rated_voltage: 25 V";

    // 0.01 x 100 x 25 = 25 µA; 0.01 x 10 x 16 = 1.6 µA, which is under the floor of 3 µA.
    [Theory]
    [InlineData("100 µF", "25 V", "0.000025")]
    [InlineData("10 µF", "16 V", "0.000003")]
    public void A_limit_of_leakage_is_a_hundredth_of_CV_and_not_under_3_microampere(string capacitance, string rated, string amperes)
    {
        var verdict = Worked.Verdict(
            $"kind: aluminium electrolytic, capacitance: {capacitance}, rated_voltage: {rated}",
            "circuit: out, leakage: 2 µA, after: 2 min"
        );
        Assert.Equal(decimal.Parse(amperes, System.Globalization.CultureInfo.InvariantCulture), verdict.Limit?.Interval.Upper?.Value);
    }

    [Theory]
    [InlineData("25 µA", VerdictOutcome.Inside)]
    [InlineData("25.1 µA", VerdictOutcome.Outside)]
    public void After_two_minutes_at_its_rated_voltage_a_part_is_inside_or_outside(string reading, VerdictOutcome outcome) =>
        Assert.Equal(outcome, Worked.Verdict(Decoupling, $"circuit: out, leakage: {reading}, after: 2 min, at_voltage: 25 V").Outcome);

    [Theory]
    [InlineData("18 µA", VerdictOutcome.Inside)]
    [InlineData("40 µA", VerdictOutcome.ProvesNothing)]
    public void Read_too_early_it_can_keep_its_limit_but_not_break_it(string reading, VerdictOutcome outcome) =>
        Assert.Equal(outcome, Worked.Verdict(Decoupling, $"circuit: out, leakage: {reading}, after: 1 min, at_voltage: 25 V").Outcome);

    [Theory]
    [InlineData("18 µA", VerdictOutcome.ProvesNothing)]
    [InlineData("40 µA", VerdictOutcome.Outside)]
    public void Read_at_a_lower_voltage_it_can_break_its_limit_but_not_keep_it(string reading, VerdictOutcome outcome) =>
        Assert.Equal(outcome, Worked.Verdict(Decoupling, $"circuit: out, leakage: {reading}, after: 2 min, at_voltage: 12 V").Outcome);

    [Fact]
    public void A_data_sheet_comes_before_the_rule_of_the_type() =>
        Assert.Equal(
            0.00012m,
            Worked.Verdict(Decoupling + ", leakage_limit: 120 µA", "circuit: out, leakage: 40 µA").Limit?.Interval.Upper?.Value
        );

    // 0.01 x 100 µF x 25 V = 25 µA at 20 °C; at 40 °C up to the square root of three times that, 43.3 µA (application notes, from memory).
    [Theory]
    [InlineData("temperature: 40 °C", "24 µA", VerdictOutcome.Inside)]
    [InlineData("temperature: 40 °C", "43 µA", VerdictOutcome.Undecided)]
    [InlineData("temperature: 40 °C", "44 µA", VerdictOutcome.Outside)]
    [InlineData("temperature: 25 °C", "26 µA", VerdictOutcome.Outside)]
    public void Read_warm_what_its_warmth_may_explain_does_not_decide(string temperature, string reading, VerdictOutcome outcome) =>
        Assert.Equal(
            outcome,
            Worked.Verdict(Decoupling, $"circuit: out, {temperature}, leakage: {reading}, after: 2 min, at_voltage: 25 V").Outcome
        );

    // 0.01 x 10 x 35 = 3.5 µA at 20 °C; ten times at 85 (tancap.com.cn), so 3.5 x 10^(20/65) = 7.11 µA at 40.
    [Theory]
    [InlineData("3.5 µA", VerdictOutcome.Inside)]
    [InlineData("4 µA", VerdictOutcome.Undecided)]
    [InlineData("7.2 µA", VerdictOutcome.Outside)]
    public void A_tantalum_read_warm_has_its_own_factor(string reading, VerdictOutcome outcome) =>
        Assert.Equal(
            outcome,
            Worked
                .Verdict(
                    "kind: tantalum, capacitance: 10 µF, rated_voltage: 35 V",
                    $"circuit: out, temperature: 40 °C, leakage: {reading}, after: 5 min, at_voltage: 35 V"
                )
                .Outcome
        );

    // The mirror image: at 10 °C leakage is down to 0.5^(10/20) = 0.707 of that at 20 (TDK, from memory), 17.67 of 25 µA; in the frost
    // nobody tells.
    [Theory]
    [InlineData("10 °C", "17.6 µA", VerdictOutcome.Inside)]
    [InlineData("10 °C", "17.7 µA", VerdictOutcome.Undecided)]
    [InlineData("10 °C", "25.1 µA", VerdictOutcome.Outside)]
    [InlineData("-5 °C", "2 µA", VerdictOutcome.ProvesNothing)]
    [InlineData("-5 °C", "25.1 µA", VerdictOutcome.Outside)]
    public void A_low_leakage_read_cold_is_held_back_as_a_high_one_read_warm_is(
        string temperature,
        string reading,
        VerdictOutcome outcome
    ) =>
        Assert.Equal(
            outcome,
            Worked
                .Verdict(Decoupling, $"circuit: out, temperature: {temperature}, leakage: {reading}, after: 2 min, at_voltage: 25 V")
                .Outcome
        );

    // Leakage falls with the minutes and with the voltage: without the one a high reading, without the other a low one proves nothing.
    [Theory]
    [InlineData("leakage: 18 µA, at_voltage: 25 V", VerdictOutcome.Inside)]
    [InlineData("leakage: 40 µA, at_voltage: 25 V", VerdictOutcome.Undecided)]
    [InlineData("leakage: 18 µA, after: 2 min", VerdictOutcome.ProvesNothing)]
    [InlineData("leakage: 40 µA, after: 2 min", VerdictOutcome.Outside)]
    public void What_is_not_written_takes_the_side_that_hangs_on_it(string reading, VerdictOutcome outcome) =>
        Assert.Equal(outcome, Worked.Verdict(Decoupling, "circuit: out, " + reading).Outcome);

    // 47 µF at 500 V: 3 x sqrt(23 500) = 459.9 µA after 5 minutes (Cornell Dubilier, from memory). 10 µF polymer of 16 V: 0.2 x 160 = 32 µA
    // after 2, from memory.
    [Theory]
    [InlineData(
        "kind: aluminium electrolytic, capacitance: 47 µF, rated_voltage: 500 V",
        "459 µA, after: 5 min, at_voltage: 500 V",
        VerdictOutcome.Inside
    )]
    [InlineData(
        "kind: aluminium electrolytic, capacitance: 47 µF, rated_voltage: 500 V",
        "460 µA, after: 5 min, at_voltage: 500 V",
        VerdictOutcome.Outside
    )]
    [InlineData(
        "kind: polymer electrolytic, capacitance: 10 µF, rated_voltage: 16 V",
        "32 µA, after: 2 min, at_voltage: 16 V",
        VerdictOutcome.Inside
    )]
    [InlineData(
        "kind: polymer electrolytic, capacitance: 10 µF, rated_voltage: 16 V",
        "32.1 µA, after: 2 min, at_voltage: 16 V",
        VerdictOutcome.Outside
    )]
    public void Cans_above_450_volt_and_polymer_have_rules_of_their_own(string part, string reading, VerdictOutcome outcome) =>
        Assert.Equal(outcome, Worked.Verdict(part, "circuit: out, leakage: " + reading).Outcome);

    // SV08. 50 µA at 250 V is 5 MΩ; polyester of 100 nF has 15 GΩ new and 7.5 GΩ worn, 33.3 nA at 250 V.
    [Theory]
    [InlineData("50 µA", VerdictOutcome.Outside)]
    [InlineData("33.3 nA", VerdictOutcome.Inside)]
    [InlineData("33.4 nA", VerdictOutcome.Outside)]
    public void What_leaks_through_a_film_is_its_insulation(string reading, VerdictOutcome outcome) =>
        Assert.Equal(
            outcome,
            Worked
                .Verdict(
                    "kind: polyester film, capacitance: 100 nF, rated_voltage: 250 V",
                    $"circuit: out, leakage: {reading}, after: 1 min, at_voltage: 250 V"
                )
                .Outcome
        );

    // 0.01 x 10 µF x 35 V = 3.5 µA, read after at most 5 minutes through 1 kohm: MIL-PRF-49137E, 4.8.4. Under them it still falls.
    [Theory]
    [InlineData("4 µA", "3 min", VerdictOutcome.ProvesNothing)]
    [InlineData("4 µA", "4 min", VerdictOutcome.ProvesNothing)]
    [InlineData("3.5 µA", "3 min", VerdictOutcome.Inside)]
    [InlineData("3.51 µA", "5 min", VerdictOutcome.Outside)]
    public void A_tantalum_has_five_minutes_to_settle(string reading, string after, VerdictOutcome outcome) =>
        Assert.Equal(
            outcome,
            Worked
                .Verdict(
                    "kind: tantalum, capacitance: 10 µF, rated_voltage: 35 V",
                    $"circuit: out, leakage: {reading}, after: {after}, at_voltage: 35 V"
                )
                .Outcome
        );
}
