using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.Obligations;

/// <summary>A finding is closed by work that can close it, or by a decision with a reason where nobody can be hurt.</summary>
public sealed class FindingAnsweredTests
{
    private const string Pad = "{ at: Q2, what: collector pad lifted, severity: major }";
    private const string Live = "{ at: chassis, what: the chassis is live, severity: safety }";

    [Fact]
    public void A_lifted_pad_is_answered_by_solder() =>
        Board(Pad, "work", "{ at: Q2, did: re-soldered }")
            .Met("Q2", "collector pad lifted", "re-soldered", "2026-03-14", "{ at: Q2, did: re-soldered }");

    [Fact]
    public void A_lifted_pad_is_answered_by_a_reason_to_leave_it() =>
        Board(Pad, "decided", "{ at: Q2, decision: leave alone, because: a wire takes its place }")
            .Met(
                "Q2",
                "collector pad lifted",
                "decided: leave alone, because a wire takes its place",
                "2026-03-14",
                "{ at: Q2, decision: leave alone, because: a wire takes its place }"
            );

    [Fact]
    public void A_lifted_pad_that_nobody_touched_is_a_fault() =>
        Board(Pad, "readings", "{ point: raw, voltage: 14 V }")
            .Open("Q2", BoardState.FaultStands, "collector pad lifted", "answer it by work or by a decision with a reason");

    [Fact]
    public void Work_that_cannot_answer_it_is_told() =>
        Board(Pad, "work", "{ at: Q2, did: cleaned }")
            .Open(
                "Q2",
                BoardState.FaultStands,
                "collector pad lifted; 'cleaned' does not answer that",
                "answer it by work or by a decision with a reason"
            );

    [Fact]
    public void A_pad_left_alone_wants_its_reason_beside_it()
    {
        Board(Pad, "work", "{ at: Q2, did: left alone }")
            .Open(
                "Q2",
                BoardState.FaultStands,
                "collector pad lifted; 'left alone' does not answer that",
                "answer it by work or by a decision with a reason"
            );
        Board(Pad, "work", "{ at: Q2, did: left alone, note: not used in this variant }")
            .Met("Q2", "collector pad lifted", "left alone", "2026-03-14", "{ at: Q2, did: left alone, note: not used in this variant }");
    }

    [Fact]
    public void What_can_hurt_is_not_decided_away() =>
        Board(
                "{ at: T1, what: bare mains wire, severity: safety }",
                "decided",
                "{ at: T1, decision: leave alone, because: the lid is shut }"
            )
            .Open("T1", BoardState.MakeSafe, "bare mains wire", "make it safe, and record the work there");

    private const string KeepAway = "keep away from it, and leave it to somebody licensed to judge and handle the tube";

    // A picture tube breaks inwards and throws its glass; common practice, and licensed practice comes first.
    [Theory]
    [InlineData("chip in the glass at the rim, a fine line from it", "hazards:\n  - { hazard: picture tube, at: V1 }\n")]
    [InlineData("chip at the rim", "hazards:\n  - { hazard: picture tube, at: V1 }\n")]
    [InlineData("cracked glass beside it", "hazards:\n  - { hazard: picture tube }\n")]
    [InlineData("the picture tube was hit by the lid", "")]
    [InlineData("glass shattered", "parts:\n  - { ref: V1, kind: display }\n")]
    public void Chipped_glass_of_a_picture_tube_must_be_made_safe(string what, string record) =>
        Glass(what, record).Open("V1", BoardState.MakeSafe, $"{what} (written as minor, which that never is)", KeepAway);

    [Theory]
    [InlineData("no chip, glass sound", "hazards:\n  - { hazard: picture tube, at: V1 }\n")]
    [InlineData("dust on the glass", "hazards:\n  - { hazard: picture tube, at: V1 }\n")]
    [InlineData("one segment broken", "parts:\n  - { ref: V1, kind: display }\n")]
    [InlineData("cracked glass", "parts:\n  - { ref: V1, kind: diode }\nhazards:\n  - { hazard: picture tube, at: V2 }\n")]
    [InlineData("cracked glass", "")]
    public void Sound_glass_and_other_glass_need_not(string what, string record) => Glass(what, record).AsksNothing("V1");

    [Theory]
    [InlineData("made safe", true)]
    [InlineData("repaired", true)]
    [InlineData("removed", false)]
    [InlineData("replaced", false)]
    public void Nothing_but_another_tube_or_none_answers_chipped_glass(string did, bool isOpen) =>
        Assert.Equal(
            isOpen,
            Glass("chip at the rim", "hazards:\n  - { hazard: picture tube, at: V1 }\n", $"    work:\n      - {{ at: V1, did: {did} }}\n")
                .IsOpen("V1")
        );

    [Fact]
    public void Chipped_glass_of_a_picture_tube_counts_on_a_board_that_is_taken_as_told() =>
        Glass("chip at the rim", "told_before: 2026-06-01\nhazards:\n  - { hazard: picture tube, at: V1 }\n")
            .Open("V1", BoardState.MakeSafe, "chip at the rim (written as minor, which that never is)", KeepAway);

    private static ObligedBoard Glass(string what, string record, string then = "") =>
        new(
            "finding-answered",
            $"{record}bench:\n  - date: 2026-03-14\n    found:\n      - {{ at: V1, what: \"{what}\", severity: minor }}\n{then}"
        );

    [Fact]
    public void A_live_chassis_that_was_repaired_and_not_tested_is_still_live() =>
        Board(Live, "work", "{ at: chassis, did: repaired }")
            .Open(
                "chassis",
                BoardState.MakeSafe,
                "the chassis is live; repaired on 2026-03-14, and nothing was tested there since",
                "test the insulation of chassis and record it; defer to local codes and licensed practice"
            );

    [Theory]
    [InlineData("    proof:\n      - { point: insulation, result: pass }")]
    [InlineData("    proof:\n      - { point: earth-continuity, result: pass }")]
    public void A_live_chassis_is_answered_by_a_repair_and_a_test(string test) =>
        Board(Live, "work", "{ at: chassis, did: repaired }\n" + test)
            .Met("chassis", "the chassis is live", "repaired", "2026-03-14", "{ at: chassis, did: repaired }");

    [Theory]
    [InlineData("    proof:\n      - { point: lamp, result: pass }")]
    [InlineData("    proof:\n      - { point: insulation, result: fail }")]
    public void A_test_of_something_else_or_a_failed_one_shows_nothing(string test) =>
        Assert.True(Board(Live, "work", "{ at: chassis, did: repaired }\n" + test).IsOpen("chassis"));

    [Fact]
    public void A_test_before_the_repair_shows_nothing() =>
        Assert.True(
            Board(
                    Live,
                    "proof",
                    "{ point: insulation, result: pass }\n  - date: 2026-03-15\n    work:\n      - { at: chassis, did: repaired }"
                )
                .IsOpen("chassis")
        );

    [Fact]
    public void Work_before_the_finding_answers_nothing() =>
        Assert.True(
            new ObligedBoard(
                "finding-answered",
                $"bench:\n  - date: 2026-03-13\n    work:\n      - {{ at: Q2, did: re-soldered }}\n  - date: 2026-03-14\n    found:\n   "
                    + $"   - {Pad}"
            ).IsOpen("Q2")
        );

    [Theory]
    [InlineData("{ at: RV1, did: adjusted }", "adjusted")]
    [InlineData("{ at: RV1, did: repaired }", "repaired")]
    public void A_fault_of_no_known_sort_is_answered_by_work_and_a_proof(string work, string did)
    {
        const string Fault = "{ at: RV1, what: Feder lahm, severity: major }";
        Board(Fault, "work", work)
            .Open(
                "RV1",
                BoardState.ProofDue,
                $"Feder lahm; {did} on 2026-03-14, and nothing was proved since",
                "prove the board, or answer it by a decision with a reason"
            );
        Assert.True(
            Board(Fault, "proof", $"{{ point: lamp, result: pass }}\n  - date: 2026-03-15\n    work:\n      - {work}").IsOpen("RV1")
        );
        Assert.True(Board(Fault, "work", work + "\n    proof:\n      - { point: lamp, result: fail }").IsOpen("RV1"));
        Board(Fault, "work", work + "\n    proof:\n      - { point: lamp, result: pass }")
            .Met("RV1", "Feder lahm", did, "2026-03-14", work);
    }

    [Fact]
    public void What_is_never_little_says_so() =>
        Board("{ at: chassis, what: the chassis is live, severity: minor }", "work", "{ at: chassis, did: cleaned }")
            .Open(
                "chassis",
                BoardState.MakeSafe,
                "the chassis is live (written as minor, which that never is); 'cleaned' does not answer that",
                "make it safe, and record the work there"
            );

    [Theory]
    [InlineData("minor")]
    [InlineData("note")]
    public void What_matters_little_need_not_be_answered(string severity) =>
        Board($"{{ at: Q2, what: collector pad lifted, severity: {severity} }}", "readings", "{ point: raw, voltage: 14 V }")
            .AsksNothing("Q2");

    private static ObligedBoard Board(string found, string list, string entry) =>
        new(
            "finding-answered",
            "points:\n  - { point: raw, low: 12 V, high: 18 V }\n  - { point: insulation, measures: result }\n  - { point: "
                + "earth-continuity, measures: result }\n  - { point: lamp, measures: result }\n"
                + $"bench:\n  - date: 2026-03-14\n    found:\n      - {found}\n    {list}:\n      - {entry}"
        );
}
