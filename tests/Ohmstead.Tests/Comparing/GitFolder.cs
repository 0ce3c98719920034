using System.Diagnostics;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Comparing;

/// <summary>Runs git in a folder, with nothing of the machine's settings.</summary>
internal static class GitFolder
{
    /// <summary>Makes the copy a repository with one commit.</summary>
    public static CollectionCopy Committed(params string[] init)
    {
        var copy = CollectionCopy.Make();
        Git(copy.Root, ["init", "--quiet", .. init]);
        Commit(copy.Root, "as it was");
        return copy;
    }

    /// <summary>Commits all that lies there, on a day.</summary>
    public static void Commit(string folder, string message, string day = "2026-11-20", string who = "RK")
    {
        Git(folder, "add", "--all");
        Run(folder, day, "commit", "--quiet", "--allow-empty", "--author", $"{who} <{who.Length}@example.invalid>", "--message", message);
    }

    /// <summary>Runs git, and gives what it printed.</summary>
    public static string Git(string folder, params string[] words) => Run(folder, "2026-11-20", words);

    private static string Run(string folder, string day, params string[] words)
    {
        var start = new ProcessStartInfo("git", words)
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = folder,
        };
        foreach (
            var (name, value) in new[]
            {
                ("GIT_CONFIG_GLOBAL", "/dev/null"),
                ("GIT_CONFIG_NOSYSTEM", "1"),
                ("GIT_AUTHOR_NAME", "RK"),
                ("GIT_AUTHOR_EMAIL", "rk@example.invalid"),
                ("GIT_COMMITTER_NAME", "RK"),
                ("GIT_COMMITTER_EMAIL", "rk@example.invalid"),
                ("GIT_AUTHOR_DATE", day + "T12:00:00Z"),
                ("GIT_COMMITTER_DATE", day + "T12:00:00Z"),
            }
        )
        {
            start.Environment[name] = value;
        }

        using var process = Process.Start(start)!;
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Assert.True(process.ExitCode == 0, $"git {string.Join(' ', words)}: {error.Result}");
        return output;
    }
}
