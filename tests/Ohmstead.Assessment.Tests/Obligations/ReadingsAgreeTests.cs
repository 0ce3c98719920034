using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.Obligations;

/// <summary>One reading fails, the next of the same day passes, and nothing was done between: one of the two is wrong.</summary>
public sealed class ReadingsAgreeTests
{
    private const string Bad = "{ part: C12, circuit: out, frequency: 120 Hz, capacitance: 301 µF }";
    private const string Good = "{ part: C12, circuit: out, frequency: 120 Hz, capacitance: 461 µF }";
    private const string NextStep =
        "measure it a third time, or say in a note on one of the two what was wrong with it, or decide with a reason";

    [Fact]
    public void Two_that_contradict_each_other_leave_it_open() =>
        Board(Bad, Good)
            .Open(
                "C12",
                BoardState.ProofDue,
                "capacitance fails on line 11 and passes on line 12, with nothing done between: which of the two holds is not known",
                NextStep
            );

    [Fact]
    public void So_do_two_the_other_way_about() =>
        Board(Good, Bad)
            .Open(
                "C12",
                BoardState.ProofDue,
                "capacitance passes on line 11 and fails on line 12, with nothing done between: which of the two holds is not known",
                NextStep
            );

    [Fact]
    public void A_third_says_which_holds() =>
        Board(Bad, Good, "{ part: C12, circuit: out, frequency: 120 Hz, capacitance: 463 µF }")
            .Met(
                "C12",
                "capacitance fails on line 11 and passes on line 12, …",
                "read a third time",
                "2026-03-14",
                "{ part: C12, circuit: out, frequency: 120 Hz, capacitance: 463 µF }"
            );

    [Fact]
    public void A_note_says_what_was_wrong_with_one() =>
        Board(Bad.Replace(" }", ", note: the clip had slipped }", StringComparison.Ordinal), Good)
            .Met(
                "C12",
                "capacitance fails on line 11 and passes on line 12, …",
                "the clip had slipped",
                "2026-03-14",
                "{ part: C12, circuit: out, frequency: 120 Hz, capacitance: 301 µF, note: the clip had slipped }"
            );

    [Fact]
    public void A_decision_says_which_holds() =>
        Board(Bad, Good + "\n    decided:\n      - { part: C12, decision: keep, because: the first was read with a flat battery }")
            .Met(
                "C12",
                "capacitance fails on line 11 and passes on line 12, …",
                "decided: keep, because the first was read with a flat battery",
                "2026-03-14",
                "{ part: C12, decision: keep, because: the first was read with a flat battery }"
            );

    [Fact]
    public void A_third_that_sides_with_the_first_leaves_it_open() => Assert.True(Board(Bad, Good, Bad).IsOpen("C12"));

    [Theory]
    [InlineData("    decided:\n      - KEEP\n  - date: 2026-03-14\n")]
    [InlineData("  - date: 2026-03-14\n    decided:\n      - KEEP\n")]
    public void A_decision_before_the_second_did_not_know_it(string between) =>
        Assert.True(
            new ObligedBoard(
                "readings-agree",
                Parts
                    + "bench:\n  - date: 2026-03-14\n    readings:\n      - "
                    + $"{Bad}\n{between.Replace("KEEP", "{ part: C12, decision: keep, because: it is old }", StringComparison.Ordinal)} "
                    + $"   readings:\n      - {Good}"
            ).IsOpen("C12")
        );

    [Theory]
    [InlineData("    work:\n      - { part: C12, did: re-formed }\n  - date: 2026-03-14\n")]
    [InlineData("  - date: 2026-03-15\n")]
    public void Work_between_them_or_another_day_may_well_give_another_answer(string between) =>
        new ObligedBoard(
            "readings-agree",
            Parts + $"bench:\n  - date: 2026-03-14\n    readings:\n      - {Bad}\n{between}    readings:\n      - {Good}"
        ).AsksNothing("C12");

    [Fact]
    public void Leaving_it_alone_is_no_work_between_them() =>
        Assert.True(
            new ObligedBoard(
                "readings-agree",
                Parts
                    + $"bench:\n  - date: 2026-03-14\n    readings:\n      - {Bad}\n    work:\n      - {{ part: C12, did: left alone "
                    + $"}}\n  - date: 2026-03-14\n    readings:\n      - {Good}"
            ).IsOpen("C12")
        );

    [Fact]
    public void Two_proofs_of_a_point_contradict_each_other_as_well() =>
        new ObligedBoard(
            "readings-agree",
            Parts
                + "bench:\n  - date: 2026-03-14\n    proof:\n      - { point: +5V, voltage: 4.60 V }\n      - { point: +5V, voltage: "
                + "5.02 V }"
        ).Open(
            "+5V",
            BoardState.ProofDue,
            "voltage fails on line 11 and passes on line 12, with nothing done between: which of the two holds is not known",
            NextStep
        );

    [Theory]
    [InlineData("{ part: C12, circuit: out, frequency: 120 Hz, capacitance: 463 µF }")]
    [InlineData("{ part: C12, circuit: out, frequency: 120 Hz, esr: 90 Ω }")]
    public void Two_that_agree_and_two_of_different_quantities_contradict_nothing(string second) => Board(Good, second).AsksNothing("C12");

    private const string Parts = """
        parts:
          - { ref: C12, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: 20 %, rated_voltage: 25 V }
        points:
          - { point: +5V, nominal: 5 V, tolerance: 5 % }

        """;

    private static ObligedBoard Board(params string[] readings) =>
        new(
            "readings-agree",
            Parts + "bench:\n  - date: 2026-03-14\n    readings:\n" + string.Join('\n', readings.Select(reading => "      - " + reading))
        );
}
