using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.Obligations;

/// <summary>What must go before a board may run. Common practice; defer to local codes and licensed practice.</summary>
public sealed class HazardGoneTests
{
    [Fact]
    public void A_leaking_cell_that_was_taken_out_is_gone() =>
        Board("leaking cell, at: BT1", "work", "{ part: BT1, did: removed }")
            .Met("BT1", "leaking cell made safe", "removed", "2026-03-14", "{ part: BT1, did: removed }");

    [Fact]
    public void A_crazed_suppressor_that_was_cleaned_is_still_there() =>
        Board("crazed suppressor, at: C5", "work", "{ part: C5, did: cleaned }")
            .Open("C5", BoardState.MakeSafe, "crazed suppressor not made safe", "remove it, and record the work");

    [Fact]
    public void Leaked_electrolyte_that_nobody_washed_off_is_still_there() =>
        Board("leaked electrolyte, at: C1", "work", "{ part: C1, did: removed }")
            .Open("C1", BoardState.MakeSafe, "leaked electrolyte not made safe", "wash it off, let it dry, and record the work");

    [Fact]
    public void A_wash_of_the_board_takes_the_electrolyte_off() =>
        Board("leaked electrolyte, at: C1", "work", "{ did: washed, with: deionised water, dry: 72 h }")
            .Met(
                "C1",
                "leaked electrolyte made safe",
                "washed, with deionised water",
                "2026-03-14",
                "{ did: washed, with: deionised water, dry: 72 h }"
            );

    // C6 stands in the list of parts, C5 does not: a suppressor that nobody listed can be put back as well.
    [Theory]
    [InlineData("at: C5", "C5")]
    [InlineData("part: C6", "C6")]
    public void A_part_that_was_put_back_took_its_hazard_back_with_it(string where, string at) =>
        Board($"crazed suppressor, at: {at}", "work", $"{{ {where}, did: removed }}\n      - {{ {where}, did: put back }}")
            .Open(at, BoardState.MakeSafe, "crazed suppressor not made safe", "remove it, and record the work");

    // Three nickel cells of 1.2 V: 3.6 V is their nominal voltage.
    [Fact]
    public void A_pack_that_reads_well_may_be_kept_by_somebody_who_knew_the_reading() =>
        Pack("3.75 V", Read + Kept)
            .Met(
                "G1",
                "cell pack read and kept",
                "decided: keep, because it holds its charge",
                "2026-03-14",
                "{ part: G1, decision: keep, because: it holds its charge }"
            );

    [Theory]
    [InlineData("3.75 V", Kept)]
    [InlineData("3.75 V", Read)]
    [InlineData("1.10 V", Read + Kept)]
    public void A_pack_stays_a_hazard_that_nobody_read_or_nobody_decided_on_or_that_reads_spent(string volts, string visit) =>
        Pack(volts, visit).Open("G1", BoardState.MakeSafe, "cell pack not made safe", "remove it, and record the work");

    [Fact]
    public void Mains_stay_and_are_cautioned_against() =>
        Board("mains, at: T1", "found", "{ at: J3, what: dust, severity: note }")
            .DoesNotApply("T1", "mains: it stays and is cautioned against");

    private const string Read = "    readings:\n      - { part: G1, circuit: out, voltage: VOLTS }\n";
    private const string Kept = "    decided:\n      - { part: G1, decision: keep, because: it holds its charge }\n";

    private static ObligedBoard Board(string hazard, string list, string entry) =>
        new(
            "hazard-gone",
            $"parts:\n  - {{ ref: C6, kind: suppression capacitor, capacitance: 2.2 nF, safety_class: Y2 }}\nhazards:\n  - {{ hazard: "
                + $"{hazard} }}\nbench:\n  - date: 2026-03-14\n    {list}:\n      - {entry}"
        );

    private static ObligedBoard Pack(string volts, string visit) =>
        new(
            "hazard-gone",
            "hazards:\n  - { hazard: cell pack, at: G1 }\nparts:\n  - { ref: G1, kind: cell, material: nickel-metal hydride, cells: 3 "
                + "}\nbench:\n  - date: 2026-03-14\n"
                + visit.Replace("VOLTS", volts, StringComparison.Ordinal).TrimEnd()
        );
}
