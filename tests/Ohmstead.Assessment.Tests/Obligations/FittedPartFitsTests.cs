using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.Obligations;

/// <summary>What was fitted fits its place; how it was made to fit is written where that was in doubt.</summary>
public sealed class FittedPartFitsTests
{
    private const string Larger =
        "kind: aluminium electrolytic, capacitance: 470 µF, tolerance: 20 %, rated_voltage: 35 V, temperature: 105 °C";

    [Fact]
    public void A_part_of_the_same_value_and_a_higher_rating_fits() =>
        Board("C12", Larger, "2026-03-14")
            .Met("C12", "it fits its place", "replaced", "2026-03-14", "{ part: C12, did: replaced, lot: L-1, polarity: schematic }");

    [Theory]
    [InlineData("25 V", false)]
    [InlineData("24.9 V", true)]
    public void A_rating_equal_to_the_mark_fits_and_one_below_it_does_not(string rated, bool isOpen) =>
        Assert.Equal(isOpen, Board("C12", Larger.Replace("35 V", rated, StringComparison.Ordinal), "2026-03-14").IsOpen("C12"));

    [Fact]
    public void A_lower_rating_is_a_fault() =>
        Board("C12", Larger.Replace("35 V", "16 V", StringComparison.Ordinal), "2026-03-14")
            .Open(
                "C12",
                BoardState.FaultStands,
                "from lot L-1: voltage: …",
                "take another part: ohmstead fit SP-0001 C12; defer to local codes and licensed practice"
            );

    [Fact]
    public void Words_do_not_raise_a_rating() =>
        Assert.True(
            Board("C12", Larger.Replace("35 V", "16 V", StringComparison.Ordinal), "2026-03-14", ", note: it will do").IsOpen("C12")
        );

    [Fact]
    public void Another_value_is_a_fault() =>
        Board("C12", Larger.Replace("470", "100", StringComparison.Ordinal), "2026-03-14")
            .Open(
                "C12",
                BoardState.FaultStands,
                "from lot L-1: value: …",
                "take another part: ohmstead fit SP-0001 C12, or write a decision to keep it, with the reason"
            );

    // IEC 60384-14: an X capacitor may not stand between line and chassis.
    [Theory]
    [InlineData("suppression capacitor, safety_class: X2")]
    [InlineData("polyester film")]
    public void Nothing_but_a_Y_capacitor_fits_in_the_place_of_one(string kind) =>
        Board("C6", $"kind: {kind}, capacitance: 2.2 nF, tolerance: 20 %, rated_voltage: 300 V, temperature: 110 °C", "2026-03-14")
            .Open(
                "C6",
                BoardState.FaultStands,
                "from lot L-1: …",
                "take another part: ohmstead fit SP-0001 C6; defer to local codes and licensed practice"
            );

    [Fact]
    public void A_rating_that_is_not_written_is_a_doubt() =>
        Board("C12", Larger.Replace(", rated_voltage: 35 V", string.Empty, StringComparison.Ordinal), "2026-03-14")
            .Open(
                "C12",
                BoardState.ProofDue,
                "from lot L-1: voltage: …",
                "look at it, and write a note on that work saying how it was made to fit, or take another part"
            );

    [Fact]
    public void A_part_from_no_lot_is_held_to_the_same() =>
        new ObligedBoard(
            "fits-its-place",
            Parts
                + "bench:\n  - date: 2026-03-14\n    work:\n      - { part: C12, did: replaced, polarity: schematic, new_part: { kind: "
                + "aluminium electrolytic, capacitance: 470 µF, rated_voltage: 16 V } }"
        ).Open(
            "C12",
            BoardState.FaultStands,
            "with a part from no lot: voltage: …",
            "take another part: ohmstead fit SP-0001 C12; defer to local codes and licensed practice"
        );

    [Fact]
    public void What_was_taken_out_again_need_not_fit() =>
        new ObligedBoard(
            "fits-its-place",
            Parts
                + "bench:\n  - date: 2026-03-14\n    work:\n      - { part: C12, did: replaced, lot: L-1, polarity: schematic }\n      "
                + "- { part: C12, did: removed }",
            "lots:\n  - { lot: L-1, kind: aluminium electrolytic, capacitance: 470 µF, rated_voltage: 16 V, received: 2026-01-28, "
                + "quantity: 10 }"
        ).AsksNothing("C12");

    private const string Parts = """
        parts:
          - { ref: C12, kind: aluminium electrolytic, role: decoupling, capacitance: 470 µF, tolerance: 20 %, rated_voltage: 25 V, temperature: 85 °C }
          - { ref: C6, kind: suppression capacitor, role: mains suppression, capacitance: 2.2 nF, tolerance: 20 %, rated_voltage: 250 V, safety_class: Y2 }

        """;

    private static ObligedBoard Board(string at, string lot, string day, string note = "") =>
        new(
            "fits-its-place",
            $"{Parts}bench:\n  - date: {day}\n    work:\n      - {{ part: {at}, did: replaced, lot: L-1, polarity: schematic{note} }}",
            $"lots:\n  - {{ lot: L-1, {lot}, received: 2026-01-28, quantity: 10 }}"
        );
}
