using System.Runtime.InteropServices;
using Microsoft.Win32.SafeHandles;

namespace Ohmstead.Disk;

/// <summary>Writes a file whole or not at all: whoever reads, and whoever pulls the plug, finds the old bytes or the new ones.</summary>
/// <remarks>
/// The bytes are written beside it, waited for until they are on the disk, and renamed into place; then the folder is waited for. Whichever
/// of these fails is a failure, the waiting included: what a system could not put on the disk is not written.
/// </remarks>
internal static class WholeFile
{
    /// <summary>Writes it.</summary>
    /// <param name="folder">Where.</param>
    /// <param name="name">Its name.</param>
    /// <param name="bytes">What it is to hold.</param>
    /// <param name="old">What stands there, which is replaced and whose permissions and owner are kept; missing where the file must be
    /// new.</param>
    /// <exception cref="IOException">It was not written, or it is in place and the system cannot say that it is on the disk.</exception>
    public static void Write(Folder folder, string name, ReadOnlySpan<byte> bytes, FileFacts old)
    {
        var isInPlace = false;
        try
        {
            Wait(folder, name, bytes, old);
            Place(folder, name, old);
            isInPlace = true;
            folder.Sync();
        }
        finally
        {
            if (!isInPlace)
            {
                Clear(folder, name);
            }
        }
    }

    /// <summary>Puts the bytes on the disk beside the file, where they wait to be put in its place.</summary>
    public static void Wait(Folder folder, string name, ReadOnlySpan<byte> bytes, FileFacts old)
    {
        // One name for the waiting bytes: what a killed run left is taken away by the next, which may be another user's and could not write
        // into it.
        var waiting = Waiting(name);
        folder.Delete(waiting);
        using var file = folder.Create(waiting);
        var full = Path.Combine(folder.FullName, name);
        Keep(file, old, full);
        FileBytes.Write(file, bytes, 0);
        Sync(file, full);
    }

    /// <summary>Puts the waiting bytes in the place of the file. The folder is not waited for.</summary>
    public static void Place(Folder folder, string name, FileFacts old)
    {
        if (old.Kind != FileKind.Missing)
        {
            folder.Rename(Waiting(name), folder, name);
        }
        else if (!folder.RenameToNew(Waiting(name), folder, name))
        {
            throw new IOException($"there is a file '{Path.Combine(folder.FullName, name)}' already; nothing was written");
        }
    }

    /// <summary>Takes away bytes that wait and will not be put in place. The first failure is the one that is told; what is left is taken
    /// away by the next run.</summary>
    public static void Clear(Folder folder, string name)
    {
        try
        {
            folder.Delete(Waiting(name));
        }
        catch (IOException) { }
    }

    /// <summary>The name, in the same folder, under which the bytes of a file wait.</summary>
    public static string Waiting(string name) => $".{name}.new";

    // Before anything is in it: a record that others may not read is not to be read while it waits.
    private static void Keep(SafeFileHandle file, FileFacts old, string full)
    {
        if (old.Kind != FileKind.File || OperatingSystem.IsWindows())
        {
            return;
        }

        if (
            HandleFolder.FactsOf(file, full).Owner != old.Owner
            && SystemCalls.SetOwner(file, old.Owner.User, old.Owner.Group) != 0
            && SystemCalls.User() == 0
        )
        {
            // Others may give nothing away, and never could; the superuser must not take a person's record from them.
            var error = Marshal.GetLastPInvokeError();
            throw new IOException(
                $"the owner of '{full}' cannot be kept, so nothing was written: {Marshal.GetPInvokeErrorMessage(error)}",
                error
            );
        }

        File.SetUnixFileMode(file, (UnixFileMode)old.Mode);
    }

    private static void Sync(SafeFileHandle file, string full)
    {
        if (!OperatingSystem.IsLinux())
        {
            RandomAccess.FlushToDisk(file);
            return;
        }

        while (SystemCalls.Sync(file) != 0)
        {
            var error = Marshal.GetLastPInvokeError();
            if (error != SystemNumbers.Interrupted)
            {
                throw DiskFault.From(error, full);
            }
        }
    }
}
