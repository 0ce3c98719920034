using System.Collections.Immutable;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Records.Findings;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;
using Ohmstead.Report.Pages;

namespace Ohmstead.Report.Search;

/// <summary>Takes boards while they are judged, and writes the index when all are: the same bytes whoever was first.</summary>
/// <param name="store">Where they wait.</param>
public sealed class SearchCollector(ISearchStore store)
{
    private readonly Lock gate = new();
    private readonly List<Board> boards = [];
    private readonly SearchTokens tokens = new();

    private readonly record struct Board(int Kept, int State, string Path, string? Design);

    /// <summary>Takes a board. May be called from several threads.</summary>
    /// <param name="context">What every page knows.</param>
    /// <param name="judged">The board.</param>
    /// <param name="buffer">Room of the worker's own.</param>
    public void Add(ReportContext context, JudgedBoard judged, PageBuffer buffer)
    {
        var maker = judged.Board.Design is { } design ? context.Workshop.Designs.GetValueOrDefault(design.Value)?.Maker?.Value : null;
        var page = BoardSentences.Of(judged, maker);
        KeptPage.Write(buffer, page, tokens);
        var board = new Board(store.Keep(buffer.Written), BoardStates.Place(judged.State), judged.Board.Path, page.Design);
        lock (gate)
        {
            boards.Add(board);
        }
    }

    /// <summary>Writes the files of the index.</summary>
    /// <param name="files">Where to.</param>
    /// <param name="context">What every page knows.</param>
    /// <param name="summaries">All boards, in order of path.</param>
    /// <param name="findings">All findings, in order of path and line.</param>
    /// <param name="checks">What the checks are.</param>
    public void Write(
        IReportFiles files,
        ReportContext context,
        IReadOnlyList<BoardSummary> summaries,
        ImmutableArray<Finding> findings,
        IReadOnlyList<CheckText> checks
    )
    {
        var pages = new List<IndexedPage>();
        lock (gate)
        {
            // The board that presses most is found first.
            pages.AddRange(
                boards
                    .OrderBy(board => board.State)
                    .ThenBy(board => board.Path, StringComparer.Ordinal)
                    .Select(board => new IndexedPage(board.Kept, SearchGroup.Boards, string.Empty, board.Design))
            );
        }

        using var buffer = new PageBuffer();
        foreach (var page in new WorkshopSentences(context, summaries).Pages(findings, checks))
        {
            KeptPage.Write(buffer, page, tokens);
            pages.Add(new(store.Keep(buffer.Written), page.Group, page.Name, null));
        }

        new SearchIndex(files, store, pages).Write(tokens.InOrder(), tokens.Count);
    }
}

/// <summary>A page that waits, in the order in which pages are found.</summary>
/// <param name="Kept">What it is asked for by.</param>
/// <param name="Group">What it is about.</param>
/// <param name="Name">What it is called; empty for boards.</param>
/// <param name="Design">The design whose parts it has, too; or null.</param>
internal readonly record struct IndexedPage(int Kept, SearchGroup Group, string Name, string? Design);
