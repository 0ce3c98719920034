using Ohmstead.Tests.Support;
using static Ohmstead.Tests.Support.TwoPeople;

namespace Ohmstead.History.Tests.Merging;

/// <summary>Git itself merges, rebases, picks and stashes records, and calls the program for it.</summary>
public sealed class GitMergeTests
{
    private const string Path = "boards/SP-0001.md";
    private static readonly string Rk = Visit("2026-11-20", "RK", "J2");
    private static readonly string Mt = Visit("2026-11-21", "MT", "J3");

    [Fact]
    public void A_merge_keeps_the_visits_of_both()
    {
        using var git = TwoBranches();
        git.Git("merge", "--quiet", "--no-edit", "mt");
        Assert.Equal(Board(Rk, Mt), git.Read(Path));
        Assert.Contains($"{Path}: merged 2 visits (RK 2026-11-20, MT 2026-11-21)", git.Said, StringComparison.Ordinal);
    }

    [Fact]
    public void A_rebase_keeps_the_visits_of_both()
    {
        using var git = TwoBranches();
        git.Git("rebase", "--quiet", "mt");
        Assert.Equal(Board(Rk, Mt), git.Read(Path));
    }

    [Fact]
    public void A_cherry_pick_and_a_revert_keep_what_is_not_theirs()
    {
        using var git = TwoBranches();
        git.Git("cherry-pick", "mt");
        Assert.Equal(Board(Rk, Mt), git.Read(Path));
        git.Git("revert", "--no-edit", "HEAD~1");
        Assert.Equal(Board(Mt), git.Read(Path));
    }

    [Fact]
    public void What_was_put_aside_comes_back_beside_what_came_meanwhile()
    {
        using var git = TwoBranches();
        git.Git("checkout", "--quiet", "mt");
        var later = Visit("2026-11-25", "MT", "J9");
        git.Write(Path, Board(Mt, later));
        git.Git("stash", "--quiet");
        git.Git("merge", "--quiet", "--no-edit", "rk");
        git.Git("stash", "pop", "--quiet");
        Assert.Equal(Board(Rk, Mt, later), git.Read(Path));
    }

    [Fact]
    public void A_conflict_is_left_between_marks_and_told_with_its_reason()
    {
        using var git = Make();
        git.Branch("rk", "main", Path, Board(Rk).Replace("J1, what: green", "J1, what: crust", StringComparison.Ordinal));
        git.Branch("mt", "main", Path, Board(Mt).Replace("J1, what: green", "J1, what: blue", StringComparison.Ordinal));
        git.Git("checkout", "--quiet", "rk");
        Assert.Equal(1, git.Run("git", "merge", "--no-edit", "mt"));
        Assert.Contains(
            "merged 2 visits (RK 2026-11-20, MT 2026-11-21); 1 conflict left\n  TS 2026-02-14: finding J1: what: ",
            git.Said,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "<<<<<<< RK 2026-11-20\n      - { at: J1, what: crust, severity: minor }\n=======\n"
                + "      - { at: J1, what: blue, severity: minor }\n>>>>>>> MT 2026-11-21\n",
            git.Read(Path),
            StringComparison.Ordinal
        );
        Assert.Contains(Mt, git.Read(Path), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("boards/a b$(touch PWNED).md")]
    [InlineData("boards/it's \"so\".md")]
    [InlineData("boards/zwei\nZeilen.md")]
    [InlineData("boards/Prüfstück `touch PWNED`.md")]
    [InlineData("boards/--size=3.md")]
    [InlineData("-x/boards/-y.md")]
    public void No_name_of_a_file_is_run(string path)
    {
        using var git = Make(path);
        git.Write("-x/.gitattributes", "boards/*.md merge=ohmstead\n");
        git.Commit("attributes");
        git.Branch("rk", "main", path, Board(Rk));
        git.Branch("mt", "main", path, Board(Mt));
        git.Git("checkout", "--quiet", "rk");
        git.Git("merge", "--quiet", "--no-edit", "mt");
        Assert.Equal(Board(Rk, Mt), git.Read(path));
        Assert.Empty(Directory.GetFiles(git.Root, "PWNED", SearchOption.AllDirectories));
    }

    [Theory]
    [InlineData(null)]
    [InlineData("exit 139")]
    [InlineData("exit 4")]
    [InlineData("kill -9 $$")]
    public void Where_the_program_is_missing_or_crashes_lines_are_merged_and_no_side_is_lost(string? program)
    {
        using var git = TwoBranches();
        if (program is null)
        {
            git.NoProgram();
        }
        else
        {
            git.Program(program);
        }

        Assert.Equal(1, git.Run("git", "merge", "--no-edit", "mt"));
        var text = git.Read(Path);
        Assert.Contains("<<<<<<< above\n", text, StringComparison.Ordinal);
        Assert.Contains(Rk.Split('\n')[0], text, StringComparison.Ordinal);
        Assert.Contains(Mt.Split('\n')[0], text, StringComparison.Ordinal);

        // What lines alone can merge, they merge.
        git.Git("merge", "--abort");
        git.Branch("story", "main", Path, Board().Replace("wet", "dry", StringComparison.Ordinal));
        git.Git("checkout", "--quiet", "rk");
        git.Git("merge", "--quiet", "--no-edit", "story");
        Assert.Equal(Board(Rk).Replace("wet", "dry", StringComparison.Ordinal), git.Read(Path));
    }

    [Fact]
    public void Branches_that_crossed_are_merged_though_what_both_began_from_holds_marks()
    {
        using var git = Make();
        var (crust, blue) = (
            Board().Replace("green", "crust", StringComparison.Ordinal),
            Board().Replace("green", "blue", StringComparison.Ordinal)
        );
        git.Branch("rk", "main", Path, crust);
        git.Branch("mt", "main", Path, blue);

        // Each takes the other in, and each decides otherwise: then both commits are what the two began from.
        git.Git("branch", "rk1", "rk");
        Assert.Equal(1, git.Run("git", "merge", "--no-edit", "rk1"));
        git.Write(Path, crust.Replace("---\n\n", Mt + "---\n\n", StringComparison.Ordinal));
        git.Commit("crust");
        git.Git("checkout", "--quiet", "rk");
        Assert.Equal(1, git.Run("git", "merge", "--no-edit", "mt~1"));
        git.Write(Path, crust.Replace("---\n\n", Rk + "---\n\n", StringComparison.Ordinal));
        git.Commit("crust too");
        git.Git("merge", "--quiet", "--no-edit", "mt");
        Assert.Equal(crust.Replace("---\n\n", Rk + Mt + "---\n\n", StringComparison.Ordinal), git.Read(Path));
    }

    [Fact]
    public void A_conflict_that_was_solved_once_is_solved_the_second_time_by_itself()
    {
        using var git = Make();
        git.Git("config", "rerere.enabled", "true");
        git.Branch("rk", "main", Path, Board(Rk).Replace("J1, what: green", "J1, what: crust", StringComparison.Ordinal));
        git.Branch("mt", "main", Path, Board(Mt).Replace("J1, what: green", "J1, what: blue", StringComparison.Ordinal));
        git.Git("checkout", "--quiet", "rk");
        Assert.Equal(1, git.Run("git", "merge", "--no-edit", "mt"));
        var solved = Board(Rk, Mt).Replace("J1, what: green", "J1, what: crust", StringComparison.Ordinal);
        git.Write(Path, solved);
        git.Commit("solved");
        git.Git("reset", "--quiet", "--hard", "HEAD~1");
        Assert.Equal(1, git.Run("git", "merge", "--no-edit", "mt"));
        Assert.Equal(solved, git.Read(Path));
    }

    [Fact]
    public void A_branch_of_many_commits_is_rebased_one_by_one()
    {
        using var git = Make();
        git.Branch("mt", "main", Path, Board(Mt));
        git.Git("checkout", "--quiet", "-b", "rk", "main");
        var visits = Enumerable
            .Range(1, TestExtent.Times(usual: 4, all: 20))
            .Select(day => Visit($"2026-10-{day:00}", "RK", $"J{day}"))
            .ToArray();
        for (var count = 1; count <= visits.Length; count++)
        {
            git.Write(Path, Board(visits[..count]));
            git.Commit($"visit {count}");
        }

        git.Git("rebase", "--quiet", "mt");
        Assert.Equal(Board([.. visits, Mt]), git.Read(Path));
    }

    private static ScratchRepository TwoBranches()
    {
        var git = Make();
        git.Branch("rk", "main", Path, Board(Rk));
        git.Branch("mt", "main", Path, Board(Mt));
        git.Git("checkout", "--quiet", "rk");
        return git;
    }
}
