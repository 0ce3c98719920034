using Ohmstead.Assessment.Notes;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.Notes;

public sealed class WaveformNotesTests
{
    // 17 V peak, 50 Hz, bridge, 4700 µF, 14.3 ohm: ngspice 39 gives 15.585 V down to 13.831 V.
    [Fact]
    public void The_marked_reservoir_at_the_load_that_was_read_ripples_as_a_circuit_simulator_says()
    {
        var board = Worked.Board(
            "parts:\n  - { ref: C1, kind: aluminium electrolytic, capacitance: 4700 µF, rated_voltage: 35 V }\npoints:\n  - { point: "
                + "raw, low: 8 V, high: 25 V, reservoir: C1, winding: 12.0208 V }\nbench:\n  - date: 2026-03-14\n    proof:\n      - { "
                + "point: raw, voltage: 14.3 V, current: 1 A, ripple: 1.7 V, frequency: 100 Hz }"
        );
        var proof = Assert.Single(board.Proofs);
        Assert.Contains(PointNotes.Compute(board, proof), note =>
            note.Says.StartsWith("C1 as marked would ripple 1.7", StringComparison.Ordinal)
            && note.Says.Contains("from 13.8 V to 15.6 V", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Without_the_load_nothing_is_computed()
    {
        var board = Worked.Board(
            "parts:\n  - { ref: C1, kind: aluminium electrolytic, capacitance: 4700 µF }\npoints:\n  - { point: raw, low: 8 V, "
                + "reservoir: C1, winding: 12 V }\nbench:\n  - date: 2026-03-14\n    proof:\n      - { point: raw, voltage: 14.3 V, "
                + "frequency: 100 Hz }"
        );
        Assert.DoesNotContain(PointNotes.Compute(board, Assert.Single(board.Proofs)), note =>
            note.Says.Contains("as marked", StringComparison.Ordinal)
        );
    }
}
