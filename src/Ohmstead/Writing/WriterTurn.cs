using System.Diagnostics;
using System.Runtime.InteropServices;
using System.Text;

namespace Ohmstead.Writing;

/// <summary>The turn to write in a folder of records: whoever has it writes, everybody else waits, whichever user and session they belong to.</summary>
/// <remarks>
/// The lock is an advisory one on the folder itself. A record cannot carry it, since it is replaced by another file when it is written; a lock file in
/// the folder would be litter, and one elsewhere is not seen by those who keep their temporary files in another place. The system takes it back when
/// a process ends, however it ends. Where there are no such locks (Windows), a file beside the records serves, which is gone with its last handle.
/// </remarks>
internal sealed class WriterTurn : IDisposable
{
    private const int Exclusive = 2;
    private const int AtOnce = 4;

    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    private readonly FileStream? file;
    private readonly int folder;

    private WriterTurn(FileStream? file, int folder) => (this.file, this.folder) = (file, folder);

    /// <summary>Waits for the turn.</summary>
    /// <param name="folder">The folder of the record, which exists.</param>
    /// <exception cref="IOException">Another writer keeps it.</exception>
    public static WriterTurn Take(string folder)
    {
        var since = Stopwatch.GetTimestamp();
        WriterTurn? turn;
        while ((turn = OperatingSystem.IsWindows() ? OfFile(folder) : OfFolder(folder)) is null)
        {
            if (Stopwatch.GetElapsedTime(since) >= Patience)
            {
                throw new IOException("another program keeps writing in this folder; nothing was written");
            }

            Thread.Sleep(5);
        }

        return turn;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        file?.Dispose();
        if (folder >= 0)
        {
            _ = Close(folder);
        }
    }

    // Null while another has it.
    private static WriterTurn? OfFolder(string folder)
    {
        // Handed on to no program that this one starts.
        var closedByOthers = OperatingSystem.IsLinux() ? 0x80000 : OperatingSystem.IsMacOS() ? 0x1000000 : 0;
        var handle = Open([.. Encoding.UTF8.GetBytes(folder), 0], closedByOthers);
        if (handle < 0 || Lock(handle, Exclusive | AtOnce) == 0)
        {
            // A folder that may not be listed, as one without a lock below: the record is still compared with what was read before it is replaced.
            return new(null, handle);
        }

        var isTaken = Marshal.GetLastPInvokeError() == (OperatingSystem.IsLinux() ? 11 : 35);
        if (isTaken)
        {
            _ = Close(handle);
        }

        return isTaken ? null : new(null, handle);
    }

    private static WriterTurn? OfFile(string folder)
    {
        try
        {
#pragma warning disable CA2000 // The turn owns the file and disposes of it.
            return new(new FileStream(Path.Combine(folder, ".ohmstead.lock"), FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, 1, FileOptions.DeleteOnClose), -1);
#pragma warning restore CA2000
        }
        catch (Exception taken) when (taken is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    [DllImport("libc", EntryPoint = "open", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Open(byte[] path, int flags);

    [DllImport("libc", EntryPoint = "flock", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Lock(int handle, int operation);

    [DllImport("libc", EntryPoint = "close")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Close(int handle);
}
