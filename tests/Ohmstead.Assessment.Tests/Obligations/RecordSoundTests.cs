using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.Obligations;

/// <summary>What check finds reaches the state, where it is about the board or about what sits in it.</summary>
public sealed class RecordSoundTests
{
    private const string Lot =
        "lots:\n  - { lot: L-031, kind: aluminium electrolytic, capacitance: 470 µF, rated_voltage: 35 V, received: 2026-01-28, "
        + "quantity: 10 }";
    private const string Fitted = "    work:\n      - { part: C12, did: replaced, lot: L-031, polarity: schematic }\n";

    [Fact]
    public void A_record_in_which_all_checks_pass_is_sound() =>
        Board("    readings:\n      - { part: C12, circuit: out, frequency: 120 Hz, capacitance: 461 µF }\n")
            .Met(null, "no error in the record", "all checks passed or only told", null, "board: SP-0001");

    [Fact]
    public void A_failing_reading_that_cannot_be_read_holds_back() =>
        Board("    readings:\n      - { part: C12, circuit: out, frequency: 120 Hz, capacitance: 100 }\n", isReadable: false)
            .Open("C12", BoardState.ProofDue, "…", "…");

    [Fact]
    public void A_verdict_that_disagrees_is_told_with_its_check_and_line()
    {
        var board = Board("    readings:\n      - { part: C12, circuit: out, frequency: 120 Hz, capacitance: 461 µF, verdict: out }\n");
        Assert.EndsWith(
            "[verdict-disagrees, boards/SP-0001.md line 9]",
            Assert.Single(board.Board.Reasons, reason => reason.At == "C12").Text,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Work_on_a_part_that_nobody_knows_holds_back() =>
        Board("    work:\n      - { part: C99, did: repaired }\n").Open("C99", BoardState.ProofDue, "…", "…");

    // It is a doubt while the reading counts: a thousandth of the mark is a slip of the unit.
    [Fact]
    public void A_reading_far_from_the_mark_holds_back_while_it_counts()
    {
        const string Far = "    readings:\n      - { part: C12, circuit: out, frequency: 120 Hz, capacitance: 461 nF }\n";
        Assert.True(Board(Far).IsOpen("C12"));
        Assert.False(Board(Far + Fitted, Lot).IsOpen("C12"));
    }

    [Fact]
    public void What_is_only_told_holds_nothing_back() =>
        Assert.False(
            Board(
                    "    work:\n      - { part: C12, did: removed }\n  - date: 2026-03-15\n    readings:\n      - { part: C12, circuit: "
                        + "out, frequency: 120 Hz, capacitance: 461 µF }\n"
                )
                .IsOpen("C12")
        );

    [Fact]
    public void A_lot_that_nobody_knows_is_no_part() =>
        Board(Fitted.Replace("L-031", "L-099", StringComparison.Ordinal), Lot)
            .Told("C12", "nothing is known of lot L-099, a part of which sits here", "add lot L-099 to stock.yaml, or mend it there");

    [Fact]
    public void A_design_that_nobody_knows_asks_nothing_that_could_be_proved() =>
        new ObligedBoard("record-sound", "design: tide-logger\nbench:\n  - date: 2026-03-14").Told(
            "tide-logger",
            "the design tide-logger could not be read: what the board must prove is not known",
            "mend designs/tide-logger.md"
        );

    [Fact]
    public void An_instrument_that_nobody_knows_is_no_instrument() =>
        Board("    readings:\n      - { part: C12, circuit: out, frequency: 120 Hz, capacitance: 461 µF, instrument: bridge-9 }\n")
            .Told(
                "bridge-9",
                "nothing is known of instrument bridge-9, whose readings count here",
                "add bridge-9 to instruments.yaml, or mend it there"
            );

    [Fact]
    public void An_error_in_a_lot_counts_where_a_part_of_it_sits()
    {
        var wrong = Lot.Replace("capacitance: 470 µF", "capacitance: 470 µF, polarity: none", StringComparison.Ordinal);
        Assert.True(Board(Fitted, wrong).IsOpen("C12"));
        Assert.False(Board("    found:\n      - { at: J3, what: dust, severity: note }\n", wrong).IsOpen("C12"));
    }

    private static ObligedBoard Board(string visit, string? stock = null, bool isReadable = true) =>
        new(
            "record-sound",
            "parts:\n  - { ref: C12, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: 20 %, rated_voltage: 25 V "
                + "}\nbench:\n  - date: 2026-03-14\n"
                + visit.TrimEnd(),
            stock,
            isReadable: isReadable
        );
}
