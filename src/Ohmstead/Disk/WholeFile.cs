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
    public static void Write(Folder folder, string name, ReadOnlySpan<byte> bytes, Entry old)
    {
        // One name for the waiting bytes: what a killed run left is taken away by the next, which may be another user's and could not write
        // into it.
        var waiting = $".{name}.new";
        folder.Delete(waiting);
        var isInPlace = false;
        try
        {
            using (var file = folder.Create(waiting))
            {
                var full = Path.Combine(folder.FullName, name);
                Keep(file, old, full);
                FileBytes.Write(file, bytes, 0);
                Sync(file, full);
            }

            if (old.Kind != EntryKind.Missing)
            {
                folder.Rename(waiting, folder, name);
            }
            else if (!folder.RenameToNew(waiting, folder, name))
            {
                throw new IOException($"there is a file '{Path.Combine(folder.FullName, name)}' already; nothing was written");
            }

            isInPlace = true;
            folder.Sync();
        }
        finally
        {
            if (!isInPlace)
            {
                Clear(folder, waiting);
            }
        }
    }

    // The first failure is the one that is told; what is left is taken away by the next run.
    private static void Clear(Folder folder, string waiting)
    {
        try
        {
            folder.Delete(waiting);
        }
        catch (IOException) { }
    }

    // Before anything is in it: a record that others may not read is not to be read while it waits.
    private static void Keep(SafeFileHandle file, Entry old, string full)
    {
        if (old.Kind != EntryKind.File || OperatingSystem.IsWindows())
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
                throw DiskFault.Of(error, full);
            }
        }
    }
}
