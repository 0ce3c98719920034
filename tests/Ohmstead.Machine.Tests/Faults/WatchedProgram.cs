using System.Diagnostics;
using Ohmstead.Tests.Support;

namespace Ohmstead.Machine.Tests.Faults;

/// <summary>A program whose calls of the system about one folder are written down, and one of them failed.</summary>
/// <param name="program">The command that starts it.</param>
/// <param name="folder">The folder, in which it runs.</param>
internal sealed class WatchedProgram(string program, string folder)
{
    /// <summary>The name of the one program that is watched, where others are started on the way; each of that name counts on where the
    /// last one ended. All are watched where it is null, and each counts for itself.</summary>
    public string? Of { get; init; }

    /// <summary>Runs a line of shell in which $ohmstead stands for the program.</summary>
    /// <param name="line">The line; one that begins with exec is the program alone.</param>
    /// <param name="fault">What goes wrong, or null to watch.</param>
    /// <param name="environment">What else it is told.</param>
    public async Task<WatchedRun> ShellAsync(string line, SystemFault? fault = null, params (string Name, string Value)[] environment)
    {
        var (journal, count) = (Path.GetTempFileName(), Path.GetTempFileName());
        (string, string)[] only = Of is null ? [] : [("OHMSTEAD_FAULT_OF", Of), ("OHMSTEAD_FAULT_COUNT", count)];
        try
        {
            var run = await Child.ShellAsync(
                line,
                folder,
                [.. Environment(journal), .. only, .. fault?.Environment() ?? [], .. environment]
            );
            return new(run, SystemCall.Read(journal));
        }
        finally
        {
            File.Delete(journal);
            File.Delete(count);
        }
    }

    /// <summary>Runs a line that begins with exec, and kills the program from outside.</summary>
    /// <param name="line">The line.</param>
    /// <param name="calls">After how many of its calls about the folder.</param>
    /// <param name="later">How long after them.</param>
    public async Task<Run> KilledAsync(string line, int calls, TimeSpan later)
    {
        var journal = Path.GetTempFileName();
        try
        {
            using var process = Child.Start(line, folder, [.. Environment(journal)]);
            while (!process.HasExited && Made(journal) is var made && made < calls)
            {
                // As long as it only starts, this may be slow to look; afterwards a call takes microseconds.
                if (made == 0)
                {
                    await Task.Delay(1, TestContext.Current.CancellationToken);
                }
            }

            var since = Stopwatch.GetTimestamp();
            while (Stopwatch.GetElapsedTime(since) < later)
            {
                Thread.SpinWait(20);
            }

            process.Kill();
            return await Child.EndAsync(process);
        }
        finally
        {
            File.Delete(journal);
        }
    }

    /// <summary>Runs a line that begins with exec, waits until one of its calls hangs, and sends a signal until it has ended.</summary>
    /// <param name="line">The line.</param>
    /// <param name="fault">The call that hangs.</param>
    /// <param name="signal">The signal, such as INT.</param>
    /// <param name="most">How often it is sent at most; then the program is killed.</param>
    public async Task<Run> SignalledAsync(string line, SystemFault fault, string signal, int most)
    {
        var journal = Path.GetTempFileName();
        try
        {
            using var process = Child.Start(line, folder, [.. Environment(journal), .. fault.Environment()]);
            while (!process.HasExited && !SystemCall.Read(journal).Any(call => call.IsFault))
            {
                await Task.Delay(5, TestContext.Current.CancellationToken);
            }

            for (var time = 0; time < most && !process.HasExited; time++)
            {
                await Child.ShellAsync($"kill -{signal} {process.Id} 2> /dev/null || true", folder);
                await Task.Delay(20, TestContext.Current.CancellationToken);
            }

            process.Kill();
            return await Child.EndAsync(process);
        }
        finally
        {
            File.Delete(journal);
        }
    }

    private (string Name, string Value)[] Environment(string journal) =>
        [("ohmstead", program), ("LD_PRELOAD", FaultLibrary.Path!), ("OHMSTEAD_FAULT_UNDER", folder), ("OHMSTEAD_FAULT_LOG", journal)];

    private static int Made(string journal) => File.ReadAllBytes(journal).AsSpan().Count((byte)'\n');
}

/// <summary>How a watched run ended, and its calls.</summary>
internal sealed record WatchedRun(Run Run, IReadOnlyList<SystemCall> Calls)
{
    /// <summary>Whether there was a call to fail: false once there are fewer of its kind.</summary>
    public bool IsFaultReached => Calls.Any(call => call.IsFault);

    /// <summary>How many calls there are of a kind.</summary>
    public int Count(CallKind kind) => Calls.Count(call => kind == CallKind.Any || call.Kind == kind);

    /// <summary>What was done to the disk, in order, from the folder on; what only looked is left out.</summary>
    public IEnumerable<string> Trace(string folder) =>
        Calls.Where(call => call.Error == 0 && !IsLook(call.Kind)).Select(call => call.In(folder));

    private static bool IsLook(CallKind kind) =>
        kind is CallKind.Open or CallKind.Read or CallKind.List or CallKind.Look or CallKind.Lock or CallKind.Close;
}
