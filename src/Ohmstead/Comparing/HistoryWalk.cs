using System.Collections.Immutable;
using Ohmstead.Assessment.Changes;

namespace Ohmstead.Comparing;

/// <summary>Where the records of boards lay, commit by commit backwards, and what each commit changed of them.</summary>
/// <param name="boards">The paths of the records as they lie.</param>
internal sealed class HistoryWalk(IReadOnlyList<string> boards)
{
    private readonly Dictionary<string, List<HistoryStep>> steps = boards.ToDictionary(path => path, _ => new List<HistoryStep>());
    private readonly Dictionary<string, HashSet<string>> allPaths = boards.ToDictionary(path => path, path => new HashSet<string> { path });
    private CommitNote? end;

    /// <summary>Where the records lay at this point, each with where it lies now. Boards that had not come yet are not in it.</summary>
    public IReadOnlyDictionary<string, string> Paths { get; private set; } = boards.ToDictionary(path => path, path => path);

    /// <summary>Whether no board had come before this point.</summary>
    public bool IsDone => Paths.Count == 0;

    /// <summary>All paths at which the record of a board ever lay.</summary>
    public IReadOnlySet<string> AllPathsOf(string board) => allPaths[board];

    /// <summary>Adds what a commit changed, and goes back to before it.</summary>
    /// <param name="commit">The commit; null for what was not committed.</param>
    /// <param name="changes">What differs of boards.</param>
    /// <param name="pairs">The records before and after it.</param>
    public void Add(CommitNote? commit, ImmutableArray<BoardChanges> changes, IReadOnlyList<BoardPair> pairs)
    {
        foreach (var board in changes)
        {
            if (board.Now is { } path && Paths.TryGetValue(path, out var now))
            {
                steps[now].Add(new(commit, board));
            }
        }

        var earlier = new Dictionary<string, string>();
        foreach (var pair in pairs)
        {
            if (pair.Now is { } path && Paths.TryGetValue(path, out var now) && pair.Was is { } was)
            {
                earlier[was] = now;
                allPaths[now].Add(was);
            }
        }

        Paths = earlier;
    }

    /// <summary>Ends where the history of this clone begins.</summary>
    public void EndAt(CommitNote commit) => end = commit;

    /// <summary>What was found of each board, by the path of its record as it lies.</summary>
    /// <param name="origins">Tells the number of a board and who first wrote its entries.</param>
    public IReadOnlyDictionary<string, CommitHistory> Histories(Func<string, (string Number, ImmutableArray<EntryOrigin> Entries)> origins)
    {
        var open = Paths.Values.ToHashSet();
        return steps.ToDictionary(
            pair => pair.Key,
            pair =>
            {
                var (number, entries) = origins(pair.Key);
                return new CommitHistory(number, [.. pair.Value], entries, open.Contains(pair.Key) ? end : null);
            }
        );
    }
}
