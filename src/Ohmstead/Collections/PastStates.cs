using System.Collections.Concurrent;
using System.Collections.Immutable;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Obligations;
using Ohmstead.Assessment.Obligations.Basis;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Assessment.Years;
using Ohmstead.Records.Days;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;
using Ohmstead.Report.Markdown;
using Ohmstead.Yaml;

namespace Ohmstead.Collections;

/// <summary>
/// Counts a collection as the bench had it on past days, beside a run that reads it: each board is judged once more for each day on which
/// it was there, by what had happened until then. What is counted is what <c>boards --on</c> tells of that day; a test holds it to that.
/// </summary>
/// <param name="folder">The collection.</param>
/// <param name="options">How it is read; the day is the last of the days.</param>
/// <param name="days">The days, the first one first.</param>
internal sealed class PastStates(CollectionFolder folder, RunOptions options, IReadOnlyList<DateOnly> days)
{
    private readonly PastDay[] past = [.. days.Select(day => PastDay.Open(folder, options, day))];
    private readonly ConcurrentDictionary<string, BoardPast> boards = new(StringComparer.Ordinal);

    /// <summary>Makes what takes up boards, for one worker: the record with what reading it found.</summary>
    public Action<BoardFile, ImmutableArray<Finding>> ForWorker()
    {
        // On each day the same marks are judged, and the same readings again.
        var memo = new JudgeMemo { Verdicts = new() };
        var judges = past.Select(day => day.Judge(null, memo)).ToArray();
        return (board, found) =>
        {
            memo.Begin();
            boards[board.Path] = Judge(board, found, judges);
        };
    }

    /// <summary>The counts, from the first day on which there was a board.</summary>
    public ImmutableArray<PastPoint> Count()
    {
        var paths = boards.Keys.Order(StringComparer.Ordinal).ToArray();
        var points = new List<PastPoint>();
        for (var at = 0; at < past.Length; at++)
        {
            var there = paths.Select(path => boards[path].Summaries[at]).OfType<BoardSummary>().ToArray();
            var states = there
                .Select(past[at].Corrected(there))
                .GroupBy(state => state)
                .ToDictionary(state => state.Key, state => state.Count());
            var work = paths.Aggregate(default(BenchCount), (sum, path) => sum + boards[path].Work[at]);
            points.Add(new(days[at], there.Length, states.GetValueOrDefault(BoardState.FitToRun), work) { States = states });
        }

        return [.. points.SkipWhile(point => point.Boards == 0)];
    }

    private BoardPast Judge(BoardFile board, ImmutableArray<Finding> found, BoardJudge[] judges)
    {
        var summaries = new BoardSummary?[past.Length];
        (int, int, int)? before = null;
        for (var at = 0; at < past.Length; at++)
        {
            if (past[at].UpTo.Board(board) is not { } then)
            {
                continue;
            }

            var summary = BoardSummary.From(judges[at].Judge(then, found), forPages: false);
            // Where nothing was entered since the day before and the state is the same, one is kept for both.
            var size = (then.Bench.Length, then.Waiting.Length, then.Whereabouts.Length);
            summaries[at] = at > 0 && size == before && summaries[at - 1] is { } same && same.State == summary.State ? same : summary;
            before = size;
        }

        return new(summaries, [.. Enumerable.Range(0, days.Count).Select(at => Work(board, at))]);
    }

    private BenchCount Work(BoardFile board, int at)
    {
        var count = default(BenchCount);
        foreach (var visit in board.Bench)
        {
            if (visit.Date.Value <= days[at] && (at == 0 || visit.Date.Value > days[at - 1]))
            {
                count += new BenchCount(1, visit.Readings.Length + visit.Proofs.Length, visit.Work.Length);
            }
        }

        return count;
    }

    private sealed record BoardPast(BoardSummary?[] Summaries, BenchCount[] Work);

    // The files that boards share, as they were on a day.
    private sealed record PastDay(
        CollectionFolder Folder,
        RunOptions Options,
        RecordsUpTo UpTo,
        Workshop Workshop,
        IReadOnlyList<Finding> Found
    )
    {
        public static PastDay Open(CollectionFolder folder, RunOptions options, DateOnly day)
        {
            var upTo = new RecordsUpTo(day);
            var then = options with { Today = day, UpTo = upTo, IsThorough = false, ForPages = false };
            var found = new List<Finding>();
            var workshop = SharedFilesRun.Load(folder, new(folder, NodeReaders.ForWorker(0), then), then, found);
            return new(folder, then, upTo, workshop, found);
        }

        public BoardJudge Judge(BoardsTogether? together, JudgeMemo memo) =>
            new(
                Workshop,
                SharedFaults.From(Workshop, together is null ? Found : Found.Concat(together.Findings)),
                Options.Today,
                Folder.Files.Pictures(Options),
                memo
            )
            {
                Pieces = together?.Pieces ?? PieceShares.None,
                Stories = StoryLinks.Instance,
            };

        // The state of each board by what all boards together show.
        public Func<BoardSummary, BoardState> Corrected(IReadOnlyList<BoardSummary> boards)
        {
            var together = BoardsTogether.Compare(Workshop, boards, Options.Today);
            string[] changed = [.. boards.Where(together.Changes).Select(board => board.Path)];
            if (changed.Length == 0)
            {
                return static board => board.State;
            }

            var anew = new BoardPass(Folder, Options, Workshop, Found, together)
                .Judge(changed, NodeReaders.ForWorker(0))
                .Select(result => result.Summary)
                .OfType<BoardSummary>()
                .ToDictionary(board => board.Path, board => board.State, StringComparer.Ordinal);
            return board => anew.TryGetValue(board.Path, out var state) ? state : board.State;
        }
    }
}
