using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.Obligations;

/// <summary>A failed reading of what sits there is answered by another part, a later reading, or somebody who knew it.</summary>
public sealed class ReadingAnsweredTests
{
    private const string Failed =
        "  - date: 2026-03-14\n    readings:\n      - { part: C12, circuit: out, frequency: 120 Hz, capacitance: 301 µF }\n";
    private const string Keep = "    decided:\n      - { part: C12, decision: keep, because: the timing is right }\n";
    private const string NextStep = "replace it, measure it again, or decide with a reason";

    // 470 µF less 20 % is 376 µF.
    [Fact]
    public void A_failed_reading_is_a_fault() =>
        Board(Failed).Open("C12", BoardState.FaultStands, "capacitance 301 µF against …", NextStep);

    [Theory]
    [InlineData("376 µF", false)]
    [InlineData("375.9 µF", true)]
    [InlineData("564 µF", false)]
    [InlineData("564.1 µF", true)]
    public void A_value_on_the_limit_is_inside_and_one_last_place_beyond_it_fails(string read, bool isOpen) =>
        Assert.Equal(isOpen, Board(Failed.Replace("301 µF", read, StringComparison.Ordinal)).IsOpen("C12"));

    [Fact]
    public void A_reading_inside_meets_it() =>
        Board(Failed.Replace("301", "461", StringComparison.Ordinal))
            .Met(
                "C12",
                "nothing that was read of it is outside",
                "capacitance 461 µF against …",
                "2026-03-14",
                "{ part: C12, circuit: out, frequency: 120 Hz, capacitance: 461 µF }"
            );

    [Fact]
    public void Somebody_who_knew_the_reading_may_keep_the_part() =>
        Board(Failed + Keep)
            .Met(
                "C12",
                "capacitance 301 µF against …",
                "decided: keep, because the timing is right",
                "2026-03-14",
                "{ part: C12, decision: keep, because: the timing is right }"
            );

    [Fact]
    public void A_decision_of_March_does_not_answer_a_reading_of_October()
    {
        var board = Board(
            "  - date: 2026-03-14\n"
                + Keep
                + Failed.Replace("2026-03-14", "2026-10-02", StringComparison.Ordinal).Replace("301 µF", "47 µF", StringComparison.Ordinal)
        );
        board.Open("C12", BoardState.FaultStands, "capacitance 47 µF against …", NextStep);
        Assert.EndsWith(
            ", which it does not answer",
            Assert.Single(board.Board.Reasons, reason => reason.At == "C12" && reason.State == BoardState.FaultStands).Text,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_part_that_people_rely_on_not_to_be_hurt_is_kept_by_nobody()
    {
        var board = Suppressor(
            "    readings:\n      - { part: C5, circuit: out, frequency: 1 kHz, capacitance: 71 nF }\n    decided:\n      - { part: C5, "
                + "decision: keep, because: it looks well }"
        );
        board.Open("C5", BoardState.FaultStands, "capacitance 71 nF against …", "replace it; defer to local codes and licensed practice");
        Assert.EndsWith(
            "a decision cannot keep a part that people rely on not to be hurt",
            Assert.Single(board.Board.Reasons, reason => reason.State == BoardState.FaultStands).Text,
            StringComparison.Ordinal
        );
    }

    // What failed once is no pass by being read again, where somebody's life hangs on it.
    [Fact]
    public void A_suppressor_that_failed_once_is_not_read_well_again() =>
        Assert.True(
            Suppressor(
                    "    readings:\n      - { part: C5, circuit: out, frequency: 1 kHz, capacitance: 71 nF }\n  - date: 2026-03-15\n    "
                        + "readings:\n      - { part: C5, circuit: out, frequency: 1 kHz, capacitance: 98 nF }"
                )
                .IsOpen("C5")
        );

    [Fact]
    public void A_failed_test_says_so() =>
        Board("  - date: 2026-03-14\n    readings:\n      - { part: C12, result: fail }\n")
            .Open("C12", BoardState.FaultStands, "its test failed", NextStep);

    [Fact]
    public void A_later_reading_inside_answers_it() =>
        Board(Failed + "  - date: 2026-03-15\n    readings:\n      - { part: C12, circuit: out, frequency: 120 Hz, capacitance: 461 µF }\n")
            .Met(
                "C12",
                "nothing that was read of it is outside",
                "capacitance 461 µF against …",
                "2026-03-15",
                "{ part: C12, circuit: out, frequency: 120 Hz, capacitance: 461 µF }"
            );

    [Fact]
    public void A_part_that_nobody_read_owes_nothing_here() =>
        Board("  - date: 2026-03-14\n    found:\n      - { at: J3, what: dust, severity: note }\n").AsksNothing("C12");

    private static ObligedBoard Board(string visits) =>
        new(
            "reading-answered",
            "parts:\n  - { ref: C12, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: 20 %, rated_voltage: 25 V }\nbench:\n"
                + visits.TrimEnd()
        );

    private static ObligedBoard Suppressor(string visit) =>
        new(
            "reading-answered",
            "parts:\n  - { ref: C5, kind: suppression capacitor, role: mains suppression, capacitance: 100 nF, tolerance: 20 %, "
                + "rated_voltage: 250 V, safety_class: X2 }\nbench:\n  - date: 2026-03-14\n"
                + visit
        );
}
