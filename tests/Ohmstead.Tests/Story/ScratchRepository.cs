using System.Diagnostics;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Story;

/// <summary>A Git repository of its own for one story, with nothing of the machine's settings.</summary>
internal sealed class ScratchRepository : IDisposable
{
    private ScratchRepository() => Root = Directory.CreateTempSubdirectory("ohmstead-story-").FullName;

    /// <summary>Its folder.</summary>
    public string Root { get; }

    public static ScratchRepository Make()
    {
        var made = new ScratchRepository();
        made.Git("init", "--quiet");
        return made;
    }

    /// <summary>Runs one command of the story on its day.</summary>
    public Run Do(string day, params string[] words) => Run.Of([.. words, "--in", Root, "--as-of", day]);

    /// <summary>Commits everything and tells what the commit changed: added lines, and removed ones.</summary>
    public (IReadOnlyList<string> Added, IReadOnlyList<string> Removed) Commit(string message)
    {
        Git("add", "--all");
        Git("commit", "--quiet", "--message", message);
        var lines = Git("show", "--unified=0", "--format=", "--no-color").Split('\n');
        return ([.. Of('+', lines)], [.. Of('-', lines)]);
    }

    /// <summary>Runs git, and gives what it printed.</summary>
    public string Git(params string[] words)
    {
        var start = new ProcessStartInfo("git", words)
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = Root,
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

    public string Read(string path) => File.ReadAllText(Path.Combine(Root, path));

    public void Dispose() => Directory.Delete(Root, recursive: true);

    private static IEnumerable<string> Of(char sign, string[] lines) =>
        lines
            .Where(line =>
                line.StartsWith(sign)
                && !line.StartsWith("+++", StringComparison.Ordinal)
                && !line.StartsWith("---", StringComparison.Ordinal)
            )
            .Select(line => line[1..]);
}
