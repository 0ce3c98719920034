using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.Obligations;

/// <summary>A board that was away or kept for show was proved since it is back. The run is on 2026-11-25.</summary>
public sealed class ProvedSinceBackTests
{
    private const string Next = "look at it as at one that comes new, then prove it and record it under proof";
    private const string Loan = "{ date: 2026-05-02, did: lent, to: Two Weirs museum }\n  - { date: 2026-06-10, did: came back }";

    [Fact]
    public void A_proof_of_before_the_loan_does_not_count_when_it_is_back() =>
        Board(Loan, Proof("2026-03-14")).Open(null, BoardState.ProofDue, "came back on 2026-06-10, and +5V was not proved since", Next);

    [Fact]
    public void A_look_alone_does_not_prove_it() =>
        Board(Loan, Proof("2026-03-14"), "  - date: 2026-06-10\n    found:\n      - { at: J1, what: dust, severity: note }\n")
            .Open(null, BoardState.ProofDue, "came back on 2026-06-10, and +5V was not proved since", Next);

    [Theory]
    [InlineData("2026-06-10")]
    [InlineData("2026-07-01")]
    public void A_proof_on_the_day_it_came_back_or_later_counts(string day)
    {
        var board = Board(Loan, Proof("2026-03-14"), Proof(day));
        board.Met(null, "came back on 2026-06-10", "+5V proved: 5.02 V, 4 mV", day, "{ point: +5V, voltage: 5.02 V, ripple: 4 mV }");
        Assert.Equal(BoardState.FitToRun, board.Board.State);
    }

    [Fact]
    public void The_ripple_of_before_the_loan_does_not_stand_in_for_that_of_after_it() =>
        Board(Loan, Proof("2026-03-14"), "  - date: 2026-06-11\n    proof:\n      - { point: +5V, voltage: 5.02 V }\n")
            .Open(null, BoardState.ProofDue, "came back on 2026-06-10, and +5V was not proved since", Next);

    [Fact]
    public void Of_a_day_on_which_it_went_and_came_nobody_knows_which_was_first() =>
        Board(
                "{ date: 2026-06-10, did: lent, to: Two Weirs museum }\n  - { date: 2026-06-10, did: came back }",
                Proof("2026-03-14"),
                Proof("2026-06-10")
            )
            .Open(null, BoardState.ProofDue, "came back on 2026-06-10, and +5V was not proved since", Next);

    [Theory]
    [InlineData("sold", "came back")]
    [InlineData("lost", "came back")]
    [InlineData("retired", "used again")]
    public void So_it_is_with_what_was_sold_lost_or_kept_for_show(string left, string back) =>
        Board($"{{ date: 2026-05-02, did: {left} }}\n  - {{ date: 2026-06-10, did: {back} }}", Proof("2026-03-14"))
            .Open(null, BoardState.ProofDue, $"{back} on 2026-06-10, and +5V was not proved since", Next);

    [Fact]
    public void A_board_of_which_no_point_is_required_needs_some_proof() =>
        new ObligedBoard(
            "proved-since-back",
            $"bench:\n  - date: 2026-03-14\n    proof:\n      - {{ point: lamp, result: pass }}\nwhereabouts:\n  - {Loan}",
            isReadable: true
        ).Open(null, BoardState.ProofDue, "came back on 2026-06-10, and nothing proves it since", Next);

    [Fact]
    public void A_board_that_is_still_away_owes_nothing_here() =>
        Board("{ date: 2026-05-02, did: lent, to: Two Weirs museum }", Proof("2026-03-14")).AsksNothing(null);

    private static string Proof(string day) => $"  - date: {day}\n    proof:\n      - {{ point: +5V, voltage: 5.02 V, ripple: 4 mV }}\n";

    private static ObligedBoard Board(string steps, params string[] visits) =>
        new(
            "proved-since-back",
            "points:\n  - { point: +5V, nominal: 5 V, tolerance: 5 %, ripple_limit: 10 mV }\nbench:\n"
                + string.Concat(visits)
                + $"whereabouts:\n  - {steps}"
        );
}
