using Ohmstead.Assessment.Tests.Support;
using Ohmstead.Assessment.Verdicts;

namespace Ohmstead.Assessment.Tests.Verdicts;

/// <summary>Limits of electrolytics hold at 20 °C within 5 K and near 100 or 120 Hz: IEC 60384-4, 4.3, from memory, and data
/// sheets.</summary>
public sealed class MeasuringConditionVerdictTests
{
    private const string Reservoir = "kind: aluminium electrolytic, capacitance: 2200 µF, tolerance: 20 %, rated_voltage: 25 V";

    // 2200 x 0.8 = 1760 µF.
    [Theory]
    [InlineData("frequency: 120 Hz, temperature: 6 °C", "1741 µF", VerdictOutcome.ProvesNothing)]
    [InlineData("frequency: 120 Hz, temperature: 6 °C", "1822 µF", VerdictOutcome.Inside)]
    [InlineData("frequency: 120 Hz, temperature: 6 °C", "2700 µF", VerdictOutcome.Outside)]
    [InlineData("frequency: 120 Hz, temperature: 15 °C", "1741 µF", VerdictOutcome.Outside)]
    [InlineData("frequency: 100 Hz", "1741 µF", VerdictOutcome.Outside)]
    [InlineData("frequency: 1 kHz", "1741 µF", VerdictOutcome.ProvesNothing)]
    [InlineData("frequency: 1 kHz", "1822 µF", VerdictOutcome.Inside)]
    public void A_low_capacitance_read_in_the_cold_or_at_a_high_frequency_proves_nothing(
        string how,
        string reading,
        VerdictOutcome outcome
    ) => Assert.Equal(outcome, Worked.Verdict(Reservoir, $"circuit: out, {how}, capacitance: {reading}").Outcome);

    // tan delta 0.16 at 120 Hz on 1000 µF: 0.2122 ohm, twice that when worn: 0.4244 ohm.
    [Theory]
    [InlineData("20 °C", "0.43 Ω", VerdictOutcome.Outside)]
    [InlineData("5 °C", "0.43 Ω", VerdictOutcome.ProvesNothing)]
    [InlineData("5 °C", "0.42 Ω", VerdictOutcome.Inside)]
    public void A_high_ESR_read_in_the_cold_proves_nothing(string temperature, string reading, VerdictOutcome outcome) =>
        Assert.Equal(
            outcome,
            Worked
                .Verdict(
                    "kind: aluminium electrolytic, capacitance: 1000 µF, rated_voltage: 25 V, loss_factor_limit: 0.16",
                    $"circuit: out, frequency: 120 Hz, temperature: {temperature}, esr: {reading}"
                )
                .Outcome
        );

    // Twice 0.16 at 120 Hz. At 100 Hz a part on its limit reads 0.32 x 100 / 120 = 0.2667 to 0.32, at 1 kHz 0.32 to 2.667.
    [Theory]
    [InlineData("100 Hz", "0.266", VerdictOutcome.Inside)]
    [InlineData("100 Hz", "0.32", VerdictOutcome.Undecided)]
    [InlineData("100 Hz", "0.33", VerdictOutcome.Outside)]
    [InlineData("1 kHz", "0.32", VerdictOutcome.Inside)]
    [InlineData("1 kHz", "0.33", VerdictOutcome.Undecided)]
    [InlineData("1 kHz", "2.67", VerdictOutcome.Outside)]
    public void A_dissipation_factor_at_another_frequency_proves_what_both_parts_of_the_loss_would_allow(
        string frequency,
        string reading,
        VerdictOutcome outcome
    ) =>
        Assert.Equal(
            outcome,
            Worked
                .Verdict(
                    "kind: aluminium electrolytic, capacitance: 1000 µF, rated_voltage: 25 V, loss_factor_limit: 0.16",
                    $"circuit: out, frequency: {frequency}, loss_factor: {reading}"
                )
                .Outcome
        );

    // The mirror image: at 40 °C ESR is down to 0.5^(20/65) = 0.808 of that at 20 (Cornell Dubilier, from memory), so inside to 0.4244 x
    // 0.8079 = 0.3429 ohm alone.
    [Theory]
    [InlineData("25 °C", "0.42 Ω", VerdictOutcome.Inside)]
    [InlineData("40 °C", "0.342 Ω", VerdictOutcome.Inside)]
    [InlineData("40 °C", "0.343 Ω", VerdictOutcome.Undecided)]
    [InlineData("40 °C", "0.42 Ω", VerdictOutcome.Undecided)]
    [InlineData("40 °C", "0.43 Ω", VerdictOutcome.Outside)]
    public void A_low_ESR_read_warm_is_held_back_as_a_high_one_read_cold_is(string temperature, string reading, VerdictOutcome outcome) =>
        Assert.Equal(
            outcome,
            Worked
                .Verdict(
                    "kind: aluminium electrolytic, capacitance: 1000 µF, rated_voltage: 25 V, loss_factor_limit: 0.16",
                    $"circuit: out, frequency: 120 Hz, temperature: {temperature}, esr: {reading}"
                )
                .Outcome
        );

    // Half of 1760 µF is more than the cold of a shed or a kilohertz takes: common practice.
    [Theory]
    [InlineData("frequency: 120 Hz, temperature: 6 °C", "880 µF", VerdictOutcome.ProvesNothing)]
    [InlineData("frequency: 120 Hz, temperature: 6 °C", "879 µF", VerdictOutcome.Outside)]
    [InlineData("frequency: 1 kHz", "220 µF", VerdictOutcome.Outside)]
    public void What_neither_cold_nor_frequency_explains_has_failed(string how, string reading, VerdictOutcome outcome) =>
        Assert.Equal(outcome, Worked.Verdict(Reservoir, $"circuit: out, {how}, capacitance: {reading}").Outcome);

    [Fact]
    public void The_cold_of_the_bench_counts_when_the_reading_names_no_temperature()
    {
        var board = Worked.Board(
            $"parts:\n  - {{ ref: C1, {Reservoir} }}\nbench:\n  - date: 2026-01-14\n    temperature: 8 °C\n    readings:\n      - {{ "
                + "part: C1, circuit: out, frequency: 120 Hz, capacitance: 1741 µF }"
        );
        Assert.Contains("it was read at 8 °C", Assert.Single(Assert.Single(board.Readings).Verdicts).Why, StringComparison.Ordinal);
    }

    [Fact]
    public void A_film_capacitor_does_not_mind_the_cold() =>
        Assert.Equal(
            VerdictOutcome.Outside,
            Worked
                .Verdict(
                    "kind: polyester film, capacitance: 100 nF, tolerance: 10 %",
                    "circuit: out, frequency: 1 kHz, temperature: 4 °C, capacitance: 80 nF"
                )
                .Outcome
        );
}
