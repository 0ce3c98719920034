using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.Obligations;

/// <summary>A lot is pieces: a reading of one piece says nothing of the next.</summary>
public sealed class FittedPartMeasuredTests
{
    private const string OfLot =
        "bench:\n  - date: 2026-02-21\n    readings:\n      - { lot: L-031, state: new, circuit: out, frequency: 120 Hz, capacitance: "
        + "478 µF }\n";
    private const string HasC1 =
        "the piece from lot L-031 that was fitted on 2026-03-14 was not measured itself: "
        + "what was read in the drawer counts for C1, which was fitted before it";

    private const string NextStep = "measure it and add the reading: { part: C1, lot: L-031, state: new, … }";

    [Fact]
    public void The_piece_that_was_read_before_it_went_in_was_measured() =>
        Board(Fit("C1"), "{ part: C1, lot: L-031, state: new, circuit: out, frequency: 120 Hz, capacitance: 466 µF }")
            .Met(
                "C1",
                "this piece was measured",
                "C1 new, read: 466 µF",
                "2026-03-14",
                "{ part: C1, lot: L-031, state: new, circuit: out, frequency: 120 Hz, capacitance: 466 µF }"
            );

    [Fact]
    public void The_piece_that_was_read_where_it_sits_was_measured() =>
        Board(Fit("C1"), "{ part: C1, state: as left, circuit: out, frequency: 120 Hz, capacitance: 466 µF }")
            .Met(
                "C1",
                "this piece was measured",
                "C1 read: 466 µF",
                "2026-03-14",
                "{ part: C1, state: as left, circuit: out, frequency: 120 Hz, capacitance: 466 µF }"
            );

    [Fact]
    public void A_reading_in_the_drawer_is_of_one_piece() =>
        Board(Fit("C1"), stock: OfLot)
            .Met(
                "C1",
                "this piece was measured",
                "L-031 new, read: 478 µF",
                "2026-02-21",
                "{ lot: L-031, state: new, circuit: out, frequency: 120 Hz, capacitance: 478 µF }",
                "stock.yaml"
            );

    [Fact]
    public void Three_fitted_and_one_read_leaves_two_unmeasured()
    {
        var board = Board(Fit("C1") + "      - " + Fit("C2") + "      - " + Fit("C3"), stock: OfLot);
        board.Met(
            "C1",
            "this piece was measured",
            "L-031 new, …",
            "2026-02-21",
            "{ lot: L-031, state: new, circuit: out, frequency: 120 Hz, capacitance: 478 µF }",
            "stock.yaml"
        );
        board.Open("C2", BoardState.ProofDue, HasC1, "measure it and add the reading: { part: C2, state: as left, circuit: out, … }");
        board.Open("C3", BoardState.ProofDue, HasC1, "measure it and add the reading: { part: C3, state: as left, circuit: out, … }");
    }

    [Fact]
    public void A_reading_of_the_lot_after_the_fitting_is_of_a_piece_that_lay_in_the_drawer() =>
        Assert.True(Board(Fit("C1"), stock: OfLot.Replace("2026-02-21", "2026-03-15", StringComparison.Ordinal)).IsOpen("C1"));

    [Fact]
    public void Where_one_piece_of_the_lot_was_bad_nothing_says_which_went_in() =>
        Assert.True(
            Board(Fit("C1"), stock: OfLot + "      - { lot: L-031, state: new, circuit: out, frequency: 120 Hz, capacitance: 12 µF }\n")
                .IsOpen("C1")
        );

    [Fact]
    public void An_ESR_alone_does_not_say_that_a_capacitor_is_what_its_mark_says() =>
        Board(Fit("C1"), "{ part: C1, lot: L-031, state: new, circuit: out, frequency: 120 Hz, esr: 0.1 Ω }")
            .Open("C1", BoardState.ProofDue, "the piece from lot L-031 was read, but not as a part of its kind is passed: …", NextStep);

    [Fact]
    public void A_pass_in_words_measures_no_capacitor() =>
        Assert.True(Board(Fit("C1"), "{ part: C1, lot: L-031, state: new, result: pass }").IsOpen("C1"));

    [Fact]
    public void A_part_from_no_lot_is_measured_like_any_other() =>
        Board(
                "{ part: C1, did: replaced, polarity: schematic, new_part: { kind: aluminium electrolytic, capacitance: 470 µF, "
                    + "rated_voltage: 35 V } }\n"
            )
            .Open(
                "C1",
                BoardState.ProofDue,
                "the new part that was fitted on 2026-03-14 was not measured itself",
                "measure it and add the reading: { part: C1, state: as left, circuit: out, … }"
            );

    [Fact]
    public void An_integrated_circuit_is_proved_by_the_board_that_works_with_it() =>
        Board("{ part: U1, did: replaced, lot: L-013 }\n    proof:\n      - { point: count, result: pass }\n")
            .Met("U1", "the board was proved with it", "count proved: pass", "2026-03-14", "{ point: count, result: pass }");

    [Theory]
    [InlineData("{ part: U1, did: replaced, lot: L-013 }\n")]
    [InlineData("{ part: U1, did: replaced, lot: L-013 }\n    proof:\n      - { point: count, result: fail }\n")]
    [InlineData(
        "{ at: J3, did: cleaned }\n    proof:\n      - { point: count, result: pass }\n  - date: 2026-03-15\n    work:\n      - { part: "
            + "U1, did: replaced, lot: L-013 }\n"
    )]
    public void A_board_that_was_not_proved_with_it_says_nothing_of_it(string work) => Assert.True(Board(work).IsOpen("U1"));

    [Fact]
    public void Nothing_proved_since_is_told_as_that() =>
        Board("{ part: U1, did: replaced, lot: L-013 }\n")
            .Open(
                "U1",
                BoardState.ProofDue,
                "fitted on 2026-03-14, and nothing was proved with it since",
                "prove the board, or test the part"
            );

    [Fact]
    public void An_original_owes_nothing_here() =>
        Board("{ part: C1, did: removed }\n      - { part: C1, did: put back, polarity: schematic }\n").AsksNothing("C1").AsksNothing("C2");

    private static string Fit(string at) => $"{{ part: {at}, did: replaced, lot: L-031, polarity: schematic }}\n";

    private static ObligedBoard Board(string work, string? reading = null, string stock = "") =>
        new(
            "fitted-part-measured",
            """
            parts:
              - { ref: C1, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: 20 %, rated_voltage: 25 V }
              - { ref: C2, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: 20 %, rated_voltage: 25 V }
              - { ref: C3, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: 20 %, rated_voltage: 25 V }
              - { ref: U1, kind: integrated circuit, type: TL-7404 }
            points:
              - { point: count, measures: result }
            bench:
              - date: 2026-03-14

            """
                + (reading is null ? string.Empty : $"    readings:\n      - {reading}\n")
                + "    work:\n      - "
                + work.TrimEnd(),
            """
            lots:
              - { lot: L-031, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: 20 %, rated_voltage: 35 V, received: 2026-01-28, quantity: 10 }
              - { lot: L-013, kind: integrated circuit, type: TL-7404, received: 2026-01-28, quantity: 5 }

            """ + stock.TrimEnd()
        );
}
