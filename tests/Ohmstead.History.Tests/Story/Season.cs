using Ohmstead.Tests.Support;

namespace Ohmstead.History.Tests.Story;

/// <summary>A collection of one board in a repository in which two restorers work on branches, and a keeper takes them in.</summary>
internal sealed class Season : IDisposable
{
    private const string Keeper = "TS";
    private readonly ScratchRepository git = ScratchRepository.Empty();

    /// <summary>The board.</summary>
    public const string Board = "SP-0021";

    /// <summary>The collection as the keeper begins it: a clock with a reservoir, a resistor and a rail, a bridge and a meter.</summary>
    public static Season Begin(string day)
    {
        Assert.SkipUnless(OperatingSystem.IsLinux() || OperatingSystem.IsMacOS(), "a script is put into the path as a shell runs it");
        var made = new Season();
        made.git.Program($"exec {Child.Program} \"$@\"");
        Typed("start", "collection", made.git.Root, "--name", "Saltmarsh Point weather collection", "--as-of", day);
        File.Delete(made.git.At("boards/SP-0001.md"));
        made.Types(day, "start", "board", Board, "--name", "Rain gauge clock", "--from", "lookout hut", "--complaint", "stops at night");
        made.Types(day, "add", "part", Board, "C1", "aluminium electrolytic", "2200uF", "20%", "35V", "85C", "role=reservoir");
        made.Types(day, "add", "part", Board, "R1", "carbon film resistor", "4.7kohm", "5%");
        made.Types(day, "add", "point", Board, "+12V", "12V", "5%");
        made.git.Write(
            "instruments.yaml",
            """
            instruments:
              - id: bridge-1
                what: component bridge, four digits
                calibrations:
                  - { date: 2026-02-09, valid: 12 months }
                accuracy:
                  - { measures: capacitance, error: 1 %, digits: 3, step: 1 µF, up_to: 20000 µF }
                  - { measures: esr, error: 1 %, digits: 3, step: 1 mΩ, up_to: 100 Ω }
              - id: meter-1
                what: multimeter, four digits
                calibrations:
                  - { date: 2025-06-01, valid: 12 months }
                accuracy:
                  - { measures: voltage, error: 0.1 %, digits: 2, step: 0.01 V, up_to: 100 V }
                  - { measures: resistance, error: 0.5 %, digits: 2, step: 1 Ω, up_to: 10 kΩ }
            format: 1

            """
        );
        Assert.Equal(0, made.git.Run("ohmstead", "settle", "--set-up"));
        made.Commits(day, Keeper, "the rain gauge clock came");
        return made;
    }

    /// <summary>Begins a branch where the main one stands.</summary>
    public void Branches(string name) => git.Git("checkout", "--quiet", "-b", name, "main");

    /// <summary>Types a command that writes.</summary>
    public void Types(string day, params string[] words) => Typed([.. words, "--in", git.Root, "--as-of", day]);

    /// <summary>Puts words in the place of others, as an editor does.</summary>
    public void Writes(string path, string old, string @new) => git.Replace(path, old, @new);

    /// <summary>Takes back what was written and not committed.</summary>
    public void TakesBack() => git.Git("checkout", "--quiet", "--", ".");

    /// <summary>Commits all that was written.</summary>
    public void Commits(string day, string by, string message)
    {
        git.By = by;
        git.Commit(message, day);
        git.By = Keeper;
    }

    /// <summary>Puts a branch on top of the main one.</summary>
    public void Rebases(string branch) => git.Git("rebase", "--quiet", "main", branch);

    /// <summary>The keeper takes a branch in, as a host does with a pull request.</summary>
    public void TakesIn(string day, string branch)
    {
        git.Git("checkout", "--quiet", "main");
        git.On(day, "merge", "--quiet", "--no-ff", "--message", $"take in {branch}", branch);
    }

    /// <summary>What a check says of the records, and of what was committed before; and how it ends.</summary>
    /// <param name="day">Today.</param>
    /// <param name="since">The commit before.</param>
    public Run Checks(string day, string since = "HEAD^1") => Run.Of("check", git.Root, "--since", since, "--as-of", day);

    /// <summary>What the last commit of the main branch changed.</summary>
    public string Changed(string day) => Told("changes", "HEAD^1", "--in", git.Root, "--as-of", day);

    /// <summary>How the boards stand.</summary>
    public string Boards(params string[] day) => Told(["boards", "--in", git.Root, .. day]);

    /// <summary>What a check says on a day of the past.</summary>
    public string Check(params string[] day) => Told(["check", git.Root, .. day]);

    /// <summary>The lines on which its visits begin.</summary>
    public string[] Bench =>
        [.. git.Read($"boards/{Board}.md").Split('\n').Where(line => line.StartsWith("  - date: ", StringComparison.Ordinal))];

    /// <inheritdoc/>
    public void Dispose() => git.Dispose();

    private static void Typed(params string[] words) => Told(words);

    private static string Told(params string[] words)
    {
        var run = Run.Of(words);
        Assert.True(run.Exit == 0, $"{string.Join(' ', words)}: {run.Out}{run.Error}");
        return run.Out;
    }
}
