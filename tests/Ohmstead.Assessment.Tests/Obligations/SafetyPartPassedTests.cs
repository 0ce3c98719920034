using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.Obligations;

/// <summary>A part that people rely on not to be hurt is not passed by a reading that does not decide. Defer to local codes and licensed
/// practice.</summary>
public sealed class SafetyPartPassedTests
{
    private const string NextStep = "measure it so that it decides, or replace it; defer to local codes and licensed practice";

    [Fact]
    public void A_suppressor_that_reads_inside_passed() =>
        Board("{ part: C5, circuit: out, frequency: 1 kHz, capacitance: 98 nF }")
            .Met(
                "C5",
                "suppression capacitor passed",
                "capacitance 98 nF against …",
                "2026-03-14",
                "{ part: C5, circuit: out, frequency: 1 kHz, capacitance: 98 nF }"
            );

    [Fact]
    public void A_fuse_that_carries_passed_its_test() =>
        Board("{ part: F1, result: pass }").Met("F1", "fuse passed its test", "F1 read: pass", "2026-03-14", "{ part: F1, result: pass }");

    // This bridge is good to 0.5 % and five steps of 0.1 µF: 0.5 µF at 100 nF says nothing.
    [Fact]
    public void A_reading_too_close_to_call_is_no_pass() =>
        Board("{ part: C5, circuit: out, frequency: 1 kHz, capacitance: 98 nF, instrument: bridge-2 }")
            .Open("C5", BoardState.ProofDue, "capacitance 98 nF against …", NextStep);

    [Fact]
    public void A_word_that_it_works_does_not_decide_it_either() =>
        Assert.True(
            Board(
                    "{ part: C5, circuit: out, frequency: 1 kHz, capacitance: 98 nF, instrument: bridge-2 }\n      - { part: C5, "
                        + "result: pass }"
                )
                .IsOpen("C5")
        );

    [Fact]
    public void A_decision_is_no_pass() =>
        Assert.True(
            Board(
                    "{ part: C5, circuit: out, frequency: 1 kHz, capacitance: 98 nF, instrument: bridge-2 }\n    decided:\n      - { "
                        + "part: C5, decision: keep, because: it looks well }"
                )
                .IsOpen("C5")
        );

    [Fact]
    public void A_reading_without_a_limit_is_no_pass() =>
        Board("{ part: C7, circuit: out, frequency: 1 kHz, capacitance: 98 nF }")
            .Open("C7", BoardState.ProofDue, "capacitance 98 nF…", NextStep);

    // In circuit another capacitor beside it reads with it.
    [Fact]
    public void A_reading_in_circuit_that_proves_nothing_is_no_pass() =>
        Assert.True(Board("{ part: C5, circuit: in, frequency: 1 kHz, capacitance: 98 nF }").IsOpen("C5"));

    [Fact]
    public void One_that_nobody_read_is_told_and_holds_nothing_back() =>
        Board("{ part: C12, circuit: out, frequency: 120 Hz, capacitance: 461 µF }")
            .DoesNotApply("C5", "suppression capacitor: nobody has read it; look at it before power is applied")
            .DoesNotApply("F1", "fuse: nobody has read it; look at it before power is applied");

    [Fact]
    public void One_that_failed_is_told_as_that_and_other_parts_are_not_asked() =>
        Board("{ part: C5, circuit: out, frequency: 1 kHz, capacitance: 71 nF }").AsksNothing("C5").AsksNothing("C12");

    private static ObligedBoard Board(string reading) =>
        new(
            "safety-part-passed",
            """
            parts:
              - { ref: C5, kind: suppression capacitor, role: mains suppression, capacitance: 100 nF, tolerance: 20 %, rated_voltage: 250 V, safety_class: X2 }
              - { ref: C7, kind: paper, role: mains suppression }
              - { ref: F1, kind: fuse, current: 250 mA, rated_voltage: 250 V }
              - { ref: C12, kind: aluminium electrolytic, capacitance: 470 µF, tolerance: 20 %, rated_voltage: 25 V }
            bench:
              - date: 2026-03-14
                readings:

            """
                + "      - "
                + reading
        );
}
