using System.Diagnostics;

#pragma warning disable CA2000 // The folder is held by the repository, and goes with it.
namespace Ohmstead.Tests.Support;

/// <summary>A Git repository for one test, with nothing of the machine's settings. Gone when the test ends.</summary>
internal sealed class ScratchRepository : IDisposable
{
    private readonly CollectionCopy? own;
    private string? programs;

    private ScratchRepository(string root, CollectionCopy? own) => (Root, this.own) = (root, own);

    /// <summary>The folder in which commands run.</summary>
    public string Root { get; }

    /// <summary>Who works, as commits tell it.</summary>
    public string By { get; set; } = "RK";

    /// <summary>What the last program printed, and what it said of the run.</summary>
    public string Said { get; private set; } = string.Empty;

    /// <summary>A repository in which nothing is.</summary>
    /// <param name="init">How it is begun.</param>
    public static ScratchRepository Empty(params string[] init) => Begun(CollectionCopy.Empty(), init);

    /// <summary>A repository with one commit: the demo collection.</summary>
    public static ScratchRepository OfDemo(params string[] init)
    {
        var made = Begun(CollectionCopy.Make(), init);
        made.Commit("as it was");
        return made;
    }

    /// <summary>A folder that somebody else takes away again: in it a repository is made, cloned or looked at.</summary>
    public static ScratchRepository In(string folder) => new(folder, null);

    /// <summary>The absolute path of a file or folder in it.</summary>
    public string At(string path) => Path.Combine(Root, path);

    /// <summary>The text of a file.</summary>
    public string Read(string path) => File.ReadAllText(At(path));

    /// <summary>Writes a file, with its folder.</summary>
    public void Write(string path, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(At(path))!);
        File.WriteAllText(At(path), text);
    }

    /// <summary>Changes words of a file that holds them once.</summary>
    public void Replace(string path, string old, string @new)
    {
        var text = Read(path);
        Assert.Equal(2, text.Split(old).Length);
        Write(path, text.Replace(old, @new, StringComparison.Ordinal));
    }

    /// <summary>Runs git, which must end well, and gives what it printed.</summary>
    public string Git(params string[] words) => On("2026-11-20", words);

    /// <summary>Commits all that lies there, on a day at noon in UTC.</summary>
    /// <param name="message">Its message.</param>
    /// <param name="day">The day.</param>
    /// <param name="who">The author; whoever works here when not given.</param>
    public void Commit(string message, string day = "2026-11-20", string? who = null)
    {
        Git("add", "--all");
        On(day, "commit", "--quiet", "--allow-empty", "--author", $"{who ?? By} <who@example.invalid>", "--message", message);
    }

    /// <summary>Commits a text on a branch of its own that begins at a commit.</summary>
    public void Branch(string name, string from, string path, string text)
    {
        Git("checkout", "--quiet", "-b", name, from);
        Write(path, text);
        Commit(name);
    }

    /// <summary>Runs git on a day, by whose noon commits are dated.</summary>
    public string On(string day, params string[] words)
    {
        var (exit, output) = Start("git", words, day);
        Assert.True(exit == 0, $"git {string.Join(' ', words)}: {Said}");
        return output;
    }

    /// <summary>Runs a program.</summary>
    /// <returns>How it ended.</returns>
    public int Run(string program, params string[] words) => Start(program, words, "2026-11-20").Exit;

    /// <summary>What is found under the name of the program, before anything else in the path.</summary>
    /// <param name="line">A line of shell.</param>
    public void Program(string line)
    {
        programs ??= Directory.CreateTempSubdirectory("ohmstead-programs-").FullName;
        Script(Path.Combine(programs, "ohmstead"), line);
    }

    /// <summary>Takes the program away.</summary>
    public void NoProgram() => File.Delete(Path.Combine(programs!, "ohmstead"));

    /// <summary>Writes a script that can be run.</summary>
    /// <param name="path">Where.</param>
    /// <param name="line">A line of shell.</param>
    public static void Script(string path, string line)
    {
        File.WriteAllText(path, $"#!/bin/sh\n{line}\n");
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(path, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }
    }

    /// <summary>What a program that runs here is told by its environment.</summary>
    public IEnumerable<(string Name, string? Value)> Environment(string day) =>
        [
            ("GIT_CONFIG_GLOBAL", "/dev/null"),
            ("GIT_CONFIG_NOSYSTEM", "1"),
            ("GIT_DIR", null),
            ("GIT_INDEX_FILE", null),
            ("GIT_WORK_TREE", null),
            ("GIT_AUTHOR_NAME", By),
            ("GIT_AUTHOR_EMAIL", $"{By}@example.invalid"),
            ("GIT_COMMITTER_NAME", By),
            ("GIT_COMMITTER_EMAIL", $"{By}@example.invalid"),
            ("GIT_AUTHOR_DATE", $"{day}T12:00:00Z"),
            ("GIT_COMMITTER_DATE", $"{day}T12:00:00Z"),
            ("GIT_EDITOR", "true"),
            (
                "PATH",
                string.Join(Path.PathSeparator, new[] { programs, System.Environment.GetEnvironmentVariable("PATH") }.OfType<string>())
            ),
        ];

    /// <inheritdoc/>
    public void Dispose()
    {
        own?.Dispose();
        if (programs is not null)
        {
            Directory.Delete(programs, recursive: true);
        }
    }

    private static ScratchRepository Begun(CollectionCopy copy, string[] init)
    {
        var made = new ScratchRepository(copy.Root, copy);
        made.Git(["init", "--quiet", "--initial-branch=main", .. init]);
        return made;
    }

    private (int Exit, string Out) Start(string program, string[] words, string day)
    {
        // By another program, which looks into the path that is told here.
        var start = OperatingSystem.IsWindows() ? new ProcessStartInfo(program, words) : new ProcessStartInfo("env", [program, .. words]);
        (start.UseShellExecute, start.WorkingDirectory) = (false, Root);
        (start.RedirectStandardOutput, start.RedirectStandardError) = (true, true);
        foreach (var (name, value) in Environment(day))
        {
            start.Environment[name] = value;
        }

        using var process = Process.Start(start)!;
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Said = output + error.Result;
        return (process.ExitCode, output);
    }
}
