using System.ComponentModel;
using System.Diagnostics;
using System.Text;
using Ohmstead.Electronics;

namespace Ohmstead.Git;

/// <summary>
/// Runs git. Nothing that a repository brings along runs by it: no hook, pager, monitor or external diff is started, nobody is asked for a
/// password, and nothing is fetched.
/// </summary>
/// <remarks>
/// To read, no filter is started and no lock is taken: contents are asked for as they are stored. What puts a file into the index runs that
/// file's filters, as the merge before it did.
/// </remarks>
/// <param name="folder">The folder in which it looks for the repository.</param>
internal sealed class GitProcess(string folder)
{
    // What is configured in a repository that came from a stranger must not run here.
    private static readonly string[] Quiet =
    [
        "--no-pager",
        "--literal-pathspecs",
        "-c",
        "core.fsmonitor=false",
        "-c",
        "core.hooksPath=/dev/null",
        "-c",
        "core.quotePath=false",
        "-c",
        "protocol.allow=never",
    ];

    // Set by git for its hooks: they name the repository that the hook is of, not the one in the folder.
    private static readonly string[] OfHooks = ["GIT_DIR", "GIT_WORK_TREE", "GIT_INDEX_FILE", "GIT_PREFIX", "GIT_COMMON_DIR"];

    private const string Missing = "git was not found in the path; install it";

    private readonly string? program = GitProgram.Find();

    /// <summary>What a command printed, or git's own sentence of why it did not.</summary>
    /// <param name="arguments">The command with its arguments.</param>
    public Outcome<byte[]> Read(params IReadOnlyList<string> arguments)
    {
        var answer = Run(arguments);
        return answer.Exit == 0
            ? Outcome<byte[]>.From(answer.Bytes)
            : Outcome<byte[]>.Refused(answer.Reason ?? $"git {arguments[0]} ended without a word");
    }

    /// <summary>What came of a command, however it ended: with 127 where there is no git.</summary>
    /// <param name="arguments">The command with its arguments.</param>
    public GitAnswer Run(params IReadOnlyList<string> arguments)
    {
        if (!Start(arguments).Is(out var process, out var why))
        {
            return new(127, [], why);
        }

        using (process)
        {
            process.StandardInput.Close();
            var said = process.StandardError.ReadToEndAsync();
            using var output = new MemoryStream();
            process.StandardOutput.BaseStream.CopyTo(output);
            process.WaitForExit();
            return new(process.ExitCode, output.ToArray(), said.GetAwaiter().GetResult());
        }
    }

    /// <summary>What a command printed, as one line of text.</summary>
    public Outcome<string> ReadLine(params IReadOnlyList<string> arguments) =>
        Read(arguments).Is(out var bytes, out var why)
            ? Outcome<string>.From(Encoding.UTF8.GetString(bytes).TrimEnd('\n'))
            : Outcome<string>.Refused(why);

    /// <summary>Starts a command whose streams the caller reads and writes.</summary>
    public Outcome<Process> Start(params IReadOnlyList<string> arguments)
    {
        if (program is null)
        {
            return Outcome<Process>.Refused(Missing);
        }

        var start = new ProcessStartInfo(program)
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            UseShellExecute = false,
            StandardErrorEncoding = Encoding.UTF8,
        };
        foreach (var argument in (string[])["-C", folder, .. Quiet, .. arguments])
        {
            start.ArgumentList.Add(argument);
        }

        foreach (var name in OfHooks)
        {
            start.Environment.Remove(name);
        }

        start.Environment["GIT_OPTIONAL_LOCKS"] = "0";
        start.Environment["GIT_TERMINAL_PROMPT"] = "0";
        start.Environment["GIT_NO_LAZY_FETCH"] = "1";
        start.Environment["LC_ALL"] = "C";
        try
        {
            return Outcome<Process>.From(Process.Start(start)!);
        }
        catch (Win32Exception)
        {
            return Outcome<Process>.Refused(Missing);
        }
    }
}
