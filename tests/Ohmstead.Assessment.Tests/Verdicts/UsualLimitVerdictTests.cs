using Ohmstead.Assessment.Tests.Support;
using Ohmstead.Assessment.Verdicts;

namespace Ohmstead.Assessment.Tests.Verdicts;

/// <summary>Limits that the trade has for parts that had none: fuses, windings, shorts, full cells, heaters, junctions, wet tantalum, cans
/// above 450 V.</summary>
public sealed class UsualLimitVerdictTests
{
    // SV34. 1 A: whole to 0.25 ohm (Schurter SMD-SPT, 250 mV), blown above 5 x 0.25 + 1 = 2.25 ohm: leads and contacts, common practice.
    [Theory]
    [InlineData("circuit: out, resistance: 0.18 Ω", VerdictOutcome.Inside)]
    [InlineData("circuit: out, resistance: 0.25 Ω", VerdictOutcome.Inside)]
    [InlineData("circuit: out, resistance: 0.4 Ω", VerdictOutcome.Undecided)]
    [InlineData("circuit: out, resistance: 2.26 Ω", VerdictOutcome.Outside)]
    [InlineData("circuit: out, resistance: 5 MΩ", VerdictOutcome.Outside)]
    [InlineData("circuit: in, resistance: 5 MΩ", VerdictOutcome.Outside)]
    [InlineData("resistance: 5 MΩ", VerdictOutcome.Outside)]
    [InlineData("circuit: in, resistance: 0.18 Ω", VerdictOutcome.ProvesNothing)]
    public void A_blown_fuse_is_outside(string reading, VerdictOutcome outcome) =>
        Assert.Equal(outcome, Worked.Verdict("kind: fuse, current: 1 A", reading).Outcome);

    // SV24. Class I 1 MΩ, class II 2 MΩ, reinforced 7 MΩ at 500 V d.c. (UK practice): 5 MΩ is in by two and out by one, and the verdict
    // says which.
    [Theory]
    [InlineData("insulation: 0.9 MΩ, at_voltage: 500 V", VerdictOutcome.Outside)]
    [InlineData("insulation: 5 MΩ, at_voltage: 500 V", VerdictOutcome.Undecided)]
    [InlineData("insulation: 7 MΩ, at_voltage: 500 V", VerdictOutcome.Inside)]
    [InlineData("insulation: 50 MΩ, at_voltage: 9 V", VerdictOutcome.ProvesNothing)]
    [InlineData("insulation: 50 MΩ", VerdictOutcome.ProvesNothing)]
    [InlineData("insulation: 0.9 MΩ", VerdictOutcome.Outside)]
    public void The_insulation_of_a_transformer_is_held_to_what_its_equipment_must_have(string reading, VerdictOutcome outcome) =>
        Assert.Equal(outcome, Worked.Verdict("kind: transformer", "circuit: out, " + reading).Outcome);

    [Fact]
    public void Which_figures_it_keeps_is_told() =>
        Assert.Contains(
            "not the 7 MΩ of reinforced insulation",
            Worked.Verdict("kind: transformer", "circuit: out, insulation: 5 MΩ, at_voltage: 500 V").Why,
            StringComparison.Ordinal
        );

    // 100 µF: a meter that has sent its current for a second shows 1 s / 100 µF = 10 kΩ of a sound part; 25 V / 25 µA = 1 MΩ is what its
    // leakage allows.
    [Theory]
    [InlineData("circuit: out, resistance: 0 Ω", VerdictOutcome.Outside)]
    [InlineData("circuit: out, resistance: 9.9 kΩ", VerdictOutcome.Outside)]
    [InlineData("circuit: out, resistance: 10 kΩ", VerdictOutcome.Undecided)]
    [InlineData("circuit: out, resistance: 2 MΩ", VerdictOutcome.ProvesNothing)]
    [InlineData("circuit: in, resistance: 0 Ω", VerdictOutcome.ProvesNothing)]
    public void An_electrolytic_that_no_ohmmeter_charges_is_shorted(string reading, VerdictOutcome outcome) =>
        Assert.Equal(outcome, Worked.Verdict("kind: aluminium electrolytic, capacitance: 100 µF, rated_voltage: 25 V", reading).Outcome);

    // SV26, SV27. Three nickel cells are full at 3 x 1.45 = 4.35 V, a lithium cell at 3.3 V: common practice.
    [Theory]
    [InlineData("material: nickel-cadmium, cells: 3", "4.35 V", VerdictOutcome.Inside)]
    [InlineData("material: nickel-cadmium, cells: 3", "5.0 V", VerdictOutcome.Outside)]
    [InlineData("material: lithium, cells: 1", "3.3 V", VerdictOutcome.Inside)]
    [InlineData("material: lithium, cells: 1", "4.2 V", VerdictOutcome.Outside)]
    [InlineData("material: lithium", "6.1 V", VerdictOutcome.ProvesNothing)]
    public void A_cell_above_what_a_full_one_has_is_no_such_cell(string part, string reading, VerdictOutcome outcome) =>
        Assert.Equal(outcome, Worked.Verdict($"kind: cell, {part}", $"voltage: {reading}").Outcome);

    // SV28. 6.3 V: ±10 % from 5.670 to 6.930 V (Darby, The Radio Constructor, April 1962); 6.9 V is borne, 7.0 V is a fault.
    [Theory]
    [InlineData("rail: heater, nominal: 6.3 V", "5.67 V", VerdictOutcome.Inside)]
    [InlineData("rail: heater, nominal: 6.3 V", "6.9 V", VerdictOutcome.Inside)]
    [InlineData("nominal: 6.3 V", "6.93 V", VerdictOutcome.Inside)]
    [InlineData("nominal: 6.3 V", "6.931 V", VerdictOutcome.Outside)]
    [InlineData("rail: heater, nominal: 6.3 V", "7.0 V", VerdictOutcome.Outside)]
    public void A_heater_is_borne_to_ten_per_cent(string point, string reading, VerdictOutcome outcome) =>
        Assert.Equal(outcome, Worked.Proof(point, $"voltage: {reading}").Outcome);

    [Fact]
    public void Beyond_seven_per_cent_a_heater_is_not_called_good() =>
        Assert.Contains(Worked.Proof("rail: heater, nominal: 6.3 V", "voltage: 6.9 V").Remarks, remark =>
            remark.Text.Contains("beyond 7 % (5.859 to 6.741 V)", StringComparison.Ordinal)
        );

    // SV30. Diode test of a meter: 1N5402 0.528 V, 1N5820 0.123 V (testmultimeter.com 2021-11), two junctions of a bridge 1.0 to 1.6 V.
    [Theory]
    [InlineData("kind: diode, material: silicon", "0.528 V", VerdictOutcome.Inside)]
    [InlineData("kind: diode, material: Schottky", "0.123 V", VerdictOutcome.Inside)]
    [InlineData("kind: bridge rectifier, material: silicon", "1.2 V", VerdictOutcome.Inside)]
    [InlineData("kind: bridge rectifier, material: silicon", "0.6 V", VerdictOutcome.Inside)]
    [InlineData("kind: bridge rectifier, material: silicon", "0.87 V", VerdictOutcome.Outside)]
    [InlineData("kind: bridge rectifier, material: silicon", "0.93 V", VerdictOutcome.Outside)]
    [InlineData("kind: bridge rectifier, material: silicon", "1.7 V", VerdictOutcome.Outside)]
    [InlineData("kind: diode, material: silicon", "1.2 V", VerdictOutcome.Outside)]
    [InlineData("kind: diode, material: silicon, current: 10 A", "0.43 V", VerdictOutcome.Inside)]
    [InlineData("kind: diode, material: silicon, current: 1 A", "0.43 V", VerdictOutcome.Outside)]
    public void A_junction_is_held_to_what_a_meter_shows_of_it(string part, string reading, VerdictOutcome outcome) =>
        Assert.Equal(outcome, Worked.Verdict(part, $"circuit: out, forward_voltage: {reading}").Outcome);

    // 26 mV x ln 2 = 18 mV for twice the current: within 20 mV of an edge the current decides, and where it is written the edge does.
    [Theory]
    [InlineData("forward_voltage: 0.49 V", VerdictOutcome.Undecided)]
    [InlineData("forward_voltage: 0.51 V", VerdictOutcome.Undecided)]
    [InlineData("forward_voltage: 0.52 V", VerdictOutcome.Inside)]
    [InlineData("forward_voltage: 0.81 V", VerdictOutcome.Undecided)]
    [InlineData("forward_voltage: 0.821 V", VerdictOutcome.Outside)]
    public void Near_an_edge_the_current_decides(string reading, VerdictOutcome outcome) =>
        Assert.Equal(outcome, Worked.Verdict("kind: diode, material: silicon", "circuit: out, " + reading).Outcome);

    [Fact]
    public void With_its_current_a_drop_is_held_against_the_edge_itself()
    {
        var board = Worked.Board(
            "parts:\n  - { ref: D1, kind: diode, material: silicon }\nbench:\n  - date: 2026-03-14\n    readings:\n      - { part: D1, "
                + "circuit: out, current: 1 mA, forward_voltage: 0.5 V }\n      - { part: D1, circuit: out, current: 1 mA, "
                + "forward_voltage: 0.49 V }"
        );
        Assert.Equal([VerdictOutcome.Inside, VerdictOutcome.Outside], board.Readings.Select(reading => reading.Overall));
    }

    // SV15. Vishay 138D: 100 µF of 10 V to 80 µF, of 6 V to 75 µF.
    [Theory]
    [InlineData("rated_voltage: 10 V", "80 µF", VerdictOutcome.Inside)]
    [InlineData("rated_voltage: 10 V", "79.9 µF", VerdictOutcome.Outside)]
    [InlineData("rated_voltage: 6 V", "75 µF", VerdictOutcome.Inside)]
    [InlineData("rated_voltage: 30 V", "89 µF", VerdictOutcome.Outside)]
    public void A_wet_tantalum_has_lost_too_much_by_its_rating(string rated, string reading, VerdictOutcome outcome) =>
        Assert.Equal(
            outcome,
            Worked
                .Verdict($"kind: wet tantalum, capacitance: 100 µF, {rated}", $"circuit: out, frequency: 120 Hz, capacitance: {reading}")
                .Outcome
        );

    // 0.25 at 500 V (from memory) on 47 µF: 0.25 / (2 pi 120 Hz 47 µF) = 7.055 ohm, worn 14.11.
    [Theory]
    [InlineData("14.1 Ω", VerdictOutcome.Inside)]
    [InlineData("14.2 Ω", VerdictOutcome.Outside)]
    public void A_can_above_450_volt_has_an_ESR_to_keep(string reading, VerdictOutcome outcome) =>
        Assert.Equal(
            outcome,
            Worked
                .Verdict(
                    "kind: aluminium electrolytic, capacitance: 47 µF, rated_voltage: 500 V",
                    $"circuit: out, frequency: 120 Hz, esr: {reading}"
                )
                .Outcome
        );
}
