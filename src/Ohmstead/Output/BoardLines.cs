using System.Globalization;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Electronics;
using Ohmstead.Running;

namespace Ohmstead.Output;

/// <summary>The list of boards as a person reads it: number, state and what it is, then why and what next, in the width of the
/// window.</summary>
/// <param name="terminal">Where it is told.</param>
/// <param name="filter">Which boards were asked for.</param>
/// <param name="isBrief">True for one line a board.</param>
internal sealed class BoardLines(Terminal terminal, BoardFilter filter, bool isBrief)
{
    private const string Below = "    ";
    private const string Further = "      ";

    /// <summary>Writes the list.</summary>
    /// <param name="boards">The boards that were asked for, in order.</param>
    /// <param name="all">How many boards there are.</param>
    public void Write(IReadOnlyList<BoardSummary> boards, int all)
    {
        var number = boards.Select(board => Printable.Escape(board.Id.Value).Length).DefaultIfEmpty().Max();
        var state = boards.Select(board => BoardStates.Words(board.State).Length).DefaultIfEmpty().Max();
        foreach (var board in boards)
        {
            var (id, words) = (Printable.Escape(board.Id.Value).PadRight(number) + "  ", BoardStates.Words(board.State));
            Line($"{id}{words.PadRight(state)}  {board.Title}", Below, (id.Length, words.Length, Colour(board)));
            if (!isBrief)
            {
                Rest(board);
            }
        }

        Line(Count(boards, all), Below);
    }

    private void Rest(BoardSummary board)
    {
        // Why a board that is not here is not fit to run is said by where it went.
        StateReason[] reasons = BoardStates.IsWorkedOn(board.State) || filter.Needs.Count > 0 ? [.. filter.ReasonsOf(board)] : [];
        if (board.Whereabouts.Told is { } where)
        {
            Line($"{Below}{where}", Further);
        }

        if (reasons is [var first, ..])
        {
            Line(
                Below
                    + first.Told
                    + (reasons.Length > 1 ? string.Create(CultureInfo.InvariantCulture, $"; and {reasons.Length - 1} more") : string.Empty),
                Further
            );
            Line($"{Below}next: {first.NextStep}", Further);
        }

        if (Dates(board) is { } dates)
        {
            Line(Below + dates, Further);
        }
    }

    // What is not fit to run has something to do before its next look.
    private static string? Dates(BoardSummary board) =>
        BoardStates.OverdueWords(board.OverdueSince) is { } overdue ? overdue
        : board is { State: BoardState.FitToRun, LookAgain: { } look } ? $"look at it again on {IsoDate.Text(look)}"
        : null;

    private static string Count(IReadOnlyList<BoardSummary> boards, int all)
    {
        var fit = boards.Count(board => board.State == BoardState.FitToRun);
        var told = boards.Count(board => board.State == BoardState.AsTold);
        var idle = boards.Count(board => !BoardStates.IsWorkedOn(board.State)) - told;
        var besides =
            (
                told == 0
                    ? string.Empty
                    : string.Create(CultureInfo.InvariantCulture, $", {told} taken as told (nothing is asked of them, and nothing proved)")
            ) + (idle == 0 ? string.Empty : string.Create(CultureInfo.InvariantCulture, $", {idle} gone or kept for show"));
        var overdue = BoardStates.OverdueWords(boards.Count(board => board.IsFitButOverdue)) is { } beside ? $", {beside}" : string.Empty;
        var many = boards.Count == all ? string.Empty : string.Create(CultureInfo.InvariantCulture, $" of {all}");
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{boards.Count}{many} {(all == 1 ? "board" : "boards")}, {fit} fit to run{overdue}{besides}"
        );
    }

    // What can hurt and what is broken stands out, and so does what may run; the words say it.
    private Func<string, string> Colour(BoardSummary board) =>
        board.State switch
        {
            BoardState.MakeSafe or BoardState.FaultStands => terminal.Colours.Wrong,
            BoardState.FitToRun when board.IsFitButOverdue => terminal.Colours.Doubtful,
            BoardState.FitToRun => terminal.Colours.Right,
            _ => static words => words,
        };

    private void Line(string text, string indent, (int Start, int Length, Func<string, string> Colour)? painted = null)
    {
        var isFirst = true;
        foreach (var line in WordWrap.Lines(Printable.Escape(text).TrimEnd(), terminal.Width, indent))
        {
            terminal.Out.WriteLine(
                isFirst && painted is var (start, length, colour) && line.Length >= start + length
                    ? line[..start] + colour(line.Substring(start, length)) + line[(start + length)..]
                    : line
            );
            isFirst = false;
        }
    }
}
