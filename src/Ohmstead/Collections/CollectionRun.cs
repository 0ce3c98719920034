using System.Collections.Immutable;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Obligations;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;
using Ohmstead.Running;
using Ohmstead.Yaml;

namespace Ohmstead.Collections;

/// <summary>What a run over a collection gave.</summary>
/// <param name="Workshop">What boards refer to.</param>
/// <param name="Boards">The boards that could be read, in order of path.</param>
/// <param name="Findings">All findings, in order of path, line, column and check.</param>
/// <param name="FilesRead">How many files were looked at.</param>
internal sealed record RunResult(Workshop Workshop, IReadOnlyList<BoardSummary> Boards, ImmutableArray<Finding> Findings, int FilesRead)
{
    /// <summary>
    /// What all boards together show and boards were judged without, since their pages were wanted; null when it changes none of them.
    /// </summary>
    public BoardsTogether? Late { get; init; }

    /// <summary>How a run with these findings ends: as an exit code.</summary>
    public int Exit(bool isStrict) =>
        Findings.Any(finding => finding.Check == FileReader.Unreadable) ? ExitCode.Incomplete
        : Findings.Any(finding => finding.Severity == Severity.Error || (isStrict && finding.Severity == Severity.Warning))
            ? ExitCode.Findings
        : ExitCode.Clean;
}

/// <summary>
/// Reads, judges and checks a collection, board by board: of each board only a summary is kept, so memory does not grow with its records.
/// Boards on which it changes anything are judged again with what all boards together show, and where only some boards are looked at, their
/// neighbours are compared with them: a state is told as it is in the whole collection.
/// </summary>
internal sealed class CollectionRun(CollectionFolder folder, RunOptions options)
{
    /// <summary>The files that boards share, at the root of a collection.</summary>
    internal static IReadOnlyList<string> SharedFiles { get; } = ["collection.yaml", "instruments.yaml", "meters.yaml", "stock.yaml"];

    /// <summary>Runs.</summary>
    /// <param name="progress">Told the number of boards done, from any worker.</param>
    /// <param name="pageFor">Makes what else is wanted of each board (its page), once, for each worker anew; or null.</param>
    /// <param name="seen">Told each board, and once more when it was judged again; or null.</param>
    /// <param name="recordFor">Makes what takes up each record, once, for each worker anew; or null.</param>
    public RunResult Run(
        Action<int>? progress = null,
        Func<Workshop, Action<JudgedBoard>>? pageFor = null,
        Action<JudgedBoard>? seen = null,
        Func<Action<BoardFile, ImmutableArray<Finding>>>? recordFor = null
    )
    {
        var found = new List<Finding>();
        var first = NodeReaders.ForWorker(0);
        var reader = new FileReader(folder, first, options);
        var workshop = SharedFilesRun.Load(folder, reader, options, found);
        if (folder.Beside is null)
        {
            found.AddRange(new OverlookedRecords(folder).Find());
        }

        BoardPass Pass(BoardsTogether? with) => new(folder, options, workshop, found, with);
        BoardSummary[] ByThemselves(IReadOnlyList<string> paths) => SummariesOf(Pass(null).Judge(paths, first));
        BoardsTogether Compare(BoardResult[] judged) =>
            BoardsTogether.Compare(workshop, AllOf(judged, reader, ByThemselves), options.Today);

        // Whoever reads pieces in the drawer shares them out over boards: a page that says which of them sits where is written when that is
        // known.
        var isPageOfPieces = pageFor is not null && workshop.IncomingReadings.Count > 0;
        var together = options.Together ?? (isPageOfPieces ? Compare(Pass(null).Judge(folder.Boards, first, progress)) : null);
        var wanted = pageFor ?? (seen is null ? null : _ => seen);
        var results = Pass(together).Judge(folder.Boards, first, progress, wanted, recordFor);
        var compared = together ?? Compare(results);
        int[] again = together is not null
            ? []
            : [.. Enumerable.Range(0, results.Length).Where(at => results[at].Summary is { } board && compared.Changes(board))];
        if (again.Length > 0 && pageFor is null)
        {
            var judged = Pass(compared).Judge([.. again.Select(at => folder.Boards[at])], first, progress: null, wanted);
            for (var at = 0; at < again.Length; at++)
            {
                results[again[at]] = judged[at];
            }
        }

        Finding[] findings =
        [
            .. found,
            .. results.SelectMany(result => result.Findings),
            .. compared.Findings.Where(finding => folder.Beside?.Holds(finding.Place.Path) != true),
        ];
        Array.Sort(findings, FindingOrder.Instance);
        var files = folder.Boards.Count + folder.Designs.Count + SharedFiles.Count(name => folder.Named(name) is not null);
        return new(workshop, SummariesOf(results), [.. findings], files)
        {
            Late = again.Length > 0 && pageFor is not null ? compared : null,
        };
    }

    // With the neighbours of the boards that are looked at, where those are not all.
    private BoardSummary[] AllOf(BoardResult[] judged, FileReader reader, Func<IReadOnlyList<string>, IReadOnlyList<BoardSummary>> judge)
    {
        var own = SummariesOf(judged);
        return !options.IsCompared || folder.Beside is not { } beside
            ? own
            : [.. own.Concat(beside.Find(own, reader, judge)).OrderBy(board => board.Path, StringComparer.Ordinal)];
    }

    private static BoardSummary[] SummariesOf(BoardResult[] results) =>
        [.. results.Select(result => result.Summary).OfType<BoardSummary>()];
}
