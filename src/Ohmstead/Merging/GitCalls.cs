using System.Diagnostics;
using System.Text;

namespace Ohmstead.Merging;

/// <summary>Calls of Git as a process of its own. Nothing of a repository's settings starts a program by them, but for the filters of a
/// file that is put into the index.</summary>
/// <param name="folder">The folder in which it is called.</param>
internal sealed class GitCalls(string folder)
{
    private static readonly UTF8Encoding Utf8 = new(false);

    /// <summary>Calls it.</summary>
    /// <param name="words">The words behind its name.</param>
    /// <exception cref="IOException">There is no program of that name.</exception>
    public GitAnswer Call(params IReadOnlyList<string> words)
    {
        var start = new ProcessStartInfo("git", ["--no-pager", "--literal-pathspecs", "-c", "core.fsmonitor=false", .. words])
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = folder,
            StandardErrorEncoding = Utf8,
        };
        try
        {
            using var process = Process.Start(start) ?? throw new IOException("git could not be started");
            var error = process.StandardError.ReadToEndAsync();
            using var output = new MemoryStream();
            process.StandardOutput.BaseStream.CopyTo(output);
            process.WaitForExit();
            return new(process.ExitCode, output.ToArray(), error.GetAwaiter().GetResult());
        }
        catch (System.ComponentModel.Win32Exception missing)
        {
            throw new IOException("there is no program 'git'; it is needed for this", missing);
        }
    }

    /// <summary>The folder of the repository's files in which a folder lies; null where it lies in none.</summary>
    public static string? TopOf(string folder) =>
        new GitCalls(folder).Call("rev-parse", "--show-toplevel") is { Exit: 0 } answer ? answer.Text.TrimEnd('\n', '\r') : null;
}

/// <summary>What Git answered.</summary>
/// <param name="Exit">How it ended.</param>
/// <param name="Bytes">What it printed.</param>
/// <param name="Error">What it said of the run.</param>
internal sealed record GitAnswer(int Exit, byte[] Bytes, string Error)
{
    /// <summary>What it printed, as text.</summary>
    public string Text => Encoding.UTF8.GetString(Bytes);
}
