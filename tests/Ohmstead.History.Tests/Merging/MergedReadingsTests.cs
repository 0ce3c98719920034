using Ohmstead.Tests.Support;
using static Ohmstead.Tests.Support.TwoPeople;

namespace Ohmstead.History.Tests.Merging;

/// <summary>Whichever way Git brings two people's visits together, both stay, and no reading gets another day, another person, another
/// instrument or another temperature.</summary>
public sealed class MergedReadingsTests
{
    private const string Path = "boards/SP-0001.md";

    // Two people in one week of November. On the 20th both were there; RK came back in the evening with another instrument, and entered
    // something on MT's machine on the 22nd.
    private static readonly string Morning = Reading("2026-11-20", "RK", "bridge-1", "18 °C", "C1", "capacitance: 46.1 µF");
    private static readonly string Evening = Reading("2026-11-20", "RK", "meter-2", "23 °C", "C1", "capacitance: 45.2 µF");
    private static readonly string Next = Reading("2026-11-22", "RK", "bridge-1", "19 °C", "R1", "resistance: 4.69 kΩ");
    private static readonly string Same = Reading("2026-11-20", "MT", "meter-1", "21 °C", "C1", "capacitance: 47.3 µF");
    private static readonly string Elsewhere = Reading("2026-11-22", "RK", "meter-2", "25 °C", "R2", "resistance: 1.02 kΩ");
    private static readonly string Between = Reading("2026-11-21", "MT", "bridge-2", "16 °C", "C2", "capacitance: 98.4 nF");

    [Fact]
    public void In_a_merge()
    {
        using var git = Week();
        git.Git("merge", "--quiet", "--no-edit", "mt");
        HoldsBoth(git);
    }

    [Fact]
    public void In_a_rebase_of_three_commits()
    {
        using var git = Week();
        git.Git("rebase", "--quiet", "mt");
        HoldsBoth(git);
        Assert.Equal("3", git.Git("rev-list", "--count", "mt..rk").Trim());

        // Each commit of the three brings one visit, and what was there before stays.
        foreach (var (back, visits) in new[] { (2, new[] { Morning }), (1, [Morning, Evening]) })
        {
            AreThere(git.Git("show", $"rk~{back}:{Path}"), [.. visits, Same, Between, Elsewhere]);
        }
    }

    [Fact]
    public void In_a_cherry_pick_of_three_commits()
    {
        using var git = Week();
        git.Git("checkout", "--quiet", "mt");
        git.Git("cherry-pick", "main..rk");
        HoldsBoth(git);
    }

    [Fact]
    public void When_what_was_put_aside_comes_back()
    {
        using var git = Week();
        git.Git("checkout", "--quiet", "-b", "aside", "main");
        git.Write(Path, Board(Morning, Evening, Next));
        git.Git("stash", "--quiet");
        git.Git("merge", "--quiet", "--ff-only", "mt");
        git.Git("stash", "pop", "--quiet");
        HoldsBoth(git);
    }

    [Fact]
    public void In_a_revert_of_what_the_other_did_not_touch()
    {
        using var git = Week();
        git.Git("merge", "--quiet", "--no-edit", "mt");
        git.Git("revert", "--no-edit", "HEAD^1~1");
        AreThere(git.Read(Path), [Morning, Next, Same, Between, Elsewhere]);
    }

    // Git asks no program in a merge of several branches at once: lines are merged, and what lines cannot merge is settled afterwards.
    [Fact]
    public void In_a_merge_of_two_branches_at_once()
    {
        using var git = Week();
        git.Git("checkout", "--quiet", "-b", "octopus", "main");
        git.Write("boards/SP-0002.md", Board().Replace("SP-0001", "SP-0002", StringComparison.Ordinal));
        git.Commit("another board");
        Assert.NotEqual(0, git.Run("git", "merge", "--no-edit", "rk", "mt"));
        Assert.Equal(0, git.Run("ohmstead", "settle"));
        HoldsBoth(git);
        git.Git("commit", "--quiet", "--no-edit");
        Assert.Equal(4, git.Git("rev-list", "--parents", "-1", "HEAD").Split(' ').Length);
    }

    [Fact]
    public void Where_Git_gives_up_a_merge_of_three_branches_nothing_is_lost_and_one_after_the_other_they_are_merged()
    {
        using var git = Week();
        var third = Reading("2026-11-23", "TS", "meter-1", "20 °C", "C1", "capacitance: 46.0 µF");
        git.Branch("ts", "main", Path, Board(third));
        git.Git("checkout", "--quiet", "-b", "octopus", "main");
        git.Write("boards/SP-0002.md", Board().Replace("SP-0001", "SP-0002", StringComparison.Ordinal));
        git.Commit("another board");
        Assert.NotEqual(0, git.Run("git", "merge", "--no-edit", "rk", "mt", "ts"));
        Assert.Equal(Board(), git.Read(Path));
        Assert.Empty(git.Git("status", "--porcelain"));
        foreach (var branch in new[] { "rk", "mt", "ts" })
        {
            git.Git("merge", "--quiet", "--no-edit", branch);
        }

        AreThere(git.Read(Path), [Morning, Evening, Next, Same, Between, Elsewhere, third]);
    }

    // Each a branch of one board: RK with three commits, MT with two; RK's is checked out.
    private static ScratchRepository Week()
    {
        var git = Make();
        foreach (var (name, visits) in new[] { ("mt", new[] { Same, Between, Elsewhere }), ("rk", [Morning, Evening, Next]) })
        {
            git.Git("checkout", "--quiet", "-b", name, "main");
            for (var count = 1; count <= visits.Length; count++)
            {
                git.Write(Path, Board(visits[..count]));
                git.Commit($"{name} {count}");
            }
        }

        return git;
    }

    private static void HoldsBoth(ScratchRepository git) => AreThere(git.Read(Path), [Morning, Evening, Next, Same, Between, Elsewhere]);

    // Each visit to the letter, each once and nothing besides, in order of day; and said is what each says by itself.
    private static void AreThere(string text, string[] visits)
    {
        Assert.All(visits, visit => Assert.Equal(2, text.Split(visit).Length));
        Assert.Equal(Board(visits).Length, text.Length);
        var days = text.Split('\n').Where(line => line.StartsWith("  - date: ", StringComparison.Ordinal)).ToArray();
        Assert.Equal(days.Order(StringComparer.Ordinal), days);
        var alone = visits.SelectMany(visit => SaidEntries.Of(Path, Board(visit))).Distinct(StringComparer.Ordinal);
        Assert.Equal(alone.Order(StringComparer.Ordinal), SaidEntries.Of(Path, text));
    }

    private static string Reading(string day, string by, string instrument, string warmth, string part, string figure) =>
        $"  - date: {day}\n    by: {by}\n    temperature: {warmth}\n    instrument: {instrument}\n    readings:\n"
        + $"      - {{ part: {part}, circuit: out, {figure} }}\n";
}
