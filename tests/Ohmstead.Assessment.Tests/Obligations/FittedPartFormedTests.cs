using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.Obligations;

/// <summary>An electrolytic that lay longer than its shelf life is formed again. Where a lot does not say how long that is, three years are
/// usual: common practice.</summary>
public sealed class FittedPartFormedTests
{
    private const string Fitted = "{ part: C1, did: replaced, lot: L-1, polarity: schematic }";

    [Fact]
    public void A_fresh_lot_owes_no_forming() =>
        Board("received: 2026-01-28")
            .Met("C1", "when it was fitted, within its shelf life of 3 years, which is usual", "replaced", "2026-03-14", Fitted);

    [Theory]
    [InlineData("received: 2023-03-14", false)]
    [InlineData("received: 2023-03-13", true)]
    [InlineData("received: 2024-03-14, shelf_life: 24 months", false)]
    [InlineData("received: 2024-03-13, shelf_life: 24 months", true)]
    public void The_last_day_of_its_shelf_life_is_within_it_and_the_next_is_not(string lot, bool isOpen) =>
        Assert.Equal(isOpen, Board(lot).IsOpen("C1"));

    [Fact]
    public void A_lot_that_lay_too_long_is_formed_first() =>
        Board("received: 2019-05-02")
            .Open(
                "C1",
                BoardState.ProofDue,
                "lot L-1 had lain since 2019-05-02 (received 2019-05-02), longer than its shelf life of 3 years, which is usual, when "
                    + "it was fitted",
                "form it again as ohmstead why L-1 shows, let it rest, measure its leakage, and record both"
            );

    [Fact]
    public void A_lot_that_was_formed_in_the_drawer_counts_from_then() =>
        Assert.False(Board("received: 2019-05-02, formed: 2025-06-01").IsOpen("C1"));

    [Fact]
    public void Forming_the_lot_after_the_fitting_formed_other_pieces() =>
        Assert.True(Board("received: 2019-05-02, formed: 2026-03-15").IsOpen("C1"));

    [Fact]
    public void A_part_formed_in_its_place_and_read_since_is_well() =>
        Board(
                "received: 2019-05-02",
                "\n      - { part: C1, did: re-formed }\n  - date: 2026-03-15\n    readings:\n      - { part: C1, circuit: out, "
                    + "frequency: 120 Hz, capacitance: 466 µF }"
            )
            .Met(
                "C1",
                "formed again in its place and read since",
                "C1 read: 466 µF",
                "2026-03-15",
                "{ part: C1, circuit: out, frequency: 120 Hz, capacitance: 466 µF }"
            );

    [Theory]
    [InlineData("\n      - { part: C1, did: re-formed }")]
    [InlineData(
        "\n      - { part: C1, did: re-formed }\n  - date: 2026-03-15\n    readings:\n      - { part: C1, circuit: out, frequency: 120 "
            + "Hz, capacitance: 301 µF }"
    )]
    [InlineData(
        "\n  - date: 2026-03-15\n    readings:\n      - { part: C1, circuit: out, frequency: 120 Hz, capacitance: 466 µF }\n    work:\n "
            + "     - { part: C1, did: re-formed }"
    )]
    [InlineData(
        "\n      - { part: C2, did: re-formed }\n  - date: 2026-03-15\n    readings:\n      - { part: C1, circuit: out, frequency: 120 "
            + "Hz, capacitance: 466 µF }"
    )]
    public void Forming_that_nobody_read_afterwards_or_that_was_of_another_part_shows_nothing(string then) =>
        Assert.True(Board("received: 2019-05-02", then).IsOpen("C1"));

    // Made in the twelfth week of 1978, the latest that its code can mean; a part from no lot ages like any other.
    [Fact]
    public void A_part_from_no_lot_is_held_to_the_date_on_it()
    {
        NoLot("date_code: \"7812\"")
            .Open(
                "C1",
                BoardState.ProofDue,
                "the new part had lain since 1978-03-26 (made 1978-W12, date code 7812), longer than its shelf life of 3 years, which "
                    + "is usual, when it was fitted",
                "form it again slowly, let it rest, measure its leakage, and record both"
            );
        NoLot("date_code: \"2512\"")
            .Met(
                "C1",
                "when it was fitted, within its shelf life of 3 years, which is usual",
                "replaced",
                "2026-03-14",
                New.Replace("CODE", "date_code: \"2512\"", StringComparison.Ordinal)
            );
        NoLot("temperature: 105 °C").AsksNothing("C1");
    }

    [Theory]
    [InlineData("polyester film")]
    [InlineData("tantalum")]
    public void Film_and_solid_tantalum_do_not_age_so_on_the_shelf(string kind) =>
        Board("received: 2009-05-02", kind: kind).AsksNothing("C1");

    private const string New =
        "{ part: C1, did: replaced, polarity: schematic, new_part: { kind: aluminium electrolytic, capacitance: 470 µF, rated_voltage: "
        + "35 V, CODE } }";

    private static ObligedBoard NoLot(string code) =>
        new(
            "fitted-part-formed",
            $"parts:\n  - {{ ref: C1, kind: aluminium electrolytic, capacitance: 470 µF, rated_voltage: 25 V }}\nbench:\n  - date: "
                + $"2026-03-14\n    work:\n      - {New.Replace("CODE", code, StringComparison.Ordinal)}"
        );

    private static ObligedBoard Board(string lot, string then = "", string kind = "aluminium electrolytic") =>
        new(
            "fitted-part-formed",
            $"parts:\n  - {{ ref: C1, kind: {kind}, capacitance: 470 µF, tolerance: 20 %, rated_voltage: 25 V }}\n  - {{ ref: C2, kind: "
                + $"{kind}, capacitance: 470 µF, rated_voltage: 25 V }}\n"
                + $"bench:\n  - date: 2026-03-14\n    work:\n      - {Fitted}{then}",
            $"lots:\n  - {{ lot: L-1, kind: {kind}, capacitance: 470 µF, tolerance: 20 %, rated_voltage: 35 V, quantity: 5, {lot} }}"
        );
}
