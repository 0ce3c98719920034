using System.Globalization;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Report.Drawings;
using Ohmstead.Report.Html;
using Ohmstead.Report.Style;
using Ohmstead.Report.Tables;

namespace Ohmstead.Report.Pages;

/// <summary>The answer first: the whole collection in one bar, and under it how many boards are in each state, each figure the way to them.
/// The two states that press most name their boards.</summary>
/// <param name="tables">The tables of the page.</param>
/// <param name="acts">What to do next.</param>
/// <param name="mostBoards">How many boards the page lists itself.</param>
internal sealed class StateTiles(CollectionTables tables, ActTable acts, int mostBoards)
{
    private const int MostNames = 3;
    private const int MostNamed = 2;

    /// <summary>Writes bar and figures; nothing for a collection without boards.</summary>
    public void Write(HtmlWriter html)
    {
        var there = tables.Boards.ToLookup(board => board.State);
        BoardState[] states = [.. BoardStates.WorstFirst.Where(there.Contains)];
        if (states.Length == 0)
        {
            return;
        }

        StateBar.Write(html, [.. states.Select(state => (state, there[state].Count()))]);
        using var tiles = html.Open(Tag.Ul, ClassName.Tiles);
        foreach (var (place, state) in states.Index())
        {
            BoardSummary[] boards = [.. there[state]];
            using var tile = html.Open(Tag.Li);
            using (html.Open(Tag.A).To(AddressOf(state, boards)))
            {
                html.Open(Tag.B).Text(boards.Length);
                html.Text(" ");
                StateMark.Write(html, state);
            }

            if (BoardStates.OverdueWords(boards.Count(board => board.IsFitButOverdue)) is { } beside)
            {
                html.Open(Tag.P, ClassName.Fine).Text(beside);
            }

            if (place < MostNamed && state != BoardState.FitToRun && BoardStates.IsWorkedOn(state))
            {
                Names(html, boards);
            }
        }
    }

    private LocalLink AddressOf(BoardState state, BoardSummary[] boards) =>
        BoardStates.IsWorkedOn(state) && boards.All(board => board.Reasons.Length > 0) ? acts.AddressOf(state)
        : tables.Boards.Count <= mostBoards ? LocalLink.ToFragment(ElementId.For(IdPrefix.Section, "boards"))
        : LocalLink.ToRows(tables.OfBoards.PathOfRow(0), tables.OfBoards.Heading, BoardStates.Words(state));

    private static void Names(HtmlWriter html, BoardSummary[] boards)
    {
        foreach (var board in boards.Take(MostNames))
        {
            using var line = html.Open(Tag.P, ClassName.Fine);
            CollectionTables.BoardLink(html, board);
            html.Text($" {board.Title}");
        }

        if (boards.Length > MostNames)
        {
            html.Open(Tag.P, ClassName.Fine).Text(string.Create(CultureInfo.InvariantCulture, $"and {boards.Length - MostNames} more"));
        }
    }
}
