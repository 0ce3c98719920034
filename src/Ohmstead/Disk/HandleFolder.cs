using System.Buffers.Binary;
using System.Runtime.InteropServices;
using Microsoft.Win32.SafeHandles;

namespace Ohmstead.Disk;

/// <summary>A folder by the handle that the system gave for it (Linux, macOS).</summary>
internal sealed class HandleFolder : Folder
{
    private const uint FolderMode = 0x1FF;
    private const uint FileMode = 0x1B6;

    private readonly SafeFileHandle handle;
    private bool isLocked;

    private HandleFolder(SafeFileHandle handle, string fullName)
    {
        this.handle = handle;
        FullName = fullName;
        Facts = FactsOf(handle, fullName);
    }

    /// <inheritdoc/>
    public override string FullName { get; }

    /// <inheritdoc/>
    public override FileFacts Facts { get; }

    /// <summary>Opens a folder by its path.</summary>
    public static HandleFolder From(string full)
    {
        if (full.Contains('\0', StringComparison.Ordinal))
        {
            throw new IOException($"'{full}' is no path of a folder");
        }

        int number;
        while ((number = SystemCalls.Open(full, SystemNumbers.OnlyFolder | SystemNumbers.Close)) < 0)
        {
            Unless(SystemNumbers.Interrupted, full);
        }

        return Taken(number, full);
    }

    /// <summary>What the system says of what is open.</summary>
    public static FileFacts FactsOf(SafeFileHandle file, string path)
    {
        Span<byte> facts = stackalloc byte[256];
        var isDone =
            OperatingSystem.IsLinux() ? SystemCalls.LookOnLinux(file, string.Empty, SystemNumbers.WhatIsOpen, SystemNumbers.AllFacts, facts)
            : SystemNumbers.IsOldMac ? SystemCalls.LookAtOpenOnOldMac(file, facts)
            : SystemCalls.LookAtOpenOnMac(file, facts);
        return isDone == 0 ? ParseFacts(facts) : throw DiskFault.From(Marshal.GetLastPInvokeError(), path);
    }

    /// <inheritdoc/>
    public override FileFacts Look(string name)
    {
        var full = At(name);
        Span<byte> facts = stackalloc byte[256];
        var isDone =
            OperatingSystem.IsLinux() ? SystemCalls.LookOnLinux(handle, name, SystemNumbers.LinkItself, SystemNumbers.AllFacts, facts)
            : SystemNumbers.IsOldMac ? SystemCalls.LookOnOldMac(handle, name, facts, SystemNumbers.LinkItself)
            : SystemCalls.LookOnMac(handle, name, facts, SystemNumbers.LinkItself);
        if (isDone == 0)
        {
            return ParseFacts(facts);
        }

        Unless(SystemNumbers.NotThere, full);
        return FileFacts.None;
    }

    /// <inheritdoc/>
    public override Folder? Find(string name)
    {
        var full = At(name);
        int number;
        while ((number = SystemCalls.OpenAt(handle, name, SystemNumbers.OnlyFolder | SystemNumbers.NoLink | SystemNumbers.Close, 0)) < 0)
        {
            switch (Marshal.GetLastPInvokeError())
            {
                case SystemNumbers.Interrupted:
                    continue;
                case SystemNumbers.NotThere:
                    return null;
                case var error when error == SystemNumbers.IsLink || error == SystemNumbers.NoFolder:
                    // A link is told in these words too where a folder is asked for. It may have gone meanwhile.
                    throw DiskFault.Other(Look(name).Kind, FileKind.Folder, full);
                case var error:
                    throw DiskFault.From(error, full);
            }
        }

        return Taken(number, full);
    }

    /// <inheritdoc/>
    public override bool TryMake(string name)
    {
        var full = At(name);
        if (SystemCalls.MakeAt(handle, name, FolderMode) == 0)
        {
            return true;
        }

        Unless(SystemNumbers.Exists, full);
        return false;
    }

    /// <inheritdoc/>
    public override SafeFileHandle Create(string name)
    {
        var full = At(name);
        var flags = SystemNumbers.ReadAndWrite | SystemNumbers.New | SystemNumbers.NoLink | SystemNumbers.Close;
        int number;
        while (
            (
                number = SystemNumbers.IsByStack
                    ? SystemCalls.OpenAtByStack(handle, name, flags, 0, 0, 0, 0, 0, FileMode)
                    : SystemCalls.OpenAt(handle, name, flags, FileMode)
            ) < 0
        )
        {
            Unless(SystemNumbers.Interrupted, full);
        }

        return new(number, ownsHandle: true);
    }

    /// <inheritdoc/>
    public override SafeFileHandle? Read(string name)
    {
        var full = At(name);
        // Looked at first: to open a device may do something, and a pipe keeps waiting.
        if (Look(name).Kind is var kind and not FileKind.File)
        {
            return kind == FileKind.Missing ? null : throw DiskFault.Other(kind, FileKind.File, full);
        }

        int number;
        while ((number = SystemCalls.OpenAt(handle, name, SystemNumbers.NoLink | SystemNumbers.AtOnce | SystemNumbers.Close, 0)) < 0)
        {
            switch (Marshal.GetLastPInvokeError())
            {
                case SystemNumbers.Interrupted:
                    continue;
                case SystemNumbers.NotThere:
                    return null;
                case var error when error == SystemNumbers.IsLink:
                    throw DiskFault.Link(full);
                case var error:
                    throw DiskFault.From(error, full);
            }
        }

        var file = new SafeFileHandle(number, ownsHandle: true);
        try
        {
            return FactsOf(file, full).Kind is var found and not FileKind.File ? throw DiskFault.Other(found, FileKind.File, full) : file;
        }
        catch
        {
            file.Dispose();
            throw;
        }
    }

    /// <inheritdoc/>
    public override void Rename(string name, Folder to, string newName)
    {
        var full = At(name);
        Done(SystemCalls.RenameAt(handle, name, ((HandleFolder)to).handle, newName), full);
    }

    /// <inheritdoc/>
    public override bool RenameToNew(string name, Folder to, string newName)
    {
        var full = At(name);
        if (Flagged(name, (HandleFolder)to, newName, SystemNumbers.NoReplacing) is { } error)
        {
            return error is 0 or SystemNumbers.Exists ? error == 0 : throw DiskFault.From(error, full);
        }

        // Where that is not known, in two steps.
        if (to.Look(newName).Kind != FileKind.Missing)
        {
            return false;
        }

        Rename(name, to, newName);
        return true;
    }

    /// <inheritdoc/>
    public override bool Swap(string name, string other)
    {
        var full = At(name);
        return Flagged(name, this, other, SystemNumbers.Swap) is { } error && (error == 0 ? true : throw DiskFault.From(error, full));
    }

    /// <inheritdoc/>
    public override bool Link(string name, Folder to, string newName)
    {
        var full = At(name);
        if (SystemCalls.LinkAt(handle, name, ((HandleFolder)to).handle, newName, 0) == 0)
        {
            return true;
        }

        var error = Marshal.GetLastPInvokeError();
        return
            error is SystemNumbers.NotPermitted or SystemNumbers.OtherDisk or SystemNumbers.TooManyNames || SystemNumbers.IsUnknown(error)
            ? false
            : throw DiskFault.From(error, full);
    }

    /// <inheritdoc/>
    public override void Delete(string name)
    {
        var full = At(name);
        if (SystemCalls.UnlinkAt(handle, name, 0) != 0)
        {
            Unless(SystemNumbers.NotThere, full);
        }
    }

    /// <inheritdoc/>
    public override void DeleteFolder(string name)
    {
        var full = At(name);
        if (SystemCalls.UnlinkAt(handle, name, SystemNumbers.TakeFolder) != 0)
        {
            Unless(SystemNumbers.NotThere, full);
        }
    }

    /// <inheritdoc/>
    public override void Sync() => SyncOf(SystemCalls.Sync);

    /// <inheritdoc/>
    public override void SyncAll() => SyncOf(OperatingSystem.IsLinux() ? SystemCalls.SyncDisk : SystemCalls.Sync);

    /// <inheritdoc/>
    public override bool TryLock()
    {
        while (SystemCalls.Lock(handle, SystemNumbers.AloneAtOnce) != 0)
        {
            var error = Marshal.GetLastPInvokeError();
            if (error != SystemNumbers.Interrupted)
            {
                // A disk without locks: what is read is still compared before it is replaced.
                return error != SystemNumbers.Taken;
            }
        }

        isLocked = true;
        return true;
    }

    /// <inheritdoc/>
    public override void TakeOver(FileFacts other)
    {
        if (Facts.Owner != other.Owner)
        {
            // Not allowed to everybody; the permissions are theirs in any case.
            _ = SystemCalls.SetOwner(handle, other.Owner.User, other.Owner.Group);
        }

        if (Facts.Mode != other.Mode && SystemCalls.SetMode(handle, other.Mode) != 0)
        {
            throw DiskFault.From(Marshal.GetLastPInvokeError(), FullName);
        }
    }

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        // The system lets a lock go when the last copy of the handle is closed, and a child that was begun in this very moment has one
        // until it becomes the other program: the next run would be told that somebody is at work.
        if (isLocked && !handle.IsClosed)
        {
            _ = SystemCalls.Lock(handle, SystemNumbers.NoMore);
        }

        handle.Dispose();
    }

    private static HandleFolder Taken(int number, string full)
    {
        var taken = new SafeFileHandle(number, ownsHandle: true);
        try
        {
            return new(taken, full);
        }
        catch
        {
            taken.Dispose();
            throw;
        }
    }

    // The number of the error, 0 when it was done; null where the system or the disk does not know how.
    private int? Flagged(string name, HandleFolder to, string newName, uint flags)
    {
        try
        {
            var isDone = OperatingSystem.IsLinux()
                ? SystemCalls.RenameOnLinux(handle, name, to.handle, newName, flags)
                : SystemCalls.RenameOnMac(handle, name, to.handle, newName, flags);
            var error = isDone == 0 ? 0 : Marshal.GetLastPInvokeError();
            return SystemNumbers.IsUnknown(error) || error == SystemNumbers.OtherDisk ? null : error;
        }
        catch (EntryPointNotFoundException)
        {
            return null;
        }
    }

    private void SyncOf(Func<SafeFileHandle, int> sync)
    {
        while (sync(handle) != 0)
        {
            var error = Marshal.GetLastPInvokeError();
            if (SystemNumbers.IsUnknown(error))
            {
                // Some disks keep folders in another way than files and say that there is nothing to wait for.
                return;
            }

            if (error != SystemNumbers.Interrupted)
            {
                throw DiskFault.From(error, FullName);
            }
        }
    }

    // Linux, statx(2), the same on all processors; macOS, struct stat with numbers of 64 bits, sys/stat.h.
    private static FileFacts ParseFacts(ReadOnlySpan<byte> facts)
    {
        static uint Four(ReadOnlySpan<byte> facts, int at) => BinaryPrimitives.ReadUInt32LittleEndian(facts[at..]);
        static ulong Eight(ReadOnlySpan<byte> facts, int at) => BinaryPrimitives.ReadUInt64LittleEndian(facts[at..]);
        var isLinux = OperatingSystem.IsLinux();
        uint mode = BinaryPrimitives.ReadUInt16LittleEndian(facts[(isLinux ? 28 : 4)..]);
        return new(
            (mode & 0xF000) switch
            {
                0x8000 => FileKind.File,
                0x4000 => FileKind.Folder,
                0xA000 => FileKind.Link,
                _ => FileKind.Other,
            },
            (long)Eight(facts, isLinux ? 40 : 96)
        )
        {
            Mode = mode & 0xFFF,
            Names = isLinux ? Four(facts, 16) : BinaryPrimitives.ReadUInt16LittleEndian(facts[6..]),
            Owner = isLinux ? (Four(facts, 20), Four(facts, 24)) : (Four(facts, 16), Four(facts, 20)),
            Identity = isLinux
                ? (((ulong)Four(facts, 136) << 32) | Four(facts, 140), Eight(facts, 144), Eight(facts, 32))
                : (Four(facts, 0), 0, Eight(facts, 8)),
        };
    }

    private static void Done(int result, string full)
    {
        if (result != 0)
        {
            throw DiskFault.From(Marshal.GetLastPInvokeError(), full);
        }
    }

    private static void Unless(int expected, string full)
    {
        var error = Marshal.GetLastPInvokeError();
        if (error != expected)
        {
            throw DiskFault.From(error, full);
        }
    }
}
