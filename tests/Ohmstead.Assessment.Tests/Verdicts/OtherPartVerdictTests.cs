using Ohmstead.Assessment.Limits;
using Ohmstead.Assessment.Tests.Support;
using Ohmstead.Assessment.Verdicts;

namespace Ohmstead.Assessment.Tests.Verdicts;

/// <summary>Parts that are no capacitors, by what is usual for their type.</summary>
public sealed class OtherPartVerdictTests
{
    // Without a band: composition ±20 %, carbon film 5 + 2 %, metal film 5 + 1 %, wire-wound ±10 %, a potentiometer ±20 %: common practice.
    [Theory]
    [InlineData("carbon composition resistor", "120 kΩ", "120.1 kΩ")]
    [InlineData("carbon film resistor", "107 kΩ", "107.1 kΩ")]
    [InlineData("metal film resistor", "106 kΩ", "106.1 kΩ")]
    [InlineData("wire-wound resistor", "90 kΩ", "89.9 kΩ")]
    [InlineData("potentiometer", "80 kΩ", "79.9 kΩ")]
    public void A_resistor_without_a_tolerance_may_drift_as_its_technology_does(string kind, string inside, string outside)
    {
        var verdict = Worked.Verdict($"kind: {kind}, resistance: 100 kΩ", $"circuit: out, resistance: {inside}");
        Assert.Equal((VerdictOutcome.Inside, LimitKind.EndOfLife), (verdict.Outcome, verdict.Limit!.Kind));
        Assert.Contains("the type's usual limit", verdict.Limit.Origin, StringComparison.Ordinal);
        Assert.Equal(
            VerdictOutcome.Outside,
            Worked.Verdict($"kind: {kind}, resistance: 100 kΩ", $"circuit: out, resistance: {outside}").Outcome
        );
    }

    // 100 kohm ±5 % to 105 kohm; with 2 % of ageing to 107 kohm: common practice.
    [Fact]
    public void The_mark_governs_and_what_ageing_allows_stands_beside_it()
    {
        var verdict = Worked.Verdict("kind: carbon film resistor, resistance: 100 kΩ, tolerance: 5 %", "circuit: out, resistance: 106 kΩ");
        Assert.Equal((VerdictOutcome.Outside, LimitKind.Delivery), (verdict.Outcome, verdict.Limit!.Kind));
        var (aged, isInside) = Assert.Single(verdict.Others);
        Assert.Equal((107_000m, true), (aged.Interval.Upper!.Value.Value, isInside));
    }

    [Theory]
    [InlineData("kind: thermistor, resistance: 10 kΩ", "resistance: 9 kΩ")]
    [InlineData("kind: carbon film resistor, resistance: 10 kΩ", "state: new, resistance: 10 kΩ")]
    [InlineData("kind: fuse", "resistance: 2.1 Ω")]
    [InlineData("kind: transistor", "gain: 96")]
    [InlineData("kind: cell", "voltage: 3.0 V")]
    [InlineData("kind: zener diode, type: WX-Z91", "voltage: 9.1 V")]
    public void Where_nothing_is_usual_there_is_no_limit(string part, string reading) =>
        Assert.Equal(VerdictOutcome.NoLimit, Worked.Verdict(part, reading).Outcome);

    [Fact]
    public void A_whole_fuse_is_told_to_prove_nothing_about_its_current() =>
        Assert.Contains(Worked.Verdict("kind: fuse, current: 250 mA", "resistance: 2.1 Ω").Remarks, remark =>
            remark.Text.Contains("a whole fuse is no evidence", StringComparison.Ordinal)
        );

    // 550 ohm ±10 % to 605 ohm as marked; 48 ohm ±20 % to 57.6 ohm and 10 H ±20 % down to 8 H as usual: common practice.
    [Theory]
    [InlineData("kind: relay, resistance: 550 Ω, tolerance: 10 %", "resistance: 605 Ω", "resistance: 606 Ω", LimitKind.Delivery)]
    [InlineData("kind: motor, resistance: 48 Ω", "resistance: 57.6 Ω", "resistance: 57.7 Ω", LimitKind.EndOfLife)]
    [InlineData("kind: transformer, resistance: 48 Ω", "resistance: 57.6 Ω", "resistance: 57.7 Ω", LimitKind.EndOfLife)]
    [InlineData("kind: inductor, inductance: 10 H", "inductance: 8 H", "inductance: 7.9 H", LimitKind.EndOfLife)]
    [InlineData(
        "kind: inductor, inductance: 10 H, tolerance: 5 %, resistance: 100 Ω",
        "resistance: 120 Ω",
        "resistance: 121 Ω",
        LimitKind.EndOfLife
    )]
    public void A_winding_is_held_against_its_mark_or_what_is_usual(string part, string inside, string outside, LimitKind kind)
    {
        var verdict = Worked.Verdict(part, "circuit: out, " + inside);
        Assert.Equal((VerdictOutcome.Inside, kind), (verdict.Outcome, verdict.Limit!.Kind));
        Assert.Equal(VerdictOutcome.Outside, Worked.Verdict(part, "circuit: out, " + outside).Outcome);
    }

    // 32 768 Hz ±100 ppm is ±3.2768 Hz; 32 765 Hz is 91.6 ppm low: common practice for a logic clock.
    [Theory]
    [InlineData("32765 Hz", VerdictOutcome.Inside)]
    [InlineData("32764.7232 Hz", VerdictOutcome.Inside)]
    [InlineData("32764.7 Hz", VerdictOutcome.Outside)]
    public void A_crystal_without_a_tolerance_is_good_for_a_logic_clock_to_a_hundred_parts_in_a_million(
        string reading,
        VerdictOutcome outcome
    ) => Assert.Equal(outcome, Worked.Verdict("kind: crystal, frequency: 32.768 kHz", $"circuit: in, frequency: {reading}").Outcome);

    // 0.5 to 0.8 V for silicon, 0.1 to 0.45 V for Schottky (testmultimeter.com 2021-11), 0.15 to 0.4 V for germanium: common practice.
    [Theory]
    [InlineData("kind: diode, material: silicon", "0.55 V", VerdictOutcome.Inside)]
    [InlineData("kind: diode, material: silicon", "0.3 V", VerdictOutcome.Outside)]
    [InlineData("kind: diode, material: Schottky", "0.3 V", VerdictOutcome.Inside)]
    [InlineData("kind: diode, material: germanium", "0.62 V", VerdictOutcome.Outside)]
    [InlineData("kind: germanium transistor", "0.2 V", VerdictOutcome.Inside)]
    [InlineData("kind: transistor, material: silicon", "0.2 V", VerdictOutcome.Outside)]
    [InlineData("kind: diode", "0.62 V", VerdictOutcome.Inside)]
    [InlineData("kind: diode", "0.3 V", VerdictOutcome.ProvesNothing)]
    [InlineData("kind: diode", "1.9 V", VerdictOutcome.Outside)]
    public void A_junction_is_judged_by_its_material_and_a_low_drop_of_an_unknown_one_proves_nothing(
        string part,
        string reading,
        VerdictOutcome outcome
    ) => Assert.Equal(outcome, Worked.Verdict(part, $"circuit: out, forward_voltage: {reading}").Outcome);

    [Fact]
    public void A_low_drop_in_circuit_proves_nothing() =>
        Assert.Equal(
            VerdictOutcome.ProvesNothing,
            Worked.Verdict("kind: diode, material: silicon", "circuit: in, forward_voltage: 0.3 V").Outcome
        );

    // C: ±5 %, 9.1 x 1.05 = 9.555 V; A after 1N47xx: ±5 %, 5.1 x 0.95 = 4.845 V: Pro Electron and JEDEC, from memory.
    [Theory]
    [InlineData("type: WX-C9V1", "9.555 V", VerdictOutcome.Inside)]
    [InlineData("type: WX-C9V1", "9.56 V", VerdictOutcome.Outside)]
    [InlineData("type: 1N4733A, rated_voltage: 5.1 V", "4.845 V", VerdictOutcome.Inside)]
    [InlineData("type: 1N4733A, rated_voltage: 5.1 V", "4.84 V", VerdictOutcome.Outside)]
    [InlineData("rated_voltage: 5.1 V, tolerance: 2 %", "5.0 V", VerdictOutcome.Inside)]
    public void A_zener_diode_keeps_what_its_suffix_says(string part, string reading, VerdictOutcome outcome) =>
        Assert.Equal(outcome, Worked.Verdict($"kind: zener diode, {part}", $"circuit: out, current: 5 mA, voltage: {reading}").Outcome);

    // 5 V: 4.75 to 5.25 V over line, load and temperature: regulator data sheets, from memory.
    [Theory]
    [InlineData("rated_voltage: 5 V", "5.25 V", VerdictOutcome.Inside)]
    [InlineData("rated_voltage: 5 V", "5.3 V", VerdictOutcome.Outside)]
    [InlineData("type: 7912", "-12 V", VerdictOutcome.NoLimit)]
    public void A_fixed_regulator_keeps_what_its_kind_keeps(string part, string reading, VerdictOutcome outcome) =>
        Assert.Equal(outcome, Worked.Verdict($"kind: regulator, {part}", $"circuit: in, voltage: {reading}").Outcome);

    // 3 x 1.0 V for nickel cells, 2.5 V for lithium: IEC 61951 and data sheets, from memory.
    [Theory]
    [InlineData("material: nickel-cadmium, cells: 3", "3 V", VerdictOutcome.Inside)]
    [InlineData("material: nickel-cadmium, cells: 3", "2.99 V", VerdictOutcome.Outside)]
    [InlineData("material: nickel-cadmium, rated_voltage: 3.6 V", "2.99 V", VerdictOutcome.Outside)]
    [InlineData("material: lithium, cells: 1", "2.49 V", VerdictOutcome.Outside)]
    [InlineData("material: lithium", "3.02 V", VerdictOutcome.ProvesNothing)]
    [InlineData("material: lithium", "2.4 V", VerdictOutcome.Outside)]
    public void A_cell_is_spent_under_the_end_point_of_its_chemistry(string part, string reading, VerdictOutcome outcome) =>
        Assert.Equal(outcome, Worked.Verdict($"kind: cell, {part}", $"voltage: {reading}").Outcome);

    [Theory]
    [InlineData("60", VerdictOutcome.Inside)]
    [InlineData("59", VerdictOutcome.Outside)]
    public void A_transistor_has_the_gain_that_its_place_needs(string gain, VerdictOutcome outcome) =>
        Assert.Equal(outcome, Worked.Verdict("kind: transistor, low: 60", $"circuit: out, gain: {gain}").Outcome);

    // Ten times 10 µA: common practice.
    [Theory]
    [InlineData("100 µA", VerdictOutcome.Inside)]
    [InlineData("101 µA", VerdictOutcome.Outside)]
    public void Germanium_may_leak_ten_times_what_its_type_leaks(string leakage, VerdictOutcome outcome) =>
        Assert.Equal(
            outcome,
            Worked.Verdict("kind: germanium transistor, leakage_limit: 10 µA", $"circuit: out, leakage: {leakage}").Outcome
        );
}
