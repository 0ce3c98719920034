using System.Runtime.InteropServices;

namespace Ohmstead.Running;

/// <summary>Which of its three streams a process was given. Whoever started it may have closed some.</summary>
/// <remarks>
/// The number of a closed stream is free, and whatever is opened first gets it: what is printed would go into a record, and what is typed
/// would be read out of one. So the numbers are filled before anything is opened. The runtime may have come first with something of its
/// own; that is known by a mark that nothing handed over by another program has: it is closed when a program is started.
/// </remarks>
/// <param name="HasIn">Whether something can be typed.</param>
/// <param name="HasOut">Whether there is somewhere for results to go.</param>
/// <param name="HasError">Whether there is somewhere to tell about the run.</param>
internal readonly record struct StandardStreams(bool HasIn, bool HasOut, bool HasError)
{
    // fcntl(2) and open(2), alike on Linux, macOS and the BSDs.
    private const int AskForMarks = 1;
    private const int ClosedWhenStarted = 1;
    private const int ReadAndWrite = 2;

    private const int Last = 2;

    /// <summary>Fills the numbers of streams that are closed, and says which are.</summary>
    public static StandardStreams Keep()
    {
        if (OperatingSystem.IsWindows())
        {
            // Streams have no numbers there, and the framework gives an empty one for one that is closed.
            return new(true, true, true);
        }

        var given = new StandardStreams(IsGiven(0), IsGiven(1), IsGiven(Last));
        int filled;
        do
        {
            filled = Open("/dev/null\0"u8.ToArray(), ReadAndWrite);
        } while (filled is >= 0 and < Last);
        if (filled > Last)
        {
            _ = Close(filled);
        }

        return given;
    }

    private static bool IsGiven(int number) => Marks(number, AskForMarks) is >= 0 and var marks && (marks & ClosedWhenStarted) == 0;

    [DllImport("libc", EntryPoint = "fcntl")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Marks(int number, int command);

    [DllImport("libc", EntryPoint = "open")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Open(byte[] path, int flags);

    [DllImport("libc", EntryPoint = "close")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Close(int number);
}
