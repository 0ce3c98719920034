using Ohmstead.Assessment.Limits;
using Ohmstead.Assessment.Tests.Support;
using Ohmstead.Assessment.Verdicts;

namespace Ohmstead.Assessment.Tests.Verdicts;

public sealed class EsrVerdictTests
{
    private const string OwnLimit =
        "kind: aluminium electrolytic, capacitance: 470 µF, rated_voltage: 25 V, esr_limit: 0.45 Ω, esr_frequency: 100 kHz";
    private const string ByLoss = "kind: aluminium electrolytic, capacitance: 1000 µF, rated_voltage: 25 V, loss_factor_limit: 0.16";

    // The limit is what the record says: common practice.
    [Theory]
    [InlineData("0.420 Ω", VerdictOutcome.Inside)]
    [InlineData("0.45 Ω", VerdictOutcome.Inside)]
    [InlineData("0.451 Ω", VerdictOutcome.Outside)]
    [InlineData("450 mΩ", VerdictOutcome.Inside)]
    [InlineData("450 mohm", VerdictOutcome.Inside)]
    [InlineData("451 mΩ", VerdictOutcome.Outside)]
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

    // From the formula above: without f there is no limit to hold it against. From 50 Hz up no sound part has more than 0.4244 x 120 / 50 =
    // 1.0186 ohm.
    [Theory]
    [InlineData("0.1 Ω")]
    [InlineData("0.9 Ω")]
    [InlineData("1.018 Ω")]
    public void An_ESR_without_its_test_frequency_proves_nothing_against_a_dissipation_factor(string reading)
    {
        var verdict = Worked.Verdict(ByLoss, $"circuit: out, esr: {reading}");
        Assert.Equal(VerdictOutcome.ProvesNothing, verdict.Outcome);
        Assert.Contains("the test frequency is not recorded", verdict.Why, StringComparison.Ordinal);
    }

    // 470 µF 25 V, tan delta 0.14 at 120 Hz, worn 0.7901 Ω (SV13). Between 50 Hz and 100 kHz a part on that limit reads from 0.7901 x 120 /
    // 100 000 = 0.948 mΩ to
    // 0.7901 x 120 / 50 = 1.896 Ω: what lies on one side of both is decided without a frequency, and nothing else is.
    [Theory]
    [InlineData("0.94 mΩ", VerdictOutcome.Inside)]
    [InlineData("≤ 0.94 mΩ", VerdictOutcome.Inside)]
    [InlineData("0.95 mΩ", VerdictOutcome.ProvesNothing)]
    [InlineData("≤ 0.95 mΩ", VerdictOutcome.ProvesNothing)]
    [InlineData("< 0.5 Ω", VerdictOutcome.ProvesNothing)]
    [InlineData("≤ 0.79 Ω", VerdictOutcome.ProvesNothing)]
    [InlineData("≤ 1 Ω", VerdictOutcome.Undecided)]
    [InlineData("\"> 0.5 Ω\"", VerdictOutcome.Undecided)]
    [InlineData("\"> 1 Ω\"", VerdictOutcome.ProvesNothing)]
    [InlineData("\"> 1.89 Ω\"", VerdictOutcome.ProvesNothing)]
    [InlineData("\"> 1.9 Ω\"", VerdictOutcome.Outside)]
    [InlineData("≥ 1.9 Ω", VerdictOutcome.Outside)]
    public void An_ESR_without_a_frequency_proves_what_every_frequency_proves(string reading, VerdictOutcome outcome) =>
        Assert.Equal(
            outcome,
            Worked
                .Verdict(
                    "kind: aluminium electrolytic, capacitance: 470 µF, tolerance: ±20 %, rated_voltage: 25 V",
                    $"circuit: out, esr: {reading}"
                )
                .Outcome
        );

    // A limit that names no frequency holds at 120 Hz or at 100 kHz: 0.45 Ω may read 0.45 x 100 000 / 50 = 900 Ω or 0.45 x 120 / 100 000 =
    // 0.54 mΩ.
    [Theory]
    [InlineData("0.44 Ω", VerdictOutcome.ProvesNothing)]
    [InlineData("≤ 0.44 Ω", VerdictOutcome.ProvesNothing)]
    [InlineData("≤ 0.5 mΩ", VerdictOutcome.Inside)]
    [InlineData("\"> 0.46 Ω\"", VerdictOutcome.ProvesNothing)]
    [InlineData("\"> 899 Ω\"", VerdictOutcome.ProvesNothing)]
    [InlineData("\"> 901 Ω\"", VerdictOutcome.Outside)]
    public void A_written_limit_without_a_frequency_meets_no_reading_without_one(string reading, VerdictOutcome outcome) =>
        Assert.Equal(outcome, Worked.Verdict("kind: polymer electrolytic, esr_limit: 0.45 Ω", $"circuit: out, esr: {reading}").Outcome);

    [Fact]
    public void What_breaks_its_limit_at_every_frequency_of_a_meter_breaks_it_without_one() =>
        Assert.Equal(VerdictOutcome.Outside, Worked.Verdict(ByLoss, "circuit: out, esr: 1.019 Ω").Outcome);

    // SV13. tan delta 0.14 on 470 µF: 0.7901 ohm worn at 120 Hz. At 1 kHz inside to 0.0948 ohm alone, at 50 Hz outside above 1.896 ohm
    // alone.
    [Theory]
    [InlineData("1 kHz", "0.0948 Ω", VerdictOutcome.Inside)]
    [InlineData("1 kHz", "0.0949 Ω", VerdictOutcome.Undecided)]
    [InlineData("1 kHz", "0.3 Ω", VerdictOutcome.Undecided)]
    [InlineData("1001 Hz", "0.3 Ω", VerdictOutcome.Undecided)]
    [InlineData("1 kHz", "0.790 Ω", VerdictOutcome.Undecided)]
    [InlineData("1 kHz", "0.7902 Ω", VerdictOutcome.Outside)]
    [InlineData("50 Hz", "0.75 Ω", VerdictOutcome.Inside)]
    [InlineData("50 Hz", "0.790 Ω", VerdictOutcome.Inside)]
    [InlineData("50 Hz", "1.8 Ω", VerdictOutcome.Undecided)]
    [InlineData("50 Hz", "1.896 Ω", VerdictOutcome.Undecided)]
    [InlineData("50 Hz", "1.897 Ω", VerdictOutcome.Outside)]
    [InlineData("120 Hz", "0.790 Ω", VerdictOutcome.Inside)]
    [InlineData("120 Hz", "0.791 Ω", VerdictOutcome.Outside)]
    public void An_ESR_at_another_frequency_proves_what_both_parts_of_the_loss_would_allow(
        string frequency,
        string reading,
        VerdictOutcome outcome
    ) =>
        Assert.Equal(
            outcome,
            Worked
                .Verdict(
                    "kind: aluminium electrolytic, capacitance: 470 µF, rated_voltage: 25 V",
                    $"circuit: out, frequency: {frequency}, esr: {reading}"
                )
                .Outcome
        );

    [Fact]
    public void Why_such_an_ESR_does_not_decide_is_told_with_the_figures()
    {
        var verdict = Worked.Verdict(
            "kind: aluminium electrolytic, capacitance: 470 µF, rated_voltage: 25 V",
            "circuit: out, frequency: 1 kHz, esr: 0.3 Ω"
        );
        Assert.Contains("it was read at 1 kHz and the limit holds at 120 Hz", verdict.Why, StringComparison.Ordinal);
        Assert.Contains("x 120 Hz / 1000 Hz = 94.8", verdict.Why, StringComparison.Ordinal);
    }

    // The limit as written holds at 100 kHz: at 120 Hz a part has at least as much, and up to 833 times that.
    [Theory]
    [InlineData("120 Hz", "0.45 Ω", VerdictOutcome.Inside)]
    [InlineData("120 Hz", "0.46 Ω", VerdictOutcome.Undecided)]
    [InlineData("120 Hz", "375.1 Ω", VerdictOutcome.Outside)]
    [InlineData("100 kHz", "0.46 Ω", VerdictOutcome.Outside)]
    public void A_written_limit_holds_at_its_own_frequency(string frequency, string reading, VerdictOutcome outcome) =>
        Assert.Equal(outcome, Worked.Verdict(OwnLimit, $"circuit: out, frequency: {frequency}, esr: {reading}").Outcome);

    // It may hold at 120 Hz or at 100 kHz. What is inside at 120 Hz is inside at both, what is outside at 100 kHz is outside at both; and
    // more than the 0.7901 ohm that its type has at 120 Hz is outside by the one or by the other.
    [Theory]
    [InlineData("120 Hz", "0.45 Ω", VerdictOutcome.Inside)]
    [InlineData("120 Hz", "0.46 Ω", VerdictOutcome.Undecided)]
    [InlineData("120 Hz", "0.80 Ω", VerdictOutcome.Outside)]
    [InlineData("1 kHz", "0.44 Ω", VerdictOutcome.ProvesNothing)]
    [InlineData("100 kHz", "0.44 Ω", VerdictOutcome.ProvesNothing)]
    [InlineData("100 kHz", "0.46 Ω", VerdictOutcome.Outside)]
    public void A_written_limit_without_a_frequency_decides_what_holds_at_120_hertz_and_at_100_kilohertz_alike(
        string frequency,
        string reading,
        VerdictOutcome outcome
    ) =>
        Assert.Equal(
            outcome,
            Worked
                .Verdict(
                    "kind: aluminium electrolytic, capacitance: 470 µF, rated_voltage: 25 V, esr_limit: 0.45 Ω",
                    $"circuit: out, frequency: {frequency}, esr: {reading}"
                )
                .Outcome
        );

    // A regulator needs 50 milliohm at least at 100 kHz: 60 at 120 Hz may be 0.072 milliohm of it.
    [Theory]
    [InlineData("100 kHz", "50 mΩ", VerdictOutcome.Inside)]
    [InlineData("100 kHz", "49 mΩ", VerdictOutcome.Outside)]
    [InlineData("120 Hz", "60 mΩ", VerdictOutcome.Undecided)]
    [InlineData("120 Hz", "49 mΩ", VerdictOutcome.Outside)]
    public void The_least_ESR_that_a_place_needs_holds_at_the_same_frequency(string frequency, string reading, VerdictOutcome outcome) =>
        Assert.Equal(
            outcome,
            Worked.Verdict(OwnLimit + ", esr_low: 50 mΩ", $"circuit: out, frequency: {frequency}, esr: {reading}").Outcome
        );

    // 0.010 at 1 kHz on 1 µF: 0.010 / (2 pi 1 kHz 1 µF) = 1.5915 ohm (WIMA), for a worn film no more than for a new one. At 10 kHz inside
    // to 0.159 ohm, which is 0.010.
    [Theory]
    [InlineData("frequency: 1 kHz, esr: 1.591 Ω", VerdictOutcome.Inside)]
    [InlineData("frequency: 1 kHz, esr: 1.592 Ω", VerdictOutcome.Outside)]
    [InlineData("frequency: 10 kHz, esr: 0.159 Ω", VerdictOutcome.Inside)]
    [InlineData("frequency: 10 kHz, esr: 0.5 Ω", VerdictOutcome.Undecided)]
    [InlineData("frequency: 10 kHz, esr: 1.592 Ω", VerdictOutcome.Outside)]
    [InlineData("frequency: 1 kHz, loss_factor: 0.010", VerdictOutcome.Inside)]
    [InlineData("frequency: 1 kHz, loss_factor: 0.0101", VerdictOutcome.Outside)]
    [InlineData("frequency: 10 kHz, loss_factor: 0.010", VerdictOutcome.Inside)]
    [InlineData("frequency: 10 kHz, loss_factor: 0.0314", VerdictOutcome.Undecided)]
    [InlineData("frequency: 10 kHz, loss_factor: 0.1001", VerdictOutcome.Outside)]
    public void Film_has_one_rule_for_ESR_and_for_its_loss_and_no_factor_for_wear(string reading, VerdictOutcome outcome) =>
        Assert.Equal(
            outcome,
            Worked.Verdict("kind: polyester film, capacitance: 1 µF, rated_voltage: 100 V", "circuit: out, " + reading).Outcome
        );

    // A shorted part has none: common practice.
    [Fact]
    public void An_ESR_of_zero_asks_for_a_check_with_direct_current()
    {
        var verdict = Worked.Verdict(ByLoss, "circuit: out, frequency: 120 Hz, esr: 0 Ω");
        Assert.Equal(VerdictOutcome.Undecided, verdict.Outcome);
        Assert.Contains("check it with d.c.", verdict.Why, StringComparison.Ordinal);
    }

    // The loss of the dielectric falls with frequency, so ESR at 100 kHz is the smaller: 0.4244 x 120 / 100 000 = 0.51 milliohm alone would
    // be inside.
    [Theory]
    [InlineData("0.1 Ω", VerdictOutcome.Undecided)]
    [InlineData("0.5 mΩ", VerdictOutcome.Inside)]
    [InlineData("0.9 Ω", VerdictOutcome.Outside)]
    public void An_ESR_at_100_kilohertz_can_break_a_limit_of_120_hertz_and_hardly_keep_it(string reading, VerdictOutcome outcome) =>
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
