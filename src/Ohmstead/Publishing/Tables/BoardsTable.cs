using System.Collections.Immutable;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Records.Shapes;
using Ohmstead.Report.Addresses;
using static Ohmstead.Publishing.Tables.SharedKeys;

namespace Ohmstead.Publishing.Tables;

/// <summary>Every board with its state.</summary>
internal static class BoardsTable
{
    /// <summary>Its columns.</summary>
    public static DataColumns<(BoardSummary Board, Workshop Workshop)> Columns { get; } =
        new(
            "board row",
            "One board with its state.",
            "{ board: SP-0007, title: Barograph servo amplifier, state: fit to run, look_overdue: no, page: boards/SP-0007.html, data: "
                + "boards/SP-0007.json, badge: badges/SP-0007.svg, record: boards/SP-0007.md }",
            new(Board, row => row.Board.Id.Value),
            new(Key.Text("title", "What it is.", "Barograph servo amplifier").Needed(), row => row.Board.Title),
            new(Key.Id("design", "Its design.", "barograph-servo"), row => row.Board.Design),
            new(Key.Text("maker", "Who made it.", "Tallis"), row => Maker(row.Board, row.Workshop)),
            new(Key.Text("serial", "Its serial number, as printed.", "0412"), row => row.Board.Serial),
            new(Key.Text("revision", "Its revision.", "C"), row => row.Board.Revision),
            new(Word("state", [.. BoardStates.All.Select(BoardStates.Words)], "Its state, computed.").Needed(), row =>
                BoardStates.Words(row.Board.State)
            ),
            new(Key.Text("why", "The weightiest reason for the state.", "C4: the last reading is outside its limit"), row =>
                Reason(row.Board)?.Told
            ),
            new(Key.Text("next", "What to do next.", "replace C4"), row => Reason(row.Board)?.NextStep),
            new(Key.Date("last_seen", "The last day of any entry.", "2026-03-14"), row => Day(row.Board.LastSeen)),
            new(Key.Date("look_again", "The day of the next look.", "2027-03-14"), row => Day(row.Board.LookAgain)),
            new(Word("look_overdue", ["yes", "no"], "Whether that day is past: what was proved is then not known to hold.").Needed(), row =>
                row.Board.IsLookOverdue ? "yes" : "no"
            ),
            new(
                Key.Text("where", "Where it is and whose it is, or what became of it.", "on loan to Two Weirs museum since 2026-05-02"),
                row => row.Board.Whereabouts.Told
            ),
            new(Key.Count("inside", "Readings inside their limits.", "21").Needed(), row => Number(row.Board.Readings.Inside)),
            new(Key.Count("outside", "Readings outside.", "2").Needed(), row => Number(row.Board.Readings.Outside)),
            new(Key.Count("undecided", "Readings too close to call.", "1").Needed(), row => Number(row.Board.Readings.Undecided)),
            new(Key.Count("other", "Readings without a limit, or proving nothing.", "0").Needed(), row =>
                Number(row.Board.Readings.Others)
            ),
            new(Page, row => SiteAddress.Board(row.Board.Id.Value)),
            new(
                Key.Text("data", "Its parts, readings and bench entries, from the folder of this file.", "boards/SP-0007.json").Needed(),
                row => SiteAddress.BoardData(row.Board.Id.Value)
            ),
            new(Key.Text("badge", "The badge, from the folder of this file.", "badges/SP-0007.svg").Needed(), row =>
                SiteAddress.Badge(row.Board.Id.Value)
            ),
            new(Key.Text("record", "The record it was read from.", "boards/SP-0007.md").Needed(), row => row.Board.Path)
        );

    private static string? Maker(BoardSummary board, Workshop workshop) =>
        board.Maker ?? (board.Design is { } name ? workshop.Designs.GetValueOrDefault(name)?.Maker?.Value : null);

    private static StateReason? Reason(BoardSummary board) => board.Reasons.Length == 0 ? null : board.Reasons[0];
}
