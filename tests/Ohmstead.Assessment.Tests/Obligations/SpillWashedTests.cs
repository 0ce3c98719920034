using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.Obligations;

/// <summary>A cell that was taken away leaves its crust, which goes on eating copper: it is washed or wiped off. Common practice.</summary>
public sealed class SpillWashedTests
{
    private const string Gone = "{ part: BT1, did: removed }";
    private const string Crust = "leaked, crust as far as U3";

    [Fact]
    public void A_wash_of_the_board_takes_off_what_ran_out() =>
        Board(Crust, Gone, "{ did: washed, with: deionised water }")
            .Met(
                "BT1",
                "leaked, crust as far as U3: what ran out was taken off",
                "washed, with deionised water",
                "2026-03-14",
                "{ did: washed, with: deionised water }"
            );

    [Fact]
    public void What_only_went_with_its_cell_left_its_crust_behind() =>
        Board(Crust, Gone)
            .Open(
                "BT1",
                BoardState.FaultStands,
                "leaked, crust as far as U3; nobody wrote that what ran out was washed or cleaned off",
                "wash it off with gloves on, let it dry, and record the work"
            );

    // Where it is wiped counts, and so does whether anything ran out at all.
    [Theory]
    [InlineData("BT1", Crust, "{ part: BT1, did: cleaned, with: vinegar }", false)]
    [InlineData("BT1", Crust, "{ at: board, did: washed, with: water }", false)]
    [InlineData("BT1", Crust, "{ at: U3, clears: BT1, did: cleaned, with: vinegar }", false)]
    [InlineData("BT1", Crust, "{ at: J1, did: cleaned, with: vinegar }", true)]
    [InlineData("BT1", Crust, "{ at: J1, did: washed, with: water }", true)]
    [InlineData("BT1", Crust, "{ did: cleaned, with: vinegar }", true)]
    [InlineData("BT1", Crust, "{ did: cleaned, clears: BT1, with: vinegar }", false)]
    [InlineData("BT1", Crust, "{ at: board, did: cleaned, with: vinegar }", false)]
    [InlineData("BT1", Crust, "{ part: J1, did: re-soldered }", true)]
    [InlineData("U3", "crust of the cell on its legs", "{ part: U3, did: cleaned, with: vinegar }", false)]
    [InlineData("C1", "electrolyte under the can", "{ part: J1, did: re-soldered }", true)]
    [InlineData("C1", "electrolyte under the can", "{ part: C1, did: cleaned, with: alcohol }", false)]
    [InlineData("C1", "has leaked onto the board", "{ part: J1, did: re-soldered }", true)]
    [InlineData("C1", "has not leaked onto anything, domed", "{ part: J1, did: re-soldered }", false)]
    [InlineData("C1", "leaking at its foot", "{ part: J1, did: re-soldered }", false)]
    [InlineData("BT1", "first crust on the tag, board clean", "{ part: J1, did: re-soldered }", false)]
    [InlineData("R1", "cracked across the middle", "{ part: J1, did: re-soldered }", false)]
    public void What_ran_out_is_wiped_off_where_it_is(string at, string what, string work, bool isOpen) =>
        Assert.Equal(isOpen, Board(what, $"{{ part: {at}, did: removed }}", work, at).IsOpen(at));

    [Fact]
    public void A_wash_before_it_was_seen_washed_nothing_off() =>
        Assert.True(Rule("  - date: 2026-03-01\n    work:\n      - { did: washed, with: water }\n", Crust, [Gone]).IsOpen("BT1"));

    // A reason answers the finding, and takes nothing off.
    [Fact]
    public void Crust_at_the_next_part_is_not_talked_away() =>
        Assert.True(
            new ObligedBoard(
                "spill-washed",
                """
                parts:
                  - { ref: U3, kind: integrated circuit }
                bench:
                  - date: 2026-03-14
                    found:
                      - { at: U3, what: crust of the cell on its legs, severity: note }
                    work:
                      - { did: cleaned, with: vinegar }
                    decided:
                      - { at: U3, decision: leave alone, because: it is only dust }
                """
            ).IsOpen("U3")
        );

    private static ObligedBoard Board(string what, string work, string? other = null, string at = "BT1") =>
        Rule(string.Empty, what, other is null ? [work] : [work, other], at);

    private static ObligedBoard Rule(string before, string what, string[] work, string at = "BT1") =>
        new(
            "spill-washed",
            $"""
            parts:
              - {"{ ref: BT1, kind: cell, material: nickel-cadmium }"}
              - {"{ ref: C1, kind: aluminium electrolytic, capacitance: 100 µF }"}
              - {"{ ref: R1, kind: metal film resistor, resistance: 1 kΩ }"}
              - {"{ ref: U3, kind: integrated circuit }"}
              - {"{ ref: J1, kind: connector }"}
            bench:
            {before}  - date: 2026-03-14
                found:
                  - {"{"} at: {at}, what: "{what}", severity: major {"}"}
                work:
            {string.Concat(work.Select(entry => $"      - {entry}\n"))}
            """
        );
}
