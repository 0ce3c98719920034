using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.Obligations;

/// <summary>
/// The ripple current is held against its rating where both are known. A triangle of 1.2 V peak to peak at 100 Hz across 1000 µF: 1.2 V /
/// (2 sqrt 3) = 0.34641 V r.m.s. over 1 / (2 pi 100 Hz 1000 µF) = 1.59155 Ω is 0.217656 A.
/// </summary>
public sealed class RippleBorneTests
{
    [Fact]
    public void A_ripple_current_under_the_rating_is_borne() =>
        Board("300 mA")
            .Met(
                "C1",
                "ripple under the rated 300 mA",
                "ripple of 1.2 V read on 2026-03-14: …",
                null,
                "{ ref: C1, kind: aluminium electrolytic, capacitance: 1000 µF, rated_voltage: 25 V, ripple_current: 300 mA }"
            );

    [Fact]
    public void A_ripple_current_above_the_rating_is_a_fault() =>
        Board("150 mA")
            .Open(
                "C1",
                BoardState.FaultStands,
                "ripple of 1.2 V read on 2026-03-14: …",
                "fit a part of a higher ripple current, or find out why the ripple is so high"
            );

    [Theory]
    [InlineData("217.7 mA", false)]
    [InlineData("217.6 mA", true)]
    public void The_rating_just_above_the_current_bears_it_and_the_one_just_below_does_not(string rated, bool isOpen) =>
        Assert.Equal(isOpen, Board(rated).IsOpen("C1"));

    [Theory]
    [InlineData("ripple_current: 150 mA", "ripple: 1.2 V")]
    [InlineData("temperature: 85 °C", "frequency: 100 Hz, ripple: 1.2 V")]
    [InlineData("ripple_current: 150 mA", "frequency: 100 Hz, capacitance: 990 µF")]
    public void Where_the_frequency_the_rating_or_the_ripple_is_not_written_nothing_can_be_held(string rated, string reading) =>
        Board(rated, reading).AsksNothing("C1");

    [Fact]
    public void Another_part_in_its_place_has_not_been_read() =>
        new ObligedBoard(
            "ripple-borne",
            "parts:\n  - { ref: C1, kind: aluminium electrolytic, capacitance: 1000 µF, rated_voltage: 25 V, ripple_current: 150 mA "
                + "}\nbench:\n  - date: 2026-03-14\n    readings:\n      - { part: C1, frequency: 100 Hz, ripple: 1.2 V }\n"
                + "    work:\n      - { part: C1, did: replaced, lot: L-1, polarity: schematic }",
            "lots:\n  - { lot: L-1, kind: aluminium electrolytic, capacitance: 1000 µF, rated_voltage: 35 V, ripple_current: 150 mA, "
                + "received: 2026-01-28, quantity: 5 }"
        ).AsksNothing("C1");

    private static ObligedBoard Board(string rated) => Board("ripple_current: " + rated, "frequency: 100 Hz, ripple: 1.2 V");

    private static ObligedBoard Board(string rated, string reading) =>
        new(
            "ripple-borne",
            $"parts:\n  - {{ ref: C1, kind: aluminium electrolytic, capacitance: 1000 µF, rated_voltage: 25 V, {rated} }}\nbench:\n  - "
                + $"date: 2026-03-14\n    readings:\n      - {{ part: C1, {reading} }}"
        );
}
