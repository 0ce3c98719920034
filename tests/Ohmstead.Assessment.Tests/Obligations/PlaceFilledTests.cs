using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.Obligations;

public sealed class PlaceFilledTests
{
    [Fact]
    public void A_place_from_which_a_part_was_taken_is_empty() =>
        Board("{ part: C12, did: removed }").Open("C12", BoardState.FaultStands, "the place is empty", "fit a part that was measured");

    [Fact]
    public void A_part_that_went_in_fills_it() =>
        Board("{ part: C12, did: removed }\n      - { part: C12, did: fitted, lot: L-031, polarity: schematic }")
            .Met("C12", "a part sits there", "fitted", "2026-03-14", "{ part: C12, did: fitted, lot: L-031, polarity: schematic }");

    [Fact]
    public void The_piece_that_was_taken_out_fills_it_when_it_is_put_back() =>
        Board("{ part: C12, did: removed }\n      - { part: C12, did: put back, polarity: photograph before removal }")
            .Met("C12", "a part sits there", "put back", "2026-03-14", "{ part: C12, did: put back, polarity: photograph before removal }");

    [Fact]
    public void A_new_part_that_was_taken_out_again_leaves_it_empty() =>
        Assert.True(
            Board("{ part: C12, did: replaced, lot: L-031, polarity: schematic }\n      - { part: C12, did: removed }").IsOpen("C12")
        );

    [Fact]
    public void A_part_named_as_a_place_is_that_part() => Assert.True(Board("{ at: C12, did: removed }").IsOpen("C12"));

    [Fact]
    public void An_original_that_never_left_owes_nothing_here() => Board("{ part: C13, did: removed }").AsksNothing("C12");

    private static ObligedBoard Board(string work) =>
        new(
            "place-filled",
            "parts:\n  - { ref: C12, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: 20 %, rated_voltage: 25 V }\n  - { "
                + "ref: C13, kind: mica, capacitance: 100 pF }\n"
                + $"bench:\n  - date: 2026-03-14\n    work:\n      - {work}",
            "lots:\n  - { lot: L-031, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: 20 %, rated_voltage: 25 V, "
                + "received: 2026-01-28, quantity: 10 }"
        );
}
