using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.Obligations;

/// <summary>A failed reading at a test point stands until the point is read or proved again: work alone shows nothing.</summary>
public sealed class PointReadingAnsweredTests
{
    private const string Failed = "  - date: 2026-03-14\n    readings:\n      - { point: +5V, voltage: 4.60 V }\n";
    private const string NextStep = "find the fault, mend it, and measure it again there";

    // 5 V less 5 % is 4.75 V.
    [Fact]
    public void A_failed_reading_at_a_point_is_a_fault() =>
        Board(Failed).Open("+5V", BoardState.FaultStands, "voltage 4.60 V against …", NextStep);

    [Theory]
    [InlineData("4.75 V", false)]
    [InlineData("4.74 V", true)]
    [InlineData("5.25 V", false)]
    [InlineData("5.26 V", true)]
    public void A_value_on_the_limit_passes_and_one_last_place_beyond_it_fails(string volts, bool isOpen) =>
        Assert.Equal(isOpen, Board(Failed.Replace("4.60 V", volts, StringComparison.Ordinal)).IsOpen("+5V"));

    [Fact]
    public void Work_alone_does_not_answer_it() =>
        Board(Failed + "    work:\n      - { at: +5V, did: repaired }\n")
            .Open("+5V", BoardState.FaultStands, "voltage 4.60 V against …", NextStep);

    [Theory]
    [InlineData("readings:\n      - { point: +5V, voltage: 5.02 V }")]
    [InlineData("proof:\n      - { point: +5V, voltage: 5.02 V }")]
    public void A_later_reading_or_proof_inside_answers_it(string later) =>
        Board(Failed + "  - date: 2026-03-15\n    " + later).AsksNothing("+5V");

    [Theory]
    [InlineData("proof:\n      - { point: +5V, result: pass }")]
    [InlineData("proof:\n      - { point: +5V, ripple: 10 mV }")]
    [InlineData("readings:\n      - { point: lamp, result: pass }")]
    public void A_word_another_quantity_or_another_point_does_not(string later) =>
        Assert.True(Board(Failed + "  - date: 2026-03-15\n    " + later).IsOpen("+5V"));

    [Fact]
    public void A_failed_test_is_answered_by_a_passed_one()
    {
        const string Test = "  - date: 2026-03-14\n    readings:\n      - { point: lamp, result: fail }\n";
        Board(Test).Open("lamp", BoardState.FaultStands, "its test failed", NextStep);
        Board(Test + "  - date: 2026-03-15\n    readings:\n      - { point: lamp, result: pass }").AsksNothing("lamp");
    }

    private static ObligedBoard Board(string visits) =>
        new(
            "point-reading-answered",
            "points:\n  - { point: +5V, nominal: 5 V, tolerance: 5 %, ripple_limit: 50 mV }\n  - { point: lamp, measures: result "
                + "}\nbench:\n"
                + visits.TrimEnd()
        );
}
