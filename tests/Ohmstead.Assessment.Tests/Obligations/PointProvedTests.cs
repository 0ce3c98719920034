using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.Obligations;

/// <summary>Each required point is proved after the last work, by each quantity that its limits ask.</summary>
public sealed class PointProvedTests
{
    private const string Both = "{ point: +5V, voltage: 5.02 V, ripple: 12 mV }";

    [Fact]
    public void A_point_proved_by_voltage_and_ripple_is_proved() =>
        Board(Proof(Both)).Met("+5V", "+5V proved after the last work", "+5V proved: 5.02 V, 12 mV", "2026-03-14", Both);

    [Fact]
    public void The_voltage_alone_does_not_prove_a_point_that_limits_its_ripple() =>
        Board(Proof("{ point: +5V, voltage: 5.02 V }"))
            .Open("+5V", BoardState.ProofDue, "ripple of +5V was not proved after the last work", "measure +5V and record it under proof");

    [Fact]
    public void Two_entries_may_prove_the_two() =>
        Assert.False(Board(Proof("{ point: +5V, voltage: 5.02 V }\n      - { point: +5V, ripple: 12 mV }")).IsOpen("+5V"));

    [Fact]
    public void A_pass_proves_a_test_of_function_and_no_value() =>
        Board(Proof("{ point: +5V, result: pass }"))
            .Open(
                "+5V",
                BoardState.ProofDue,
                "voltage of +5V was not proved after the last work: a pass proves a test of function, not a value",
                "measure +5V and record it under proof"
            );

    [Fact]
    public void A_pass_proves_a_point_that_is_a_test_of_function() =>
        Board(Proof("{ point: count, result: pass }"), "{ point: count, measures: result }")
            .Met("count", "count proved after the last work", "count proved: pass", "2026-03-14", "{ point: count, result: pass }");

    // 5 V ± 5 % ends at 4.75 V and 5.25 V; ripple up to 50 mV.
    [Theory]
    [InlineData("{ point: +5V, voltage: 4.75 V, ripple: 50 mV }", false)]
    [InlineData("{ point: +5V, voltage: 4.74 V, ripple: 50 mV }", true)]
    [InlineData("{ point: +5V, voltage: 5.26 V, ripple: 50 mV }", true)]
    [InlineData("{ point: +5V, voltage: 5.25 V, ripple: 50.1 mV }", true)]
    public void A_value_on_its_limit_proves_and_one_last_place_beyond_it_fails(string proof, bool isOpen) =>
        Assert.Equal(isOpen, Board(Proof(proof)).IsOpen("+5V"));

    [Fact]
    public void A_failed_proof_is_a_fault() =>
        Board(Proof("{ point: +5V, voltage: 4.60 V, ripple: 12 mV }"))
            .Open("+5V", BoardState.FaultStands, "voltage 4.60 V against …", "find the fault, mend it, prove it again");

    [Fact]
    public void A_proof_too_close_to_call_is_none() =>
        Board(Proof("{ point: +5V, voltage: 4.76 V, ripple: 12 mV, instrument: meter-1 }"))
            .Open("+5V", BoardState.ProofDue, "voltage 4.76 V against …", "measure it so that it decides");

    [Fact]
    public void A_point_that_was_never_proved_is_due() =>
        Board("    found:\n      - { at: J3, what: dust, severity: note }\n")
            .Open("+5V", BoardState.ProofDue, "point +5V was never proved", "measure +5V and record it under proof");

    [Fact]
    public void Points_that_are_due_for_one_reason_are_told_in_one_line() =>
        Board("    found:\n      - { at: J3, what: dust, severity: note }\n", "{ point: count, measures: result }")
            .Open(null, BoardState.ProofDue, "points +5V, count were never proved", "measure +5V and record it under proof");

    [Fact]
    public void A_proof_older_than_the_last_work_is_due_again() =>
        Board(Proof(Both) + "  - date: 2026-04-02\n    work:\n      - { at: J3, did: re-soldered }\n")
            .Open(
                "+5V",
                BoardState.ProofDue,
                "the proof of +5V of 2026-03-14 is older than the last work of 2026-04-02",
                "prove +5V again"
            );

    // A visit's lists happened in the order in which they stand: work behind the proof came after it.
    [Theory]
    [InlineData("    work:\n      - { at: J3, did: re-soldered }\n    proof:\n      - BOTH\n", false)]
    [InlineData("    proof:\n      - BOTH\n    work:\n      - { at: J3, did: re-soldered }\n", true)]
    [InlineData("    proof:\n      - BOTH\n  - date: 2026-03-14\n    work:\n      - { at: J3, did: re-soldered }\n", true)]
    [InlineData("    proof:\n      - BOTH\n    work:\n      - { at: J3, did: left alone }\n", false)]
    public void Within_a_day_the_order_of_the_file_counts(string visit, bool isOpen) =>
        Assert.Equal(isOpen, Board(visit.Replace("BOTH", Both, StringComparison.Ordinal)).IsOpen("+5V"));

    [Fact]
    public void A_point_without_any_limit_is_proved_by_nothing() =>
        Board(Proof("{ point: bias, voltage: -3 V }"), "{ point: bias, measures: voltage }")
            .Open(
                "bias",
                BoardState.ProofDue,
                "bias has no limit, so nothing that was read there proves it; write nominal and tolerance, or low and high, or "
                    + "measures: result",
                "measure bias and record it under proof"
            );

    [Fact]
    public void A_failed_test_is_a_fault_although_no_design_asks_for_it() =>
        Board(Proof(Both + "\n      - { point: lamp, result: fail }"), "{ point: lamp, measures: result, required: no }")
            .Open("lamp", BoardState.FaultStands, "lamp failed its test", "find the fault, mend it, prove it again");

    [Fact]
    public void A_point_that_is_not_required_need_not_be_proved() =>
        Board(Proof(Both), "{ point: lamp, measures: result, required: no }").AsksNothing("lamp");

    // Eight hours of soak are asked.
    [Theory]
    [InlineData("8", false)]
    [InlineData("7.9", true)]
    public void A_soak_lasts_as_long_as_is_asked(string hours, bool isOpen) =>
        Assert.Equal(
            isOpen,
            Board(Proof($"{{ point: soak, hours: {hours} }}"), "{ point: soak, measures: hours, hours: 8 }").IsOpen("soak")
        );

    private static string Proof(string entry) => $"    proof:\n      - {entry}\n";

    private static ObligedBoard Board(string visit, string? point = null) =>
        new(
            "point-proved",
            "points:\n  - { point: +5V, nominal: 5 V, tolerance: 5 %, ripple_limit: 50 mV }\n"
                + (point is null ? string.Empty : $"  - {point}\n")
                + "bench:\n  - date: 2026-03-14\n"
                + visit.TrimEnd()
        );
}
