using Ohmstead.Disk;
using Ohmstead.Git;
using Ohmstead.Running;

namespace Ohmstead.Merging;

/// <summary>The lines of a repository's own settings by which Git calls this program to merge records: written, shown, taken out.</summary>
/// <remarks>
/// They stand in one clone alone: a program that Git starts is named by the person whose machine it is, and never by what was cloned.
/// Which files are merged so is said by <c>.gitattributes</c>, which comes with the records.
/// </remarks>
internal sealed class DriverSetUp(Terminal terminal, string top)
{
    /// <summary>The name under which it stands in the settings and in .gitattributes.</summary>
    public const string Name = "ohmstead";

    /// <summary>The lines of .gitattributes.</summary>
    public static readonly string[] Attributes =
    [
        "boards/*.md merge=ohmstead",
        "designs/*.md merge=ohmstead",
        "/stock.yaml merge=ohmstead",
        "/instruments.yaml merge=ohmstead",
        "/collection.yaml merge=ohmstead",
    ];

    private const string Key = $"merge.{Name}.driver";

    // Git leaves one side without marks where a driver is missing or crashes, and it looks finished: so the line itself merges by lines
    // then, and takes away what a killed run left beside the file, whose name nobody else knows. Git puts the path in quotes of its own; in
    // double quotes a file name would be run.
    private static readonly string Line =
        "sh -c '\"$0\" settle \"$1\" \"$2\" \"$3\" --size=\"$4\" --path=\"$5\"; s=$?; [ $s -le 1 ] && exit $s; "
        + $"rm -f \"./{WholeFile.Waiting("$2")}\"; "
        + "git merge-file --marker-size=\"$4\" -L above -L before -L below \"$2\" \"$1\" \"$3\"; [ $? -eq 0 ] && exit 0; exit 1' ";

    private readonly GitProcess git = new(top);

    private static string Wanted => $"{Line}{Program()} %O %A %B %L %P";

    /// <summary>Writes them.</summary>
    public int Make()
    {
        Set($"merge.{Name}.name", "records of boards, by their entries");
        Set(Key, Wanted);
        terminal.Out.WriteLine(Printable.Escape($"written into the settings of this clone: {Key} = {Wanted}"));
        terminal.Out.WriteLine(
            "merge, rebase, cherry-pick and stash now merge records by their entries; to take it out: ohmstead settle --undo"
        );
        return TellAttributes() ? ExitCode.Clean : ExitCode.Findings;
    }

    /// <summary>Tells how it stands.</summary>
    public int Tell()
    {
        var (exit, text) = Configured();
        var words =
            exit != 0 ? "not set up in this clone: Git merges records line by line; ohmstead settle --set-up"
            : text == Wanted ? $"set up: {Key} = {text}"
            : $"set up in another way than this version does it, {Key} = {text}; ohmstead settle --set-up writes it anew";
        terminal.Out.WriteLine(Printable.Escape(words));
        return TellAttributes() && exit == 0 && text == Wanted ? ExitCode.Clean : ExitCode.Findings;
    }

    /// <summary>Takes them out.</summary>
    public int Undo()
    {
        if (Configured().Exit != 0)
        {
            terminal.Out.WriteLine("nothing is set up in this clone");
            return ExitCode.Clean;
        }

        var answer = git.Run("config", "--local", "--remove-section", $"merge.{Name}");
        if (answer.Exit != 0)
        {
            throw new IOException($"git does not change its settings: {answer.FirstLine}");
        }

        terminal.Out.WriteLine("taken out of the settings of this clone: Git merges records line by line again");
        return ExitCode.Clean;
    }

    private (int Exit, string Text) Configured()
    {
        var answer = git.Run("config", "--local", "--get", Key);
        return (answer.Exit, answer.Text.TrimEnd('\n', '\r'));
    }

    private void Set(string key, string value)
    {
        var answer = git.Run("config", "--local", "--replace-all", key, value);
        if (answer.Exit != 0)
        {
            throw new IOException($"git does not change its settings: {answer.FirstLine}");
        }
    }

    // Whether Git would merge the records of the folder that is worked in so.
    private bool TellAttributes()
    {
        var folder = Environment.CurrentDirectory;
        var root =
            File.Exists(Path.Combine(folder, "collection.yaml")) || !Directory.Exists(Path.Combine(folder, "records"))
                ? folder
                : Path.Combine(folder, "records");
        var answer = new GitProcess(root).Run("check-attr", "merge", "--", "boards/a.md", "stock.yaml");
        var count = answer.Text.Split('\n').Count(line => line.EndsWith($": merge: {Name}", StringComparison.Ordinal));
        if (answer.Exit == 0 && count == 2)
        {
            return true;
        }

        terminal.Out.WriteLine(
            Printable.Escape(
                $"no record here is merged so yet; write these lines into {Path.Combine(root, ".gitattributes")} and commit them:"
            )
        );
        foreach (var line in Attributes)
        {
            terminal.Out.WriteLine($"  {line}");
        }

        return false;
    }

    // By its name where it is found by that, so that the settings outlive an update; else by where it lies.
    private static string Program()
    {
        var names = (Environment.GetEnvironmentVariable("PATH") ?? string.Empty)
            .Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries)
            .Select(folder => Path.Combine(folder, Name));
        return names.Any(path => File.Exists(path) || File.Exists(path + ".exe")) || Environment.ProcessPath is not { } own
            ? Name
            : $"'{own.Replace('\\', '/').Replace("'", "'\\''", StringComparison.Ordinal)}'";
    }
}
