using Ohmstead.Tests.Support;
using static Ohmstead.Tests.Support.TwoPeople;

namespace Ohmstead.History.Tests.Merging;

/// <summary>What is left in conflict is settled afterwards without any set-up; and the set-up is made, shown and undone.</summary>
public sealed class SettleTests
{
    private const string Path = "boards/SP-0001.md";
    private static readonly string Rk = Visit("2026-11-20", "RK", "J2");
    private static readonly string Mt = Visit("2026-11-21", "MT", "J3");

    [Fact]
    public void A_conflict_of_lines_is_settled_afterwards_and_handed_to_Git()
    {
        using var git = InConflict(Board(Rk), Board(Mt));
        Assert.Equal(0, git.Run("ohmstead", "settle"));
        Assert.Equal($"{Path}: merged 2 visits (RK 2026-11-20, MT 2026-11-21)\n", git.Said);
        Assert.Equal(Board(Rk, Mt), git.Read(Path));
        git.Git("commit", "--quiet", "--no-edit");
        git.Git("status", "--porcelain");
        Assert.Empty(git.Said);
    }

    [Fact]
    public void A_conflict_that_remains_is_told_and_not_handed_to_Git()
    {
        using var git = InConflict(
            Board(Rk).Replace("at: J1, what: green", "at: J1, what: crust", StringComparison.Ordinal),
            Board(Mt).Replace("at: J1, what: green", "at: J1, what: blue", StringComparison.Ordinal)
        );
        Assert.Equal(1, git.Run("ohmstead", "settle"));
        Assert.Contains("1 conflict left\n  TS 2026-02-14: finding J1: what:", git.Said, StringComparison.Ordinal);
        Assert.Contains(Rk + Mt, git.Read(Path), StringComparison.Ordinal);
        git.Git("ls-files", "--unmerged");
        Assert.Contains(Path, git.Said, StringComparison.Ordinal);

        // Given again it comes to the same.
        var text = git.Read(Path);
        Assert.Equal(1, git.Run("ohmstead", "settle"));
        Assert.Equal(text, git.Read(Path));
    }

    [Fact]
    public void What_somebody_has_begun_to_solve_is_left_alone()
    {
        using var git = InConflict(Board(Rk), Board(Mt));
        var begun = git.Read(Path).Replace("It came wet.", "It came wet, and we dried it.", StringComparison.Ordinal);
        git.Write(Path, begun);
        Assert.Equal(1, git.Run("ohmstead", "settle"));
        Assert.Contains("left alone: somebody has worked on it since", git.Said, StringComparison.Ordinal);
        Assert.Equal(begun, git.Read(Path));

        git.Git("checkout", "-m", "--", Path);
        Assert.Equal(0, git.Run("ohmstead", "settle"));
        Assert.Equal(Board(Rk, Mt), git.Read(Path));
    }

    [Fact]
    public void A_record_that_one_side_took_out_is_left_to_a_person()
    {
        using var git = Make();
        git.Git("config", "--remove-section", "merge.ohmstead");
        git.Branch("rk", "main", Path, Board(Rk));
        git.Git("checkout", "--quiet", "-b", "mt", "main");
        git.Git("rm", "--quiet", Path);
        git.Commit("gone");
        Assert.Equal(1, git.Run("git", "merge", "--no-edit", "rk"));
        Assert.Equal(1, git.Run("ohmstead", "settle"));
        Assert.Contains("left alone: it was taken out on one side and changed on the other", git.Said, StringComparison.Ordinal);
    }

    [Fact]
    public void Through_a_link_that_lies_in_the_place_of_a_record_nothing_is_read_or_written()
    {
        using var git = InConflict(Board(Rk), Board(Mt));
        git.Write("elsewhere.txt", "secret\n");
        File.Delete(System.IO.Path.Combine(git.Root, Path));
        File.CreateSymbolicLink(System.IO.Path.Combine(git.Root, Path), "../elsewhere.txt");
        Assert.Equal(1, git.Run("ohmstead", "settle"));
        Assert.Equal($"{Path}: left alone: a link lies in its place; a record is a file\n", git.Said);
        Assert.Equal("secret\n", git.Read("elsewhere.txt"));
    }

    [Fact]
    public void What_a_run_merged_that_was_ended_before_it_told_Git_is_handed_over_by_the_next()
    {
        using var git = InConflict(Board(Rk), Board(Mt));
        git.Write(Path, Board(Rk, Mt));
        Assert.Equal((0, $"{Path}: merged 2 visits (RK 2026-11-20, MT 2026-11-21)\n"), (git.Run("ohmstead", "settle"), git.Said));
        Assert.Empty(git.Git("ls-files", "--unmerged"));
    }

    [Fact]
    public void Nothing_of_the_settings_of_a_repository_is_started_and_what_a_hook_was_told_is_not_believed()
    {
        using var git = InConflict(Board(Rk), Board(Mt));
        using var other = ScratchRepository.Empty();
        var (script, marker) = (git.At(".git/touch.sh"), git.At(".git/marker"));
        ScratchRepository.Script(script, $"touch '{marker}'");
        foreach (var hook in new[] { "post-index-change", "pre-commit", "post-checkout", "reference-transaction" })
        {
            ScratchRepository.Script(git.At(".git/hooks/" + hook), $"touch '{marker}'");
        }

        git.Write(".git/info/attributes", "*.md diff=x\n");
        foreach (var key in new[] { "core.pager", "diff.external", "diff.x.textconv", "core.editor", "core.fsmonitor" })
        {
            git.Git("config", key, script);
        }

        Assert.False(File.Exists(marker));
        string[] told = [$"GIT_DIR={other.At(".git")}", $"GIT_WORK_TREE={other.Root}", $"GIT_INDEX_FILE={other.At(".git/index")}"];
        Assert.Equal(0, git.Run("env", [.. told, "ohmstead", "settle"]));
        Assert.Equal($"{Path}: merged 2 visits (RK 2026-11-20, MT 2026-11-21)\n", git.Said);
        Assert.False(File.Exists(marker));
    }

    [Fact]
    public void Where_nothing_is_in_conflict_that_is_told()
    {
        using var git = Make();
        Assert.Equal((0, "nothing is in conflict\n"), (git.Run("ohmstead", "settle"), git.Said));
    }

    [Fact]
    public void Outside_of_a_repository_it_is_a_wrong_command_line()
    {
        using var folder = CollectionCopy.Empty();
        var run = Run.Of("settle", "--path", "boards/SP-0001.md", "a", "b");
        Assert.Equal((2, "three files are merged: that of before, that of the first, that of the second\n"), (run.Exit, run.Error));
        Assert.Equal(2, Run.Of("settle", "--check", "--undo").Exit);
        Assert.Equal(2, Run.Of("settle", "a", "b", "c").Exit);
        Assert.Equal(2, Run.Of("settle", "a", "b", "c", "--path", "notes.txt").Exit);
        Assert.Equal(3, Run.Of("settle", folder.At("a"), folder.At("b"), folder.At("c"), "--path", "boards/a.md").Exit);
    }

    [Fact]
    public void The_set_up_is_made_shown_and_undone()
    {
        using var git = Make();
        Assert.Equal(0, git.Run("ohmstead", "settle", "--set-up", "--check"));
        Assert.Contains("set up: merge.ohmstead.driver = sh -c '", git.Said, StringComparison.Ordinal);
        Assert.EndsWith(" ohmstead %O %A %B %L %P\n", git.Said, StringComparison.Ordinal);

        Assert.Equal(0, git.Run("ohmstead", "settle", "--set-up", "--undo"));
        Assert.Equal(1, git.Run("git", "config", "--local", "--get-regexp", "^merge\\.ohmstead"));
        Assert.Equal(1, git.Run("ohmstead", "settle", "--set-up", "--check"));
        Assert.Contains("not set up in this clone", git.Said, StringComparison.Ordinal);
        Assert.Equal((0, "nothing is set up in this clone\n"), (git.Run("ohmstead", "settle", "--set-up", "--undo"), git.Said));

        git.Write(".gitattributes", "* text=auto\n");
        Assert.Equal(1, git.Run("ohmstead", "settle", "--set-up"));
        Assert.Contains("  boards/*.md merge=ohmstead\n", git.Said, StringComparison.Ordinal);
    }

    [Fact]
    public void What_a_new_collection_begins_with_merges_its_records_so()
    {
        using var git = Make();
        Assert.Equal(
            0,
            Run.Of("start", "collection", System.IO.Path.Combine(git.Root, "new"), "--name", "Fog signals", "--as-of", "2026-11-25").Exit
        );
        git.Git(
            "check-attr",
            "merge",
            "--",
            "new/boards/F-1.md",
            "new/designs/a.md",
            "new/stock.yaml",
            "new/instruments.yaml",
            "new/README.md"
        );
        Assert.Equal(
            "new/boards/F-1.md: merge: ohmstead\nnew/designs/a.md: merge: ohmstead\nnew/stock.yaml: merge: ohmstead\n"
                + "new/instruments.yaml: merge: ohmstead\nnew/README.md: merge: unspecified\n",
            git.Said
        );
    }

    private static ScratchRepository InConflict(string rk, string mt)
    {
        var git = Make();
        git.Git("config", "--remove-section", "merge.ohmstead");
        git.Branch("rk", "main", Path, rk);
        git.Branch("mt", "main", Path, mt);
        git.Git("checkout", "--quiet", "rk");
        Assert.Equal(1, git.Run("git", "merge", "--no-edit", "mt"));
        return git;
    }
}
