using System.Diagnostics;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Merging;

/// <summary>A repository in which two people work: the program is found by its name, and nothing of the machine's settings
/// counts.</summary>
internal sealed class MergeRepository : IDisposable
{
    private readonly string programs = Directory.CreateTempSubdirectory("ohmstead-programs-").FullName;

    private MergeRepository() => Root = Directory.CreateTempSubdirectory("ohmstead-merge-").FullName;

    /// <summary>Its folder.</summary>
    public string Root { get; }

    /// <summary>What the last command said of the run.</summary>
    public string Said { get; private set; } = string.Empty;

    /// <summary>A repository with one board, in which records are merged by their entries.</summary>
    public static MergeRepository Make(string path = "boards/SP-0001.md")
    {
        Assert.SkipUnless(OperatingSystem.IsLinux() || OperatingSystem.IsMacOS(), "a script is put into the path as a shell runs it");
        var made = new MergeRepository();
        made.Program($"exec {Child.Program} \"$@\"");
        made.Git("init", "--quiet", "--initial-branch=main");
        made.Write(".gitattributes", "* text=auto eol=lf\nboards/*.md merge=ohmstead\n/stock.yaml merge=ohmstead\n");
        made.Write(path, Board());
        Assert.Equal(0, made.Run("ohmstead", "settle", "--set-up"));
        made.Commit("begun");
        return made;
    }

    /// <summary>A board with visits.</summary>
    public static string Board(params string[] visits) =>
        $"---\nboard: SP-0001\ntitle: Tide-gauge logger\nbench:\n{Visit("2026-02-14", "TS", "J1")}{string.Concat(visits)}---\n\n"
        + "## Story\nIt came wet.\n";

    /// <summary>A visit with a finding.</summary>
    public static string Visit(string day, string by, string place, string what = "green") =>
        $"  - date: {day}\n    by: {by}\n    found:\n      - {{ at: {place}, what: {what}, severity: minor }}\n";

    /// <summary>What stands in the place of the program.</summary>
    public void Program(string line)
    {
        var path = Path.Combine(programs, "ohmstead");
        File.WriteAllText(path, $"#!/bin/sh\n{line}\n");
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(path, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }
    }

    /// <summary>Takes the program away.</summary>
    public void NoProgram() => File.Delete(Path.Combine(programs, "ohmstead"));

    /// <summary>Commits a text on a branch of its own that begins at a commit.</summary>
    public void Branch(string name, string from, string path, string text)
    {
        Git("checkout", "--quiet", "-b", name, from);
        Write(path, text);
        Commit(name);
    }

    /// <summary>Commits all that is there.</summary>
    public void Commit(string message)
    {
        Git("add", "--all");
        Git("commit", "--quiet", "--message", message);
    }

    /// <summary>Runs git, which must end well.</summary>
    public void Git(params string[] words) => Assert.True(Run("git", words) == 0, $"git {string.Join(' ', words)}: {Said}");

    /// <summary>Runs a program here.</summary>
    /// <returns>How it ended.</returns>
    public int Run(string program, params string[] words)
    {
        var start = new ProcessStartInfo("env", [program, .. words])
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
                ("GIT_EDITOR", "true"),
                ("PATH", $"{programs}{Path.PathSeparator}{Environment.GetEnvironmentVariable("PATH")}"),
            }
        )
        {
            start.Environment[name] = value;
        }

        using var process = Process.Start(start)!;
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Said = output + error.Result;
        return process.ExitCode;
    }

    /// <summary>The text of a file.</summary>
    public string Read(string path) => File.ReadAllText(Path.Combine(Root, path));

    /// <summary>Writes a file, with its folder.</summary>
    public void Write(string path, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(Path.Combine(Root, path))!);
        File.WriteAllText(Path.Combine(Root, path), text);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        Directory.Delete(Root, recursive: true);
        Directory.Delete(programs, recursive: true);
    }
}
