using Ohmstead.Assessment.Changes;
using Ohmstead.Collections;
using Ohmstead.Electronics;
using Ohmstead.Git;
using Ohmstead.Yaml;

#pragma warning disable CA2000 // A state that is opened here holds nothing of its own: its contents are of whoever opened them.
namespace Ohmstead.Comparing;

/// <summary>
/// Goes back through the commits of a collection along first parents and tells of boards what each changed: both states are judged on the
/// day of the commit, so that what differs follows from it and not from the time between.
/// </summary>
/// <remarks>A commit that was merged in counts as part of the merge; who first wrote an entry is told by the commit that wrote
/// it.</remarks>
/// <param name="git">The repository.</param>
/// <param name="objects">Its contents.</param>
/// <param name="lying">The files as they lie.</param>
/// <param name="options">How records are read and judged; the day is that of the files as they lie.</param>
internal sealed class HistoryRun(GitRepository git, GitObjects objects, ComparedSide lying, RunOptions options)
{
    private readonly RevisionOpener opener = new(git, objects);

    /// <summary>The histories of boards, by the paths of their records as they lie; or why they cannot be had.</summary>
    /// <param name="boards">The paths of the records.</param>
    /// <param name="isAll">True where these are all boards of the collection.</param>
    public Outcome<IReadOnlyDictionary<string, CommitHistory>> Run(IReadOnlyList<string> boards, bool isAll)
    {
        if (!git.FirstParents().Is(out var commits, out var why) || !git.ParentsFirst().Is(out var all, out why))
        {
            return Outcome<IReadOnlyDictionary<string, CommitHistory>>.Refused(why);
        }

        if (!opener.Open("HEAD", "HEAD").Is(out var head, out why))
        {
            return Outcome<IReadOnlyDictionary<string, CommitHistory>>.Refused(why);
        }

        var walk = new HistoryWalk(boards);
        Compare(walk, (head, lying), null, options.Today, isAll);
        var filter = isAll ? null : new HistoryFilter(objects, options.Limits);
        filter?.LookFor(walk.Paths.Keys, head);
        foreach (var commit in commits)
        {
            if (walk.IsDone)
            {
                break;
            }

            if (commit.Parents.Count == 0 && git.IsShallow)
            {
                walk.EndAt(Note(commit));
                break;
            }

            if (filter?.Touches(commit, walk.Paths) == false)
            {
                continue;
            }

            if (!opener.Open(commit.Id, commit.Id).Is(out var now, out why) || !Before(commit).Is(out var was, out why))
            {
                return Outcome<IReadOnlyDictionary<string, CommitHistory>>.Refused(why);
            }

            Compare(walk, (was, now), Note(commit), commit.Day, isAll);
            filter?.LookFor(walk.Paths.Keys, was);
        }

        var origins = new EntryOrigins(new(lying.Folder, NodeReaders.ForWorker(0), options), objects, options.Limits);
        return Outcome<IReadOnlyDictionary<string, CommitHistory>>.From(
            walk.Histories(board => origins.Find(board, walk.AllPathsOf(board), all, commits))
        );
    }

    /// <summary>A commit as it is told.</summary>
    public static CommitNote Note(GitCommit commit) => new(commit.Id, commit.Day, commit.Who, commit.Subject, commit.Parents.Count > 1);

    private Outcome<ComparedSide> Before(GitCommit commit)
    {
        var parent = commit.Parents.Count == 0 ? null : commit.Parents[0];
        return opener.Open(parent ?? "before", parent);
    }

    private void Compare(HistoryWalk walk, (ComparedSide Was, ComparedSide Now) sides, CommitNote? commit, DateOnly day, bool isAll)
    {
        var run = new ChangesRun(sides.Was, sides.Now, options with { Today = day }, day)
        {
            Only = isAll ? null : pair => pair.Now is { } path && walk.Paths.ContainsKey(path),
        };
        var (changes, pairs) = run.RunWithPairs();
        walk.Add(commit, changes.Boards, pairs);
    }
}
