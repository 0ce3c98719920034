using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Faults;

/// <summary>A program whose calls of the system about one folder are written down, and one of them failed.</summary>
/// <param name="program">The command that starts it.</param>
/// <param name="folder">The folder, in which it runs.</param>
internal sealed class WatchedProgram(string program, string folder)
{
    /// <summary>Runs a line of shell in which $ohmstead stands for the program.</summary>
    /// <param name="line">The line; one that begins with exec is the program alone.</param>
    /// <param name="fault">What goes wrong, or null to watch.</param>
    /// <param name="environment">What else it is told.</param>
    public async Task<WatchedRun> ShellAsync(string line, SystemFault? fault = null, params (string Name, string Value)[] environment)
    {
        var journal = Path.GetTempFileName();
        try
        {
            (string Name, string Value)[] watched =
            [
                ("ohmstead", program),
                ("LD_PRELOAD", FaultLibrary.Path!),
                ("OHMSTEAD_FAULT_UNDER", folder),
                ("OHMSTEAD_FAULT_LOG", journal),
                .. fault?.Environment() ?? [],
                .. environment,
            ];
            var run = await Child.ShellAsync(line, folder, watched);
            return new(run, SystemCall.Read(journal));
        }
        finally
        {
            File.Delete(journal);
        }
    }
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
