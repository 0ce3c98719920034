using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.Obligations;

/// <summary>What was fitted is written, whether it came from the drawer or not.</summary>
public sealed class FittedPartKnownTests
{
    [Fact]
    public void A_part_from_a_lot_is_what_the_lot_says() =>
        Board("{ part: R1, did: replaced, lot: L-008 }")
            .Met("R1", "it is written what it is", "lot L-008", "2026-03-14", "{ part: R1, did: replaced, lot: L-008 }");

    [Fact]
    public void A_part_from_no_lot_is_what_the_entry_says() =>
        Board("{ part: R1, did: fitted, new_part: { kind: carbon film resistor, resistance: 100 kΩ, power: 0.5 W } }")
            .Met(
                "R1",
                "it is written what it is",
                "carbon film resistor 100 kΩ 500 mW",
                "2026-03-14",
                "{ part: R1, did: fitted, new_part: { kind: carbon film resistor, resistance: 100 kΩ, power: 0.5 W } }"
            );

    [Theory]
    [InlineData("replaced")]
    [InlineData("fitted")]
    public void A_part_that_the_record_does_not_name_is_not_known(string did) =>
        Board($"{{ part: R1, did: {did} }}")
            .Open(
                "R1",
                BoardState.ProofDue,
                $"{did} on 2026-03-14 with a part that the record does not name",
                "add lot: with its lot, or new_part: { kind: …, } with what is printed on it; 'put back' is for the piece that was "
                    + "taken out"
            );

    [Fact]
    public void A_part_that_was_fitted_before_its_lot_came_was_another() =>
        Board("{ part: R1, did: replaced, lot: L-009 }")
            .Open(
                "R1",
                BoardState.ProofDue,
                "fitted on 2026-03-14 from lot L-009, which came on 2026-03-15",
                "mend the lot, or one of the two dates"
            );

    [Fact]
    public void A_lot_that_came_on_the_very_day_came_in_time() =>
        Assert.False(Board("{ part: R1, did: replaced, lot: L-010 }").IsOpen("R1"));

    // A lot that came some time in March may have come on the first of it.
    [Fact]
    public void A_lot_of_that_month_may_have_come_in_time() => Assert.False(Board("{ part: R1, did: replaced, lot: L-011 }").IsOpen("R1"));

    [Theory]
    [InlineData("{ part: R1, did: removed }\n      - { part: R1, did: put back }")]
    [InlineData("{ part: R1, did: re-soldered }")]
    public void A_piece_that_was_put_back_or_never_left_is_the_original(string work) => Board(work).AsksNothing("R1");

    private static ObligedBoard Board(string work) =>
        new(
            "fitted-part-known",
            "parts:\n  - { ref: R1, kind: carbon composition resistor, resistance: 100 kΩ, tolerance: 10 %, power: 0.5 W }\nbench:\n  - "
                + "date: 2026-03-14\n    work:\n      - "
                + work,
            """
            lots:
              - { lot: L-008, kind: metal film resistor, resistance: 100 kΩ, tolerance: ±1 %, power: 0.6 W, rated_voltage: 350 V, received: 2026-01-28, quantity: 10 }
              - { lot: L-009, kind: metal film resistor, resistance: 100 kΩ, tolerance: ±1 %, power: 0.6 W, received: 2026-03-15, quantity: 10 }
              - { lot: L-010, kind: metal film resistor, resistance: 100 kΩ, tolerance: ±1 %, power: 0.6 W, received: 2026-03-14, quantity: 10 }
              - { lot: L-011, kind: metal film resistor, resistance: 100 kΩ, tolerance: ±1 %, power: 0.6 W, received: 2026-03, quantity: 10 }
            """
        );
}
