using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Tests.Support;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Tests.Boards;

/// <summary>What was read at a test point on the way, without proving the board.</summary>
public sealed class PointReadingTests
{
    private const string Points = """
        points:
          - { point: +5V, nominal: 5 V, tolerance: 5 %, ripple_limit: 20 mV }
          - { point: CLK, measures: frequency, nominal: 1 MHz, tolerance: 100 ppm, required: no }
          - { point: TP3, low: 1.1 V, high: 1.3 V, required: no }
          - { point: lamp, measures: result, required: no }
        bench:

        """;

    private const string Proved = """

          - date: 2026-03-20
            proof:
              - { point: +5V, voltage: 5.02 V, ripple: 8 mV }
        """;

    [Theory]
    [InlineData("point: +5V, voltage: 4.75 V", VerdictOutcome.Inside)]
    [InlineData("point: +5V, voltage: 4.74 V", VerdictOutcome.Outside)]
    [InlineData("point: +5V, voltage: 4.76 V, instrument: meter-1", VerdictOutcome.Undecided)]
    [InlineData("point: +5V, ripple: 21 mV", VerdictOutcome.Outside)]
    [InlineData("point: CLK, frequency: 1.0001 MHz", VerdictOutcome.Inside)]
    [InlineData("point: CLK, frequency: 1.0002 MHz", VerdictOutcome.Outside)]
    [InlineData("point: TP3, voltage: 1.31 V", VerdictOutcome.Outside)]
    [InlineData("point: +5V, resistance: 120 Ω", VerdictOutcome.NoLimit)]
    [InlineData("point: elsewhere, voltage: 5 V", VerdictOutcome.NoLimit)]
    public void A_reading_at_a_point_is_held_against_the_limits_of_the_point(string reading, VerdictOutcome outcome) =>
        Assert.Equal(outcome, Assert.Single(Visits(First(reading)).Readings).Overall);

    [Fact]
    public void A_reading_of_a_part_is_judged_as_the_parts_wherever_the_probe_was_held()
    {
        var board = Worked.Board(
            "parts:\n  - { ref: C4, kind: ceramic class 2, capacitance: 100 nF, tolerance: 20 % }\n"
                + Points
                + First("part: C4, point: +5V, circuit: out, capacitance: 99 nF")
        );
        Assert.Equal(Measured.Capacitance, Assert.Single(Assert.Single(board.Readings).Verdicts).Measured);
        Assert.Null(board.Readings[0].Point);
    }

    [Fact]
    public void A_failed_reading_at_a_point_is_a_fault()
    {
        var reason = Visits(First("point: +5V, voltage: 4.10 V")).Reasons[0];
        Assert.Equal((BoardState.FaultStands, "+5V"), (reason.State, reason.At));
        Assert.StartsWith("voltage 4.10 V against 4.75 V … 5.25 V", reason.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_later_proof_answers_it() =>
        Assert.Equal(BoardState.FitToRun, Visits(First("point: +5V, voltage: 4.10 V") + Proved).State);

    [Fact]
    public void A_later_reading_answers_it() =>
        Assert.Equal(
            BoardState.FitToRun,
            Visits(First("point: TP3, voltage: 1.50 V") + Later("readings", "point: TP3, state: again, voltage: 1.20 V") + Proved).State
        );

    [Fact]
    public void Work_alone_does_not_answer_it()
    {
        var board = Visits(First("point: TP3, voltage: 1.50 V") + Later("work", "at: J3, did: re-soldered") + Proved);
        Assert.Equal((BoardState.FaultStands, "TP3"), (Assert.Single(board.Reasons).State, board.Reasons[0].At));
    }

    [Fact]
    public void A_voltage_does_not_answer_a_ripple() =>
        Assert.Equal(
            BoardState.FaultStands,
            Visits(First("point: +5V, ripple: 90 mV") + "\n  - date: 2026-03-20\n    proof:\n      - { point: +5V, voltage: 5.02 V }").State
        );

    [Fact]
    public void A_reading_that_fails_after_the_proof_undoes_it() =>
        Assert.Equal(
            BoardState.FaultStands,
            Visits(
                First("point: +5V, voltage: 5.01 V")
                    + Proved
                    + "\n  - date: 2026-04-02\n    readings:\n      - { point: +5V, voltage: 4.10 V }"
            ).State
        );

    [Fact]
    public void A_good_reading_is_no_proof() => Assert.Equal(BoardState.ProofDue, Visits(First("point: +5V, voltage: 5.01 V")).State);

    [Fact]
    public void A_test_that_failed_at_a_point_stands_until_it_is_passed()
    {
        var failed = Visits(First("point: lamp, result: fail") + Proved);
        Assert.Equal((BoardState.FaultStands, "its test failed"), (Assert.Single(failed.Reasons).State, failed.Reasons[0].Text));
        Assert.Equal(
            BoardState.FitToRun,
            Visits(First("point: lamp, result: fail") + Later("readings", "point: lamp, result: pass") + Proved).State
        );
    }

    [Fact]
    public void A_proof_that_fails_too_is_told_once() =>
        Assert.Single(
            Visits(First("point: +5V, voltage: 4.10 V") + "\n    proof:\n      - { point: +5V, voltage: 4.20 V }").Reasons,
            reason => reason.At == "+5V"
        );

    private static JudgedBoard Visits(string visits) => Worked.Board(Points + visits);

    private static string First(string reading) => $"  - date: 2026-03-14\n    readings:\n      - {{ {reading} }}";

    private static string Later(string list, string entry) => $"\n  - date: 2026-03-15\n    {list}:\n      - {{ {entry} }}";
}
