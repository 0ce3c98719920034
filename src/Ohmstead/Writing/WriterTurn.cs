using System.Diagnostics;
using Ohmstead.Disk;

namespace Ohmstead.Writing;

/// <summary>The turn to write in a folder of records: whoever has it writes, everybody else waits, whichever user and session they belong
/// to.</summary>
/// <remarks>
/// The lock is an advisory one on the folder itself. A record cannot carry it, since it is replaced by another file when it is written; a
/// lock file in the folder would be litter, and one elsewhere is not seen by those who keep their temporary files in another place. The
/// system takes it back when a process ends, however it ends. Where there are no such locks (Windows), a file beside the records serves,
/// which is gone with its last handle.
/// </remarks>
internal static class WriterTurn
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    /// <summary>Waits for the turn, which lasts as long as the folder is open.</summary>
    /// <param name="folder">The folder of the record.</param>
    /// <exception cref="IOException">Another writer keeps it.</exception>
    public static void Take(Folder folder)
    {
        var since = Stopwatch.GetTimestamp();
        while (!folder.TryLock())
        {
            if (Stopwatch.GetElapsedTime(since) >= Patience)
            {
                throw new IOException("another program keeps writing in this folder; nothing was written");
            }

            Thread.Sleep(5);
        }
    }
}
