using Ohmstead.Assessment.Limits;
using Ohmstead.Assessment.Tests.Support;
using Ohmstead.Assessment.Verdicts;

namespace Ohmstead.Assessment.Tests.Verdicts;

/// <summary>Insulation and loss of capacitors on the mains, of ceramic and of mica, whichever way they were read.</summary>
public sealed class DryCapacitorVerdictTests
{
    private const string X2 = "kind: suppression capacitor, safety_class: X2, capacitance: 100 nF, tolerance: 20 %, rated_voltage: 250 V";
    private const string Y2 =
        "kind: suppression capacitor, safety_class: Y2, capacitance: 2.2 nF, tolerance: 20 %, rated_voltage: 250 V, form: disc";

    // SV01, SV02, SV03. Film 100 GΩ new, half at the end of life (TDK); a ceramic disc 6 and 3 GΩ (WKO, Vishay VY2). Under 1 GΩ is out by
    // all that was read, and between them the standard's floor of old parts was not read: 15 and 7.5 GΩ decide nothing. 10 kΩ is out by all
    // of them, as insulation, as leakage (25 mA at 250 V, 50 mA is 5 kΩ) and on an ohmmeter, in the first second or after the minute.
    [Theory]
    [InlineData(X2, "insulation: 10 kΩ, after: 1 min, at_voltage: 500 V", VerdictOutcome.Outside)]
    [InlineData(X2, "insulation: 10 kΩ", VerdictOutcome.Outside)]
    [InlineData(X2, "insulation: 10 kΩ, after: 5 s, at_voltage: 500 V", VerdictOutcome.Outside)]
    [InlineData(X2, "resistance: 10 kΩ", VerdictOutcome.Outside)]
    [InlineData(X2, "leakage: 25 mA, at_voltage: 250 V", VerdictOutcome.Outside)]
    [InlineData(Y2, "insulation: 10 kΩ, after: 1 min, at_voltage: 500 V", VerdictOutcome.Outside)]
    [InlineData(Y2, "leakage: 50 mA, after: 1 min, at_voltage: 250 V", VerdictOutcome.Outside)]
    [InlineData(Y2, "leakage: 50 mA", VerdictOutcome.Outside)]
    [InlineData(Y2, "resistance: 5 kΩ", VerdictOutcome.Outside)]
    [InlineData(X2, "insulation: 50 GΩ, after: 1 min, at_voltage: 500 V", VerdictOutcome.Inside)]
    [InlineData(X2, "insulation: 49.9 GΩ, after: 1 min, at_voltage: 500 V", VerdictOutcome.Undecided)]
    [InlineData(X2, "insulation: 7.5 GΩ, after: 1 min, at_voltage: 500 V", VerdictOutcome.Undecided)]
    [InlineData(X2, "insulation: 1 GΩ, after: 1 min, at_voltage: 500 V", VerdictOutcome.Undecided)]
    [InlineData(X2, "insulation: 0.99 GΩ, after: 1 min, at_voltage: 500 V", VerdictOutcome.Outside)]
    [InlineData(X2, "state: new, insulation: 100 GΩ, after: 1 min, at_voltage: 500 V", VerdictOutcome.Inside)]
    [InlineData(X2, "state: new, insulation: 15 GΩ, after: 1 min, at_voltage: 500 V", VerdictOutcome.Undecided)]
    [InlineData(Y2, "insulation: 3 GΩ, after: 1 min, at_voltage: 500 V", VerdictOutcome.Inside)]
    [InlineData(Y2, "insulation: 2.9 GΩ, after: 1 min, at_voltage: 500 V", VerdictOutcome.Outside)]
    [InlineData(X2, "leakage: 5 nA, after: 1 min, at_voltage: 250 V", VerdictOutcome.Inside)]
    [InlineData(X2, "leakage: 5.1 nA, after: 1 min, at_voltage: 250 V", VerdictOutcome.Undecided)]
    [InlineData(X2, "leakage: 250 nA, after: 1 min, at_voltage: 250 V", VerdictOutcome.Undecided)]
    [InlineData(X2, "leakage: 251 nA, after: 1 min, at_voltage: 250 V", VerdictOutcome.Outside)]
    public void A_capacitor_on_the_mains_has_an_insulation_to_keep_whichever_way_it_is_read(
        string part,
        string reading,
        VerdictOutcome outcome
    ) => Assert.Equal(outcome, Worked.Verdict(part, "circuit: out, " + reading).Outcome);

    // What the minute explains: absorption as 1/t, so a sixtieth after a second, 16.7 MΩ of 1 GΩ. What the voltage does: 100 V at least
    // (R.41 sheet).
    [Theory]
    [InlineData("insulation: 60 GΩ, after: 1 min", VerdictOutcome.ProvesNothing)]
    [InlineData("insulation: 60 GΩ, after: 1 min, at_voltage: 9 V", VerdictOutcome.ProvesNothing)]
    [InlineData("insulation: 1 GΩ, at_voltage: 500 V", VerdictOutcome.Undecided)]
    [InlineData("insulation: 17 MΩ, at_voltage: 500 V", VerdictOutcome.Undecided)]
    [InlineData("insulation: 16 MΩ, at_voltage: 500 V", VerdictOutcome.Outside)]
    [InlineData("insulation: 2 GΩ, after: 10 s, at_voltage: 500 V", VerdictOutcome.ProvesNothing)]
    [InlineData("insulation: 167 MΩ, after: 10 s, at_voltage: 500 V", VerdictOutcome.ProvesNothing)]
    [InlineData("insulation: 166 MΩ, after: 10 s, at_voltage: 500 V", VerdictOutcome.Outside)]
    public void What_the_record_leaves_out_takes_only_what_hangs_on_it(string reading, VerdictOutcome outcome) =>
        Assert.Equal(outcome, Worked.Verdict(X2, "circuit: out, " + reading).Outcome);

    // A decade in 60 K (WIMA): at 50 °C a part that no source calls bad may show 1 x 10^-0.5 = 0.316 GΩ; at 0 °C a bad one may show 50 x
    // 10^(1/3) = 107.7 GΩ.
    [Theory]
    [InlineData("50 °C", "50 GΩ", VerdictOutcome.Inside)]
    [InlineData("50 °C", "0.317 GΩ", VerdictOutcome.Undecided)]
    [InlineData("50 °C", "0.316 GΩ", VerdictOutcome.Outside)]
    [InlineData("0 °C", "107.8 GΩ", VerdictOutcome.Inside)]
    [InlineData("0 °C", "107.7 GΩ", VerdictOutcome.Undecided)]
    [InlineData("0 °C", "0.99 GΩ", VerdictOutcome.Outside)]
    public void Insulation_read_warm_or_cold_is_held_back_on_the_side_that_the_warmth_explains(
        string temperature,
        string reading,
        VerdictOutcome outcome
    ) =>
        Assert.Equal(
            outcome,
            Worked.Verdict(X2, $"circuit: out, temperature: {temperature}, insulation: {reading}, after: 1 min, at_voltage: 500 V").Outcome
        );

    // Loss: 0.010 + 0.008 where the film is not written, and above it nothing, for paper has no source at hand; a disc 0.05 (TDK; Vishay
    // VY2). A polypropylene X2
    // 0.003 + 0.008.
    [Theory]
    [InlineData(X2, "0.018", VerdictOutcome.Inside)]
    [InlineData(X2, "0.019", VerdictOutcome.ProvesNothing)]
    [InlineData(Y2, "0.05", VerdictOutcome.Inside)]
    [InlineData(Y2, "0.051", VerdictOutcome.Outside)]
    [InlineData("kind: polypropylene film, safety_class: X2, capacitance: 100 nF, tolerance: 20 %", "0.011", VerdictOutcome.Inside)]
    [InlineData("kind: polypropylene film, safety_class: X2, capacitance: 100 nF, tolerance: 20 %", "0.012", VerdictOutcome.Outside)]
    public void A_capacitor_on_the_mains_has_a_loss_to_keep(string part, string reading, VerdictOutcome outcome) =>
        Assert.Equal(outcome, Worked.Verdict(part, $"circuit: out, frequency: 1 kHz, loss_factor: {reading}").Outcome);

    // 0.018 / (2 pi 1 kHz 100 nF) = 28.6 Ω where the film is not written, and above it paper is in no source; 0.011 of polypropylene is
    // 17.5 Ω and decides.
    [Theory]
    [InlineData(X2, "28 Ω", VerdictOutcome.Inside)]
    [InlineData(X2, "30 Ω", VerdictOutcome.ProvesNothing)]
    [InlineData("kind: polypropylene film, safety_class: X2, capacitance: 100 nF, tolerance: 20 %", "17 Ω", VerdictOutcome.Inside)]
    [InlineData("kind: polypropylene film, safety_class: X2, capacitance: 100 nF, tolerance: 20 %", "18 Ω", VerdictOutcome.Outside)]
    public void The_ESR_of_a_capacitor_on_the_mains_follows_from_its_loss(string part, string reading, VerdictOutcome outcome) =>
        Assert.Equal(outcome, Worked.Verdict(part, $"circuit: out, frequency: 1 kHz, esr: {reading}").Outcome);

    // ±20 % and 10 % of change: 0.8 x 0.9 = 0.72, 1.2 x 1.1 = 1.32 (TDK; common practice).
    [Theory]
    [InlineData("100 nF", VerdictOutcome.ProvesNothing)]
    [InlineData("72 nF", VerdictOutcome.ProvesNothing)]
    [InlineData("71.9 nF", VerdictOutcome.Outside)]
    [InlineData("132.1 nF", VerdictOutcome.Outside)]
    public void Without_a_tolerance_it_fails_by_the_widest_that_is_sold_and_what_its_life_takes_and_passes_by_none(
        string reading,
        VerdictOutcome outcome
    ) =>
        Assert.Equal(
            outcome,
            Worked
                .Verdict(
                    "kind: suppression capacitor, safety_class: X2, capacitance: 100 nF",
                    $"circuit: out, frequency: 1 kHz, capacitance: {reading}"
                )
                .Outcome
        );

    // SV09, SV10, SV12. Class 1: 100 GΩ or 1000 s, half when worn; 22 pF 0.002073 at 1 MHz. Class 2 disc: 10 GΩ new, 3 GΩ worn.
    [Theory]
    [InlineData("kind: ceramic class 1, capacitance: 1 nF", "insulation: 50 GΩ, after: 1 min, at_voltage: 500 V", VerdictOutcome.Inside)]
    [InlineData("kind: ceramic class 1, capacitance: 1 nF", "insulation: 49 GΩ, after: 1 min, at_voltage: 500 V", VerdictOutcome.Outside)]
    [InlineData(
        "kind: ceramic class 1, capacitance: 100 nF",
        "state: new, insulation: 10 GΩ, after: 1 min, at_voltage: 100 V",
        VerdictOutcome.Inside
    )]
    [InlineData("kind: ceramic class 1, capacitance: 1 µF", "insulation: 0.5 GΩ, after: 1 min, at_voltage: 100 V", VerdictOutcome.Inside)]
    [InlineData("kind: ceramic class 1, capacitance: 22 pF", "frequency: 1 MHz, loss_factor: 0.00207", VerdictOutcome.Inside)]
    [InlineData("kind: ceramic class 1, capacitance: 22 pF", "frequency: 1 MHz, loss_factor: 0.00208", VerdictOutcome.Outside)]
    [InlineData("kind: ceramic class 1, capacitance: 22 pF", "frequency: 1 kHz, loss_factor: 0.00208", VerdictOutcome.ProvesNothing)]
    [InlineData("kind: ceramic class 2, material: Z5U, capacitance: 10 nF", "resistance: 1 kΩ", VerdictOutcome.Outside)]
    [InlineData("kind: ceramic class 2, capacitance: 10 nF", "insulation: 3 GΩ, after: 1 min, at_voltage: 100 V", VerdictOutcome.Inside)]
    [InlineData("kind: ceramic class 2, capacitance: 10 nF", "insulation: 2.9 GΩ, after: 1 min, at_voltage: 100 V", VerdictOutcome.Outside)]
    [InlineData("kind: ceramic class 2, material: X7R, capacitance: 10 nF", "frequency: 1 kHz, loss_factor: 0.05", VerdictOutcome.Inside)]
    [InlineData("kind: ceramic class 2, material: X7R, capacitance: 10 nF", "frequency: 1 kHz, loss_factor: 0.051", VerdictOutcome.Outside)]
    [InlineData("kind: ceramic class 2, capacitance: 10 nF", "frequency: 1 kHz, loss_factor: 0.06", VerdictOutcome.Undecided)]
    [InlineData("kind: ceramic class 2, capacitance: 10 nF", "frequency: 1 kHz, loss_factor: 0.091", VerdictOutcome.Outside)]
    public void A_ceramic_is_held_to_the_standard_of_its_class(string part, string reading, VerdictOutcome outcome) =>
        Assert.Equal(outcome, Worked.Verdict(part, "circuit: out, " + reading).Outcome);

    // SV11. Mica of 470 pF: 0.00075 in and 0.0010 out when new; 100 GΩ new (Cornell Dubilier), 7.5 GΩ of an old one (EIA-153, from memory).
    [Theory]
    [InlineData("state: new, frequency: 1 MHz, loss_factor: 0.00075", VerdictOutcome.Inside)]
    [InlineData("state: new, frequency: 1 MHz, loss_factor: 0.0010", VerdictOutcome.Outside)]
    [InlineData("state: new, insulation: 99 GΩ, after: 1 min, at_voltage: 500 V", VerdictOutcome.Outside)]
    [InlineData("insulation: 7.5 GΩ, after: 1 min, at_voltage: 500 V", VerdictOutcome.Inside)]
    [InlineData("insulation: 7.4 GΩ, after: 1 min, at_voltage: 500 V", VerdictOutcome.Outside)]
    public void Mica_is_held_to_what_its_makers_give(string reading, VerdictOutcome outcome) =>
        Assert.Equal(outcome, Worked.Verdict("kind: mica, capacitance: 470 pF, rated_voltage: 500 V", "circuit: out, " + reading).Outcome);

    // In circuit whatever lies beside it only lowers the insulation and only adds to the current.
    [Theory]
    [InlineData("circuit: in, insulation: 10 kΩ", VerdictOutcome.ProvesNothing)]
    [InlineData("insulation: 10 kΩ", VerdictOutcome.Undecided)]
    [InlineData("insulation: 60 GΩ, after: 1 min, at_voltage: 500 V", VerdictOutcome.Inside)]
    [InlineData("circuit: in, resistance: 10 kΩ", VerdictOutcome.ProvesNothing)]
    public void What_lies_beside_it_may_explain_a_low_insulation_and_never_a_high_one(string reading, VerdictOutcome outcome) =>
        Assert.Equal(outcome, Worked.Verdict(X2, reading).Outcome);

    // tan delta is 0.0005 of polystyrene (from memory): a limit that a new part and a worn one share.
    [Fact]
    public void A_film_has_one_loss_for_new_and_worn() =>
        Assert.Equal(
            LimitKind.Delivery,
            Worked.Verdict("kind: polystyrene film, capacitance: 1 nF", "circuit: out, frequency: 1 kHz, loss_factor: 0.0004").Limit!.Kind
        );
}
