using Ohmstead.Assessment.Tests.Support;
using Ohmstead.Assessment.Verdicts;

namespace Ohmstead.Assessment.Tests.Verdicts;

/// <summary>Insulation of film, paper and mica: makers' guides and IEC 60384-2, from memory; the rest by Ohm's law.</summary>
public sealed class InsulationVerdictTests
{
    private const string Film = "kind: polyester film, capacitance: 1 µF, rated_voltage: 100 V";
    private const string Coupling =
        "kind: paper, role: coupling, capacitance: 100 nF, rated_voltage: 400 V, working_voltage: 240 V, leakage_limit: 0.5 µA";

    // 10 000 s / 1 µF = 10 GΩ new; half of it worn.
    [Theory]
    [InlineData("state: new", "10 GΩ", VerdictOutcome.Inside)]
    [InlineData("state: new", "9.9 GΩ", VerdictOutcome.Outside)]
    [InlineData("circuit: out", "5 GΩ", VerdictOutcome.Inside)]
    [InlineData("circuit: out", "4.9 GΩ", VerdictOutcome.Outside)]
    public void A_worn_film_capacitor_may_have_half_the_insulation_of_a_new_one(string how, string reading, VerdictOutcome outcome) =>
        Assert.Equal(outcome, Worked.Verdict(Film, $"{how}, insulation: {reading}, after: 1 min, at_voltage: 100 V").Outcome);

    [Theory]
    [InlineData("4.9 GΩ", VerdictOutcome.ProvesNothing)]
    [InlineData("5 GΩ", VerdictOutcome.Inside)]
    public void Read_before_the_minute_is_over_it_can_keep_its_limit_but_not_break_it(string reading, VerdictOutcome outcome) =>
        Assert.Equal(outcome, Worked.Verdict(Film, $"circuit: out, insulation: {reading}, after: 10 s, at_voltage: 100 V").Outcome);

    [Theory]
    [InlineData("4.9 GΩ", VerdictOutcome.ProvesNothing)]
    [InlineData("5 GΩ", VerdictOutcome.Inside)]
    public void In_circuit_only_a_good_insulation_is_proved(string reading, VerdictOutcome outcome) =>
        Assert.Equal(outcome, Worked.Verdict(Film, $"circuit: in, insulation: {reading}, after: 1 min, at_voltage: 100 V").Outcome);

    // 240 V / 0.5 µA = 480 MΩ.
    [Theory]
    [InlineData("480 MΩ", VerdictOutcome.Inside)]
    [InlineData("479 MΩ", VerdictOutcome.Outside)]
    public void A_leakage_limit_of_the_part_is_a_limit_of_its_insulation_too(string reading, VerdictOutcome outcome) =>
        Assert.Equal(outcome, Worked.Verdict(Coupling, $"circuit: out, insulation: {reading}, after: 1 min, at_voltage: 240 V").Outcome);

    [Theory]
    [InlineData("20 GΩ", VerdictOutcome.ProvesNothing)]
    [InlineData("1 MΩ", VerdictOutcome.Outside)]
    public void Old_paper_read_under_its_working_voltage_is_proved_bad_only(string reading, VerdictOutcome outcome) =>
        Assert.Equal(outcome, Worked.Verdict(Coupling, $"circuit: out, insulation: {reading}, after: 1 min, at_voltage: 9 V").Outcome);

    [Fact]
    public void An_electrolytic_has_no_limit_of_insulation() =>
        Assert.Equal(
            VerdictOutcome.NoLimit,
            Worked
                .Verdict("kind: aluminium electrolytic, capacitance: 100 µF, rated_voltage: 25 V", "circuit: out, insulation: 1 MΩ")
                .Outcome
        );
}
