using Ohmstead.Assessment.Notes;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.Notes;

public sealed class PartNotesTests
{
    // (32765 - 32768) / 32768 = -91.55 ppm, 7.91 s a day slow; by hand calculator.
    [Fact]
    public void A_frequency_is_told_in_parts_in_a_million_and_seconds_a_day()
    {
        var note = PartNotes.Frequency(Worked.Verdict("kind: crystal, frequency: 32.768 kHz", "circuit: in, frequency: 32765 Hz"));
        Assert.Contains("loses 7.91 s a day", note?.Says, StringComparison.Ordinal);
        Assert.Contains("-91.55 ppm", note?.Arithmetic, StringComparison.Ordinal);
    }

    // 100 kohm beside 47 kohm reads 31.97 kohm: 1 / (1 / 31.97 - 1 / 100) = 47.0 kohm; by hand calculator.
    [Fact]
    public void A_resistor_that_reads_low_in_circuit_is_told_what_may_lie_beside_it()
    {
        var board = Worked.Board(
            "parts:\n  - { ref: R2, kind: carbon film resistor, resistance: 100 kΩ, tolerance: 10 % }\nbench:\n  - date: 2026-03-14\n   "
                + " readings:\n      - { part: R2, circuit: in, resistance: 31.97 kΩ }"
        );
        var reading = Assert.Single(board.Readings);
        Assert.Contains(
            "47.0 kΩ in parallel reads the same",
            Assert.Single(PartNotes.Compute(board, reading, Assert.Single(reading.Verdicts))).Says,
            StringComparison.Ordinal
        );
    }

    // 30 years are 262 800 h, 2.42 decades after 1000 h: 1 - 0.025 x 2.42 = 0.94 for X7R: EIA-198-1-F as makers quote it.
    [Fact]
    public void An_old_class_2_ceramic_has_aged_by_its_dielectric()
    {
        var board = Worked.Board(
            "made: 1996\nparts:\n  - { ref: C6, kind: ceramic class 2, capacitance: 100 nF, tolerance: 20 %, material: X7R }\nbench:\n  "
                + "- date: 2026-03-14\n    readings:\n      - { part: C6, circuit: out, frequency: 1 kHz, capacitance: 86 nF }"
        );
        var reading = Assert.Single(board.Readings);
        Assert.Contains(
            "after 30 years without heat X7R has some 94 %",
            Assert.Single(PartNotes.Compute(board, reading, Assert.Single(reading.Verdicts))).Says,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_ceramic_of_unknown_dielectric_or_age_is_told_nothing()
    {
        var board = Worked.Board(
            "parts:\n  - { ref: C6, kind: ceramic class 2, capacitance: 100 nF, material: X7R }\nbench:\n  - date: 2026-03-14\n    "
                + "readings:\n      - { part: C6, capacitance: 86 nF }"
        );
        Assert.Empty(PartNotes.Compute(board, Assert.Single(board.Readings), Assert.Single(board.Readings[0].Verdicts)));
    }
}
