using Ohmstead.Assessment.Notes;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.Notes;

public sealed class WearNotesTests
{
    // 391 of 470 is -16.8 %; a worn part may lose 20 %, so 84 % is used: common practice. 1.15 x 25 V = 28.75 V: IEC 60384-4, 2.2.7, from
    // memory.
    [Fact]
    public void A_capacitor_that_lost_a_sixth_has_used_up_most_of_what_wear_may_take()
    {
        var notes = Of(
            "{ ref: C12, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: 20 %, rated_voltage: 25 V, working_voltage: 15 V }",
            "circuit: out, frequency: 120 Hz, capacitance: 391 µF"
        );
        Assert.StartsWith(
            "84 % of the change of capacitance that is allowed to a worn part is used, worth watching",
            notes[0].Says,
            StringComparison.Ordinal
        );
        Assert.Contains("bears short surges to 28.75 V", notes[1].Says, StringComparison.Ordinal);
    }

    // 0.14 / (2 pi x 120 Hz x 470 µF) = 0.395 ohm for a 25 V part: the series' data sheet; by hand calculator.
    [Fact]
    public void An_esr_at_120_hertz_is_set_beside_that_of_a_new_part() =>
        Assert.Contains(
            "at most 395 mΩ at 120 Hz",
            Assert
                .Single(
                    Of(
                        "{ ref: C12, kind: aluminium electrolytic, capacitance: 470 µF, rated_voltage: 25 V }",
                        "circuit: out, frequency: 120 Hz, esr: 700 mΩ"
                    )
                )
                .Says,
            StringComparison.Ordinal
        );

    [Fact]
    public void An_esr_at_100_kilohertz_is_set_beside_what_is_typical_and_no_limit() =>
        Assert.Contains(
            "no limit",
            Assert
                .Single(
                    Of(
                        "{ ref: C12, kind: aluminium electrolytic, capacitance: 470 µF, rated_voltage: 25 V }",
                        "circuit: out, frequency: 100 kHz, esr: 700 mΩ"
                    )
                )
                .Says,
            StringComparison.Ordinal
        );

    // 240 V / 14.6 µA = 16.44 Mohm; 240 V x 1 / (16.44 + 1) = 13.8 V; by hand calculator.
    [Fact]
    public void A_leaking_coupling_capacitor_is_told_by_what_it_does_to_the_grid() =>
        Assert.Contains(
            "would lift the grid by 13.8 V",
            Assert
                .Single(
                    Of(
                        "{ ref: C2, kind: paper, capacitance: 100 nF, rated_voltage: 400 V, role: coupling, leakage_limit: 500 nA }",
                        "circuit: out, at_voltage: 240 V, after: 1 min, leakage: 14.6 µA"
                    )
                )
                .Says,
            StringComparison.Ordinal
        );

    [Fact]
    public void In_circuit_nothing_is_said_of_wear() =>
        Assert.Empty(
            Of(
                "{ ref: C12, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: 20 % }",
                "circuit: in, frequency: 120 Hz, capacitance: 391 µF"
            )
        );

    // 6 pi x 50 Hz x 10 H = 9425 ohm: Radiotron Designer's Handbook, 4th edition, chapter 30, from memory.
    [Fact]
    public void A_choke_of_ten_henry_needs_a_load_under_nine_and_a_half_kilohm()
    {
        var board = Worked.Board(
            "parts:\n  - { ref: L1, kind: inductor, inductance: 10 H, tolerance: 20 %, role: filter }\nbench:\n  - date: 2026-03-14\n   "
                + " readings:\n      - { part: L1, circuit: out, inductance: 10 H }"
        );
        Assert.Contains(
            "9.42 kΩ",
            Assert.Single(WindingNotes.Compute(board, board.Readings[0], board.Readings[0].Verdicts[0])).Says,
            StringComparison.Ordinal
        );
    }

    // (12.0 - 10.0) / 10.0 x (234.5 + 20) - (22 - 20) = 48.9 K: IEC 60335-1 clause 11, from memory; by hand calculator.
    [Fact]
    public void A_winding_read_cold_and_warm_tells_its_own_heat()
    {
        var board = Worked.Board(
            "parts:\n  - { ref: T1, kind: transformer, resistance: 10 Ω }\nbench:\n  - date: 2026-03-14\n    readings:\n      - { part: "
                + "T1, circuit: out, temperature: 20 °C, resistance: 10.0 Ω }\n      - { part: T1, circuit: out, temperature: 22 °C, "
                + "resistance: 12.0 Ω }"
        );
        Assert.Empty(WindingNotes.Compute(board, board.Readings[0], board.Readings[0].Verdicts[0]));
        Assert.StartsWith(
            "the winding is 48.9 K warmer",
            Assert.Single(WindingNotes.Compute(board, board.Readings[1], board.Readings[1].Verdicts[0])).Says,
            StringComparison.Ordinal
        );
    }

    // Mean of 4.70, 4.72, 4.74 kohm: 4.72; deviation 20 ohm, of the mean 20 / sqrt(3) = 11.55 ohm: JCGM 100:2008 4.2.3, from memory; by
    // hand calculator.
    [Fact]
    public void Three_readings_of_one_thing_on_one_day_are_told_by_their_mean()
    {
        var board = Worked.Board(
            "parts:\n  - { ref: R3, kind: metal film resistor, resistance: 4k7, tolerance: 1 % }\nbench:\n  - date: 2026-03-14\n    "
                + "readings:\n      - { part: R3, circuit: out, resistance: 4.70 kΩ }\n      - { part: R3, circuit: out, resistance: "
                + "4.72 kΩ }\n      - { part: R3, circuit: out, resistance: 4.74 kΩ }"
        );
        Assert.Empty(RepeatNotes.Compute(board, board.Readings[0], board.Readings[0].Verdicts[0]));
        var note = Assert.Single(RepeatNotes.Compute(board, board.Readings[2], board.Readings[2].Verdicts[0]));
        Assert.StartsWith(
            "4.720 kΩ is the mean of 3 readings, with a standard uncertainty of 11.55 Ω",
            note.Says,
            StringComparison.Ordinal
        );
    }

    // A mean of readings that were taken differently is the mean of nothing.
    [Theory]
    [InlineData("temperature: 21 °C, ", "temperature: 60 °C, ")]
    [InlineData("frequency: 120 Hz, ", "frequency: 1 kHz, ")]
    [InlineData("state: as found, ", "state: as left, ")]
    [InlineData("instrument: bridge-2, ", "instrument: bridge-3, ")]
    public void Readings_of_another_temperature_frequency_state_or_meter_are_not_averaged(string twice, string once)
    {
        var board = Worked.Board(
            $"parts:\n  - {{ ref: C1, kind: polyester film, capacitance: 1 µF, tolerance: 10 % }}\nbench:\n  - date: 2026-03-14\n    "
                + $"readings:\n      - {{ part: C1, circuit: out, {once}capacitance: 1.02 µF }}\n      - {{ part: C1, circuit: out, "
                + $"{twice}capacitance: 1.00 µF }}\n      - {{ part: C1, circuit: out, {twice}capacitance: 1.01 µF }}"
        );
        Assert.Empty(RepeatNotes.Compute(board, board.Readings[2], board.Readings[2].Verdicts[0]));
    }

    // 250 V x 1 MΩ / (49 MΩ + 1 MΩ) = 5 V, by hand.
    [Fact]
    public void Poor_insulation_of_a_coupling_capacitor_tells_what_it_does_to_a_grid() =>
        Assert.StartsWith(
            "into a grid leak of 1 MΩ it would lift the grid by 5.00 V",
            Assert
                .Single(
                    Of(
                        "{ ref: C2, kind: paper, role: coupling, capacitance: 100 nF, rated_voltage: 400 V, working_voltage: 250 V }",
                        "circuit: out, insulation: 49 MΩ, after: 1 min, at_voltage: 250 V"
                    )
                )
                .Says,
            StringComparison.Ordinal
        );

    private static IReadOnlyList<WorkedNote> Of(string part, string reading)
    {
        var board = Worked.Board(
            $"parts:\n  - {part}\nbench:\n  - date: 2026-03-14\n    readings:\n      - {{ part: "
                + $"{(part.Contains("C12", StringComparison.Ordinal) ? "C12" : "C2")}, {reading} }}"
        );
        return WearNotes.Compute(board.Readings[0], Assert.Single(board.Readings[0].Verdicts));
    }
}
