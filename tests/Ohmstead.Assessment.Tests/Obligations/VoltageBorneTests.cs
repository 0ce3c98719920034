using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.Obligations;

/// <summary>An original above its rating is held back like a new part: that it has sat there for forty years is no rating.</summary>
public sealed class VoltageBorneTests
{
    [Fact]
    public void A_part_rated_for_its_working_voltage_bears_it() =>
        Original("working_voltage: 18 V")
            .Met(
                "C1",
                "rated for what works on it",
                "18 V on 25 V",
                null,
                "{ ref: C1, kind: aluminium electrolytic, capacitance: 1000 µF, rated_voltage: 25 V, working_voltage: 18 V }"
            );

    [Fact]
    public void A_part_above_its_rating_is_a_fault() =>
        Original("working_voltage: 31 V")
            .Open(
                "C1",
                BoardState.FaultStands,
                "a working voltage of 31 V at a part that is rated for 25 V",
                "fit a part rated for more than 31 V, or find out why the voltage is so high"
            );

    [Theory]
    [InlineData("25 V", false)]
    [InlineData("25.1 V", true)]
    [InlineData("-25 V", false)]
    [InlineData("-25.1 V", true)]
    public void A_working_voltage_equal_to_the_rating_is_borne_and_one_last_place_more_is_not(string volts, bool isOpen) =>
        Assert.Equal(isOpen, Original($"working_voltage: {volts}").IsOpen("C1"));

    [Theory]
    [InlineData("25 V", false)]
    [InlineData("25.1 V", true)]
    public void So_is_a_voltage_that_was_proved_across_the_reservoir(string volts, bool isOpen) =>
        Assert.Equal(isOpen, Proved(volts).IsOpen("C1"));

    [Fact]
    public void The_proof_across_the_reservoir_is_named() =>
        Proved("24.6 V")
            .Met(
                "C1",
                "rated for what works on it",
                "24.6 V proved at raw, rated for 25 V",
                "2026-03-14",
                "{ point: raw, voltage: 24.6 V }"
            )
            .AsksNothing("C2");

    [Fact]
    public void A_proof_above_the_rating_of_the_reservoir_is_a_fault_although_it_is_inside_the_limits_of_its_point() =>
        Proved("28 V")
            .Open(
                "C1",
                BoardState.FaultStands,
                "28 V proved at raw at a part that is rated for 25 V",
                "fit a part rated for more than 28 V, or find out why the voltage is so high"
            );

    [Fact]
    public void A_line_of_the_board_that_leaves_the_working_voltage_out_takes_none_away() =>
        Assert.True(
            new ObligedBoard(
                "voltage-borne",
                "design: tide-logger\nparts:\n  - { ref: C1, kind: aluminium electrolytic, capacitance: 1000 µF, rated_voltage: 16 V "
                    + "}\nbench:\n  - date: 2026-03-14",
                design: "parts:\n  - { ref: C1, kind: aluminium electrolytic, capacitance: 1000 µF, rated_voltage: 25 V, "
                    + "working_voltage: 18 V }"
            ).IsOpen("C1")
        );

    [Fact]
    public void What_the_design_says_stands_in_the_design() =>
        new ObligedBoard(
            "voltage-borne",
            "design: tide-logger\nbench:\n  - date: 2026-03-14",
            design: "parts:\n  - { ref: C1, kind: aluminium electrolytic, capacitance: 1000 µF, rated_voltage: 25 V, working_voltage: "
                + "18 V }"
        ).Met(
            "C1",
            "rated for what works on it",
            "18 V on 25 V",
            null,
            "{ ref: C1, kind: aluminium electrolytic, capacitance: 1000 µF, rated_voltage: 25 V, working_voltage: 18 V }",
            "designs/tide-logger.md"
        );

    [Theory]
    [InlineData("{ ref: C1, kind: regulator, rated_voltage: 5 V, working_voltage: 12 V }")]
    [InlineData("{ ref: C1, kind: aluminium electrolytic, capacitance: 1000 µF, rated_voltage: 25 V }")]
    [InlineData("{ ref: C1, kind: aluminium electrolytic, capacitance: 1000 µF, working_voltage: 18 V }")]
    public void A_part_that_gives_its_voltage_or_of_which_one_of_the_two_is_not_known_owes_nothing_here(string part) =>
        new ObligedBoard("voltage-borne", $"parts:\n  - {part}\nbench:\n  - date: 2026-03-14").AsksNothing("C1");

    [Fact]
    public void An_empty_place_bears_nothing() =>
        new ObligedBoard(
            "voltage-borne",
            "parts:\n  - { ref: C1, kind: aluminium electrolytic, capacitance: 1000 µF, rated_voltage: 25 V, working_voltage: 31 V "
                + "}\nbench:\n  - date: 2026-03-14\n    work:\n      - { part: C1, did: removed }"
        ).AsksNothing("C1");

    private static ObligedBoard Original(string working) =>
        new(
            "voltage-borne",
            $"parts:\n  - {{ ref: C1, kind: aluminium electrolytic, capacitance: 1000 µF, rated_voltage: 25 V, {working} }}\nbench:\n  "
                + "- date: 2026-03-14"
        );

    private static ObligedBoard Proved(string volts) =>
        new(
            "voltage-borne",
            "parts:\n  - { ref: C1, kind: aluminium electrolytic, capacitance: 1000 µF, rated_voltage: 25 V }\n  - { ref: C2, kind: "
                + "aluminium electrolytic, capacitance: 100 µF, rated_voltage: 6.3 V }\n"
                + $"points:\n  - {{ point: raw, low: 18 V, high: 30 V, reservoir: C1 }}\nbench:\n  - date: 2026-03-14\n    proof:\n     "
                + $" - {{ point: raw, voltage: {volts} }}"
        );
}
