using System.Collections.Immutable;
using Ohmstead.Assessment.Changes;
using Ohmstead.Collections;
using Ohmstead.Git;
using Ohmstead.Records.Binding;
using Ohmstead.Records.Entries;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Shapes;
using Ohmstead.Records.Text;
using Ohmstead.Yaml;

namespace Ohmstead.Comparing;

/// <summary>Finds who first wrote what stands in the record of a board, on whatever branch that was.</summary>
/// <param name="lying">Reads the files as they lie.</param>
/// <param name="objects">The contents of the repository.</param>
/// <param name="limits">How much of a file is read.</param>
internal sealed class EntryOrigins(FileReader lying, GitObjects objects, ReadingLimits limits)
{
    private readonly INodeReader nodes = NodeReaders.ForWorker(0);

    /// <summary>The number of a board, and who first wrote its entries of days.</summary>
    /// <param name="board">The path of the record as it lies.</param>
    /// <param name="paths">All paths at which it lay.</param>
    /// <param name="commits">All commits, each after its parents.</param>
    /// <param name="line">Those along first parents, the latest first.</param>
    public (string Number, ImmutableArray<EntryOrigin> Entries) Find(
        string board,
        IReadOnlySet<string> paths,
        IReadOnlyList<GitCommit> commits,
        IReadOnlyList<GitCommit> line
    )
    {
        var text = lying.Read(board, FileForm.Markdown);
        if (text.Root is not { } root || FileBinding.Board(board, text).File is not { } record)
        {
            return (Path.GetFileNameWithoutExtension(board), []);
        }

        var entries = RecordEntries.List(root, FileShapes.Board);
        var held = new Dictionary<string, Held>(StringComparer.Ordinal);
        Version[] Versions(IReadOnlyList<GitCommit> of) =>
            [
                .. of.SelectMany(commit =>
                    commit
                        .Files.Where(file => file.Now is not null && paths.Contains(file.Path))
                        .Select(file => new Version(commit, Look(entries, file.Now!, held)))
                ),
            ];
        var (all, main) = (Versions(commits), Versions(line));
        return (record.Id.Value, [.. entries.Where(entry => entry.Day is not null).Select(entry => Origin(entry, all, main))]);
    }

    // The commit that first said it so; unless it said something else in between, for then it stands since it was put back.
    private static EntryOrigin Origin(RecordEntry entry, Version[] all, Version[] main)
    {
        var first = Array.Find(all, version => version.Holds.There.Contains(entry.Spot));
        var same = Array.Find(all, version => version.Holds.Same.Contains(entry.Spot));
        var run = main.TakeWhile(version => version.Holds.Same.Contains(entry.Spot)).ToArray();
        var isPutBack = run.Length > 0 && main.Skip(run.Length).Any(version => version.Holds.Same.Contains(entry.Spot));
        var since =
            run.Length == 0 ? null
            : isPutBack ? run[^1]
            : same;
        return new(entry, first is null ? null : HistoryRun.Note(first.Commit), since is null ? null : HistoryRun.Note(since.Commit));
    }

    private Held Look(ImmutableArray<RecordEntry> entries, string content, Dictionary<string, Held> held)
    {
        if (held.TryGetValue(content, out var known))
        {
            return known;
        }

        if (
            objects.Read(content, limits.FileBytes).Bytes is not { } bytes
            || nodes.Read("board", bytes, FileForm.Markdown, limits).Root is not { } root
        )
        {
            return held[content] = new([], []);
        }

        var compared = EntryComparer.Compare(RecordEntries.List(root, FileShapes.Board), entries);
        var other = compared.Differences.Where(one => one.Now is not null).Select(one => one.Now!.Spot).ToHashSet();
        HashSet<Spot> there = [.. compared.Earlier.Keys];
        return held[content] = new(there, [.. there.Where(spot => !other.Contains(spot))]);
    }

    // What an earlier record holds of what stands there now: said in whatever words, and said in the same.
    private sealed record Held(HashSet<Spot> There, HashSet<Spot> Same);

    private sealed record Version(GitCommit Commit, Held Holds);
}
