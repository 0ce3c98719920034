using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.Obligations;

/// <summary>A part that people rely on not to be hurt is replaced by its like, never mended. Common practice; defer to local codes and
/// licensed practice.</summary>
public sealed class SafetyPartWholeTests
{
    private const string NextStep = "replace it by its like; defer to local codes and licensed practice";

    [Theory]
    [InlineData("repaired")]
    [InlineData("modified")]
    [InlineData("adjusted")]
    public void A_fuse_that_was_mended_is_none(string did) =>
        Board($"{{ part: F1, did: {did}, with: a strand of wire }}")
            .Open("F1", BoardState.FaultStands, $"fuse, {did} on 2026-03-14: people rely on it not to be hurt", NextStep);

    [Fact]
    public void It_is_one_wherever_the_work_names_it() => Assert.True(Board("{ at: F1, did: repaired }").IsOpen("F1"));

    [Theory]
    [InlineData("C5")]
    [InlineData("R2")]
    public void So_are_a_suppressor_and_whatever_lies_across_the_mains(string at) =>
        Assert.True(Board($"{{ part: {at}, did: repaired }}").IsOpen(at));

    [Fact]
    public void A_new_one_answers_it() =>
        Board("{ part: F1, did: repaired }\n      - { part: F1, did: replaced, lot: L-007 }").AsksNothing("F1");

    [Fact]
    public void A_new_one_that_is_bridged_later_is_none_again() =>
        Assert.True(Board("{ part: F1, did: replaced, lot: L-007 }\n      - { part: F1, did: repaired }").IsOpen("F1"));

    [Theory]
    [InlineData("{ part: F1, did: cleaned }")]
    [InlineData("{ part: F1, did: re-soldered }")]
    [InlineData("{ part: F1, did: repaired }\n      - { part: F1, did: removed }")]
    public void Cleaning_its_holder_and_soldering_it_mend_nothing_of_the_part_and_an_empty_holder_holds_none(string work) =>
        Board(work).AsksNothing("F1");

    [Fact]
    public void A_resistor_elsewhere_may_be_repaired() => Board("{ part: R1, did: repaired }").AsksNothing("R1");

    private static ObligedBoard Board(string work) =>
        new(
            "safety-part-whole",
            """
            parts:
              - { ref: F1, kind: fuse, current: 250 mA, rated_voltage: 250 V }
              - { ref: C5, kind: suppression capacitor, capacitance: 100 nF, rated_voltage: 250 V, safety_class: X2 }
              - { ref: R2, kind: metal film resistor, role: mains suppression, resistance: 1 MΩ }
              - { ref: R1, kind: carbon composition resistor, resistance: 100 kΩ }
            bench:
              - date: 2026-03-14
                work:

            """
                + "      - "
                + work,
            "lots:\n  - { lot: L-007, kind: fuse, current: 250 mA, rated_voltage: 250 V, received: 2026-01-28, quantity: 10 }"
        );
}
