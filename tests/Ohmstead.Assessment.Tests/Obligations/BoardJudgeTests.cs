using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Obligations;
using Ohmstead.Assessment.Obligations.Basis;
using Ohmstead.Assessment.Tests.Support;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Tests.Obligations;

/// <summary>There is no other way to a state than through what reading and checking found.</summary>
public sealed class BoardJudgeTests
{
    private const string Sound = "bench:\n  - date: 2026-03-14\n    proof:\n      - { point: lamp, result: pass }";

    [Fact]
    public void A_sound_board_that_was_judged_is_fit_to_run() =>
        Assert.Equal(BoardState.FitToRun, Assert.Single(Collection(Board("SP-0001", Sound)).Boards).State);

    [Fact]
    public void An_assessment_has_no_state_and_a_board_of_which_nothing_was_asked_is_fit_for_nothing()
    {
        var collection = Collection(Board("SP-0001", Sound));
        var assessed = new Assessor(collection.Workshop).Assess(collection.Boards.Single().Board);
        Assert.IsNotType<JudgedBoard>(assessed);
        Assert.Equal(BoardState.NotLookedAt, new JudgedBoard(assessed, [], [], [], SmallCollection.Today).State);
    }

    // What could not be read would be reported again by the checks that miss it.
    [Fact]
    public void An_error_of_the_reader_keeps_the_checks_from_running_and_holds_back()
    {
        var collection = Collection(
            Board(
                "SP-0001",
                Sound.Replace("bench:", "parts:\n  - { ref: C1, kind: mica, capacitance: lots }\nbench:", StringComparison.Ordinal)
                    + "\n    work:\n      - { part: C99, did: repaired }"
            )
        );
        Assert.Equal(["quantity-unreadable"], collection.Findings().Select(finding => finding.Check));
        var board = Assert.Single(collection.Boards);
        Assert.NotEqual(BoardState.FitToRun, board.State);
        Assert.Contains(board.Reasons, reason =>
            reason is { At: "C1" } && reason.Text.EndsWith("[quantity-unreadable, boards/SP-0001.md line 5]", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void What_the_caller_says_was_read_is_among_the_findings_of_the_board()
    {
        var collection = Collection(Board("SP-0001", Sound));
        var judge = new BoardJudge(collection.Workshop, SharedFaults.None, SmallCollection.Today, new ListedPictures([]));
        var board = collection.Boards.Single().Board;
        Finding read = new("key-unknown", Severity.Error, new(board.Path, 3, 1), "no such key");
        var judged = judge.Judge(board, [read]);
        Assert.Equal([read], judged.Reported);
        Assert.NotEqual(BoardState.FitToRun, judged.State);
        Assert.Equal(BoardState.FitToRun, judge.Judge(board, []).State);
    }

    [Fact]
    public void A_lot_overdrawn_reaches_both_boards_in_the_second_round() =>
        AllHeld(
            "lot-overdrawn",
            Collection(
                Board("SP-0001", Fitted),
                Board("SP-0002", Fitted),
                new(
                    "yaml",
                    "stock.yaml",
                    0,
                    "lots:\n  - { lot: L-1, kind: mica, capacitance: 100 pF, rated_voltage: 300 V, received: 2026-01-28, quantity: 1 }\n"
                )
            )
        );

    [Fact]
    public void A_lot_that_lasts_reaches_neither()
    {
        var collection = Collection(
            Board("SP-0001", Fitted),
            Board("SP-0002", Fitted),
            new(
                "yaml",
                "stock.yaml",
                0,
                "lots:\n  - { lot: L-1, kind: mica, capacitance: 100 pF, rated_voltage: 300 V, received: 2026-01-28, quantity: 2 }\n"
            )
        );
        Assert.DoesNotContain(collection.Boards.SelectMany(board => board.Reasons), reason =>
            reason.Text.Contains("lot-overdrawn", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void A_number_used_twice_reaches_both_boards_in_the_second_round() =>
        AllHeld(
            "board-number-repeated",
            Collection(Board("SP-0001", Sound), new("markdown", "boards/SP-0002.md", 0, Text("SP-0001", Sound)))
        );

    [Fact]
    public void The_look_that_is_overdue_is_said_beside_the_state()
    {
        var boards = new SmallCollection([
            Board("SP-0001", Sound.Replace("2026-03-14", "2025-11-25", StringComparison.Ordinal)),
            Board("SP-0002", Sound.Replace("2026-03-14", "2025-11-24", StringComparison.Ordinal)),
            new("yaml", "collection.yaml", 0, "collection: Saltmarsh Point weather collection\nlook_every: 12 months\n"),
        ]).Boards;
        Assert.Equal(
            [(BoardState.FitToRun, false), (BoardState.FitToRun, true)],
            boards.Select(board => (board.State, board.IsLookOverdue))
        );
    }

    [Fact]
    public void The_worst_reason_gives_the_state_and_stands_first()
    {
        var board = Assert.Single(
            Collection(
                Board(
                    "SP-0001",
                    "hazards:\n  - { hazard: leaking cell, at: BT1 }\nparts:\n  - { ref: C1, kind: mica, capacitance: 100 pF "
                        + "}\nbench:\n  - date: 2026-03-14\n    work:\n      - { part: C1, did: removed }"
                )
            ).Boards
        );
        Assert.Equal([BoardState.MakeSafe, BoardState.FaultStands, BoardState.ProofDue], board.Reasons.Select(reason => reason.State));
        Assert.Equal(BoardState.MakeSafe, board.State);
    }

    private const string Fitted = """
        parts:
          - { ref: C1, kind: mica, capacitance: 100 pF, rated_voltage: 300 V }
        bench:
          - date: 2026-03-14
            work:
              - { part: C1, did: replaced, lot: L-1 }
        """;

    private static void AllHeld(string check, SmallCollection collection) =>
        Assert.All(collection.Boards, board =>
            Assert.Contains(board.Reasons, reason => reason.Text.Contains($"[{check}, ", StringComparison.Ordinal))
        );

    private static SmallCollection Collection(params CaseBlock[] blocks) => new(blocks);

    private static CaseBlock Board(string number, string record) => new("markdown", $"boards/{number}.md", 0, Text(number, record));

    private static string Text(string number, string record) => $"---\nboard: {number}\ntitle: Tide-gauge logger\n{record}\n---\n";
}
