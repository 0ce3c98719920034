using System.Collections.Frozen;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Obligations;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Records.Shapes;
using static Ohmstead.Publishing.Tables.SharedKeys;

namespace Ohmstead.Publishing.Tables;

/// <summary>Everything that must be shown before a board may be switched on.</summary>
internal static class ObligationsTable
{
    // What a met one of each kind says that has nothing of its own to say.
    private static readonly FrozenDictionary<string, string> Usual = ObligationCatalogue
        .All.Where(rule => rule.AsMet is not null)
        .ToFrozenDictionary(rule => rule.Kind, rule => rule.AsMet!, StringComparer.Ordinal);

    /// <summary>Its columns.</summary>
    public static DataColumns<(string Board, Obligation Obligation, string? Elsewhere)> Columns { get; } =
        new(
            "obligation row",
            "Something that must be shown before a board may be switched on, and how it stands.",
            "{ board: SP-0007, kind: point-proved, at: +15V, standing: met, text: +15V proved after the last work }",
            new(Board, row => row.Board),
            new(Word("kind", [.. ObligationCatalogue.All.Select(rule => rule.Kind)], "The kind of obligation.").Needed(), row =>
                row.Obligation.Kind
            ),
            new(Key.Text("at", "The part or point; absent when the whole board is meant.", "+15V"), row => row.Obligation.At),
            new(
                Word(
                        "standing",
                        [.. ObligationStandings.All.Select(ObligationStandings.Words)],
                        "How it stands. A board is fit to run when none is open."
                    )
                    .Needed(),
                row => ObligationStandings.Words(row.Obligation.Standing)
            ),
            new(
                Key.Text(
                    "text",
                    "Why it is open, what it asks for where it is met, or why it does not apply; absent where its kind says all.",
                    "+15V proved after the last work"
                ),
                row => IsUsual(row.Obligation) ? null : row.Obligation.Text.Text
            ),
            new(
                Word("state", [.. BoardStates.All.Select(BoardStates.Words)], "The state that it alone would give, while it is open."),
                row => IsOpen(row.Obligation) ? BoardStates.Words(row.Obligation.State) : null
            ),
            new(Key.Text("next", "What to do, while it is open.", "measure +15V and record it under proof"), row =>
                IsOpen(row.Obligation) ? row.Obligation.NextStep : null
            ),
            new(
                Key.Text(
                    "evidence",
                    "What meets it. Of a reading of the board what it says: its figures stand in the readings, by its line.",
                    "+15V proved: 15.02 V, 4 mV"
                ),
                row => row.Obligation.MetBy is { } by ? Evidence(by, row.Elsewhere) : null
            ),
            new(Key.Date("day", "The day of that.", "2026-03-14"), row => Day(row.Obligation.MetBy?.Day)),
            new(Key.Text("record", "The file in which that stands, where it is not the record of the board.", "stock.yaml"), row =>
                row.Elsewhere
            ),
            new(Key.Count("line", "Its line there.", "40"), row => row.Obligation.MetBy is { } by ? Number(by.Spot.Line) : null)
        );

    /// <summary>What must be shown of a board.</summary>
    public static IEnumerable<(string Board, Obligation Obligation, string? Elsewhere)> Rows(JudgedBoard board) =>
        board.Obligations.Select(obligation =>
            (board.Board.Id.Value, obligation, obligation.MetBy is { } by && by.Path != board.Board.Path ? by.Path : null)
        );

    // Nearly half of all rows are readings that were found inside: each would tell its figures and its limit once more.
    private static string Evidence(Evidence by, string? elsewhere) =>
        by.Verdict is { } verdict && elsewhere is null
            ? $"{VerdictWords.Describe(verdict.Measured)}: {VerdictWords.Describe(verdict.Outcome)}"
            : by.Words.Text;

    private static bool IsUsual(Obligation obligation) =>
        obligation.Standing == ObligationStanding.Met
        && Usual.GetValueOrDefault(obligation.Kind) is { } words
        && words == obligation.Text.Text;

    private static bool IsOpen(Obligation obligation) => obligation.Standing == ObligationStanding.Open;
}
