using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.Obligations;

/// <summary>A board of which no point is required is proved by something after the last work.</summary>
public sealed class BoardProvedTests
{
    private const string NextStep = "prove it: supply voltages, ripple, a test of its function, hours of soak";

    [Fact]
    public void Something_that_passed_proves_it() =>
        Board("    proof:\n      - { point: lamp, result: pass }\n")
            .Met(null, "proved after the last work", "lamp proved: pass", "2026-03-14", "{ point: lamp, result: pass }");

    [Fact]
    public void Nothing_proves_it() =>
        Board("    found:\n      - { at: J3, what: dust, severity: note }\n")
            .Open(null, BoardState.ProofDue, "nothing proves it", NextStep);

    [Fact]
    public void A_proof_older_than_the_last_work_does_not() =>
        Board("    proof:\n      - { point: lamp, result: pass }\n    work:\n      - { at: J3, did: re-soldered }\n")
            .Open(null, BoardState.ProofDue, "its proof is older than the last work of 2026-03-14", NextStep);

    [Fact]
    public void A_proof_that_failed_does_not() =>
        Board("    proof:\n      - { point: lamp, result: fail }\n").Open(null, BoardState.ProofDue, "no proof passed", NextStep);

    [Fact]
    public void Where_points_are_required_they_are_asked_instead() =>
        new ObligedBoard(
            "board-proved",
            "points:\n  - { point: +5V, nominal: 5 V, tolerance: 5 % }\nbench:\n  - date: 2026-03-14"
        ).AsksNothing(null);

    [Fact]
    public void A_board_that_nobody_looked_at_is_not_asked_yet() => new ObligedBoard("board-proved", "made: 1984").AsksNothing(null);

    private static ObligedBoard Board(string visit) =>
        new(
            "board-proved",
            "points:\n  - { point: lamp, measures: result, required: no }\nbench:\n  - date: 2026-03-14\n" + visit.TrimEnd()
        );
}
