using System.Diagnostics;

namespace Ohmstead.Benchmarks.Processes;

/// <summary>A program with its arguments, run and measured as a user would run it: as a process of its own.</summary>
/// <param name="Program">The program.</param>
/// <param name="Arguments">Its arguments.</param>
public sealed record Command(string Program, params IReadOnlyList<string> Arguments)
{
    private static readonly TimeSpan Look = TimeSpan.FromMilliseconds(4);

    /// <summary>A line for the shell.</summary>
    public static Command Shell(string line) => new("/bin/sh", "-c", line);

    /// <summary>Runs it to its end.</summary>
    public ProcessCost Run()
    {
        using var process = new Process();
        process.StartInfo = new ProcessStartInfo(Program, Arguments)
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            UseShellExecute = false,
        };
        var lastLine = string.Empty;
        process.OutputDataReceived += (_, line) => lastLine = line.Data ?? lastLine;
        process.ErrorDataReceived += (_, line) => lastLine = line.Data ?? lastLine;
        var cpu = ProcFiles.ChildTime();
        var start = Stopwatch.GetTimestamp();
        process.Start();
        process.BeginOutputReadLine();
        process.BeginErrorReadLine();
        long? peak = null;
        do
        {
            // A descendant that has ended takes its peak with it, so the largest seen is kept.
            peak = ProcFiles.PeakBytes(process.Id) is { } seen && !(peak >= seen) ? seen : peak;
        } while (!process.WaitForExit(Look));

        var wall = Stopwatch.GetElapsedTime(start);
        process.WaitForExit();
        return new ProcessCost(wall, ProcFiles.ChildTime() - cpu, peak, process.ExitCode, lastLine.Trim());
    }
}
