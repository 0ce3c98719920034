using Ohmstead.Tests.Support;
using static Ohmstead.Tests.Support.TwoPeople;

namespace Ohmstead.Machine.Tests.Faults;

/// <summary>A merge of records whose program, or whose git, is killed at some call of the system: each record is the old one or the new
/// one, whole; no side is lost; the index can be used; and settling again finishes.</summary>
public sealed class SettleFaultTests
{
    private const string Path = "boards/SP-0001.md";
    private const string Second = "boards/SP-0002.md";
    private static readonly string Rk = Visit("2026-11-20", "RK", "J2");
    private static readonly string Mt = Visit("2026-11-21", "MT", "J3");

    // As the system knows it, which is the host of the program where that is not linked ahead of time.
    private static string Program => System.IO.Path.GetFileName(Child.Program.Split(' ')[0]);

    /// <summary>Who is killed, and whether before or after the call.</summary>
    public static TheoryData<bool, CallError> Kills { get; } =
        new()
        {
            { false, CallError.KilledBefore },
            { false, CallError.KilledAfter },
            { true, CallError.KilledBefore },
            { true, CallError.KilledAfter },
        };

    [Theory]
    [MemberData(nameof(Kills))]
    public async Task Killed_while_it_settles_what_is_in_conflict_it_finishes_the_second_time(bool isGit, CallError error)
    {
        Assert.SkipUnless(TestExtent.IsAll || (isGit, error) is (false, CallError.KilledAfter), TestExtent.LeftOut);
        Assert.SkipWhen(FaultLibrary.Path is null, FaultLibrary.Missing);
        using var git = Branches();
        git.Git("config", "--remove-section", "merge.ohmstead");
        Assert.Equal(1, git.Run("git", "merge", "--no-edit", "mt"));
        using var begun = KeptFolder.Of(git.Root);
        var old = git.Read(Path);
        var watched = new WatchedProgram(Child.Program, git.Root) { Of = isGit ? "git" : Program };
        var whole = await SettleAsync(watched, git);
        Assert.True(whole.Run.Exit == 0, whole.Run.Error);
        var made = git.Read(Path);
        Assert.Equal(Board(Rk, Mt), made);

        var reached = 0;
        foreach (var at in Moments.Of(whole.Count(CallKind.Any), usual: 3, all: 12))
        {
            begun.PutBack();
            var run = await SettleAsync(watched, git, new(CallKind.Any, at, error));
            var words = $"{watched.Of} {error} at {at}: exit {run.Run.Exit}\n{run.Run.Out}{run.Run.Error}";
            reached += run.IsFaultReached ? 1 : 0;
            AreOldOrNew(git, [old], made, words);
            Assert.True(!isGit || run.Run.Exit is 0 or 1 or 2 or 3, words);

            // Git, when it is killed, leaves its own lock, and says so to whoever comes next.
            if (File.Exists(git.At(".git/index.lock")))
            {
                Assert.True(isGit, words);
                var told = await SettleAsync(watched, git);
                Assert.True(told.Run.Exit == 1 && told.Run.Error.Contains("index.lock", StringComparison.Ordinal), told.Run.Error);
                AreOldOrNew(git, [old], made, words);
                File.Delete(git.At(".git/index.lock"));
            }

            IsFinished(git, made, words);
        }

        Assert.True(reached > 0, "no run was killed");
    }

    [Theory]
    [InlineData(CallError.KilledBefore)]
    [InlineData(CallError.KilledAfter)]
    public async Task Killed_while_Git_merges_it_loses_no_side_and_settling_finishes(CallError error)
    {
        Assert.SkipUnless(TestExtent.IsAll || error is CallError.KilledAfter, TestExtent.LeftOut);
        Assert.SkipWhen(FaultLibrary.Path is null, FaultLibrary.Missing);
        using var git = Branches();
        using var begun = KeptFolder.Of(git.Root);
        var watched = new WatchedProgram(Child.Program, git.Root) { Of = Program };
        var whole = await MergeAsync(watched, git);
        Assert.True(whole.Run.Exit == 0, whole.Run.Error);
        var made = git.Read(Path);
        Assert.Equal(Board(Rk, Mt), made);

        var reached = 0;
        foreach (var at in Moments.Of(whole.Count(CallKind.Any), usual: 3, all: 12))
        {
            begun.PutBack();
            var run = await MergeAsync(watched, git, new(CallKind.Any, at, error));
            var words = $"{error} at {at}: exit {run.Run.Exit}\n{run.Run.Out}{run.Run.Error}";
            reached += run.IsFaultReached ? 1 : 0;
            foreach (var path in new[] { Path, Second })
            {
                foreach (var line in (Rk + Mt).Split('\n').Where(line => line.Length > 0))
                {
                    Assert.True(git.Read(path).Split('\n').Contains(line), $"{words}{path} has lost '{line}':\n{git.Read(path)}");
                }
            }

            git.Git("status", "--porcelain", "--untracked-files=all");
            Assert.False(git.Said.Contains("??", StringComparison.Ordinal), $"{words}{git.Said}");
            IsFinished(git, made, words);
        }

        Assert.True(reached > 0, "no run was killed");
    }

    // Two boards on which two people entered something each.
    private static ScratchRepository Branches()
    {
        var git = Make();
        git.Write(Second, Of2(Board()));
        git.Commit("two boards");
        foreach (var (name, visit) in new[] { ("rk", Rk), ("mt", Mt) })
        {
            git.Git("checkout", "--quiet", "-b", name, "main");
            git.Write(Path, Board(visit));
            git.Write(Second, Of2(Board(visit)));
            git.Commit(name);
        }

        git.Git("checkout", "--quiet", "rk");
        return git;
    }

    private static string Of2(string board) => board.Replace("SP-0001", "SP-0002", StringComparison.Ordinal);

    private static void AreOldOrNew(ScratchRepository git, string[] old, string made, string words)
    {
        foreach (var path in new[] { Path, Second })
        {
            var now = git.Read(path).Replace("SP-0002", "SP-0001", StringComparison.Ordinal);
            Assert.True(now == made || old.Contains(now), $"{words}{path} is neither what it was nor what it was to become:\n{now}");
        }
    }

    private static void IsFinished(ScratchRepository git, string made, string words)
    {
        Assert.True(git.Run("git", "ls-files", "--stage") == 0, words + git.Said);
        Assert.True(git.Run("ohmstead", "settle") == 0, words + git.Said);
        Assert.Equal((made, Of2(made)), (git.Read(Path), git.Read(Second)));
        git.Git("ls-files", "--unmerged");
        Assert.True(git.Said.Length == 0, words + git.Said);
        Assert.Empty(Directory.GetFiles(git.At("boards"), ".*"));
        git.Commit("merged");
        Assert.Empty(git.Git("status", "--porcelain"));
    }

    private static Task<WatchedRun> SettleAsync(WatchedProgram watched, ScratchRepository git, SystemFault? fault = null) =>
        watched.ShellAsync("exec $ohmstead settle", fault, Told(git));

    private static Task<WatchedRun> MergeAsync(WatchedProgram watched, ScratchRepository git, SystemFault? fault = null) =>
        watched.ShellAsync("exec git merge --no-edit mt", fault, Told(git));

    private static (string Name, string Value)[] Told(ScratchRepository git) =>
        [.. git.Environment("2026-11-20").Where(one => one.Value is not null).Select(one => (one.Name, one.Value!))];
}
