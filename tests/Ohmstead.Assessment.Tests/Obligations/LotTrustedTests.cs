using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.Obligations;

/// <summary>A lot of which piece after piece is bad is no lot to fit from; one bad piece that went to the bin condemns nothing. Common
/// practice.</summary>
public sealed class LotTrustedTests
{
    private const string Doubt = "3 of 3 looked at were bad: from 2 pieces and 20 % on a lot is doubted as a whole (common practice)";

    [Fact]
    public void A_piece_of_a_lot_that_is_doubted_is_not_trusted_for_reading_well() =>
        Board(3, string.Empty)
            .Open(
                "C1",
                BoardState.ProofDue,
                "lot L-1: " + Doubt,
                "fit a piece of another lot, or say in a note on that work why this one may be trusted"
            );

    [Fact]
    public void A_note_says_why_this_one_may_be() =>
        Board(3, ", note: run in for a week")
            .Met(
                "C1",
                "lot L-1: " + Doubt,
                "run in for a week",
                "2026-03-14",
                "{ part: C1, did: replaced, lot: L-1, polarity: schematic, note: run in for a week }"
            );

    [Fact]
    public void One_bad_piece_in_the_bin_condemns_no_lot() => Board(1, string.Empty).AsksNothing("C1");

    private static ObligedBoard Board(int scrapped, string note) =>
        new(
            "lot-trusted",
            $$"""
            parts:
              - { ref: C1, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: ±20 %, rated_voltage: 25 V }
            bench:
              - date: 2026-03-14
                readings:
                  - { part: C1, lot: L-1, state: new, circuit: out, frequency: 120 Hz, capacitance: 466 µF }
                work:
                  - { part: C1, did: replaced, lot: L-1, polarity: schematic{{note}} }
            """,
            $$"""
            lots:
              - { lot: L-1, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: ±20 %, rated_voltage: 35 V, received: 2026-01-28, quantity: 10 }
            bench:
              - date: 2026-02-02
                scrapped:
                  - { lot: L-1, count: {{scrapped}}, because: reads two thirds of its mark }
            """
        );
}
