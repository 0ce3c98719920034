using Microsoft.Win32.SafeHandles;

namespace Ohmstead.Disk;

/// <summary>A folder by its path, for systems whose calls take no open folder (Windows).</summary>
/// <remarks>
/// Each time before anything is done, the folder and all above it, up to the one that was opened first, are looked at again: none may be a
/// link.
/// The look and the act are two steps, so a link put there just between them is not seen; no such system lets an ordinary account make
/// links.
/// </remarks>
/// <param name="fullName">Its path, absolute.</param>
/// <param name="above">The folder it was found in; null for the one that was opened by its path.</param>
internal sealed class NamedFolder(string fullName, NamedFolder? above) : Folder
{
    private FileStream? ours;

    /// <inheritdoc/>
    public override string FullName { get; } = fullName;

    /// <inheritdoc/>
    public override FileFacts Facts => new(FileKind.Folder, 0);

    /// <summary>Opens a folder by its path.</summary>
    public static NamedFolder From(string full) =>
        Directory.Exists(full)
            ? new(full, null)
            : throw DiskFault.Other(File.Exists(full) ? FileKind.File : FileKind.Missing, FileKind.Folder, full);

    /// <inheritdoc/>
    public override FileFacts Look(string name)
    {
        var info = new FileInfo(Real(name));
        return (int)info.Attributes == -1 ? FileFacts.None
            : (info.Attributes & FileAttributes.ReparsePoint) != FileAttributes.None ? new(FileKind.Link, 0)
            : (info.Attributes & FileAttributes.Directory) != FileAttributes.None ? new(FileKind.Folder, 0)
            : (info.Attributes & FileAttributes.Device) != FileAttributes.None ? new(FileKind.Other, 0)
            : new(FileKind.File, info.Length) { Names = 1 };
    }

    /// <inheritdoc/>
    public override Folder? Find(string name) =>
        Look(name).Kind switch
        {
            FileKind.Missing => null,
            FileKind.Folder => new NamedFolder(At(name), this),
            var other => throw DiskFault.Other(other, FileKind.Folder, At(name)),
        };

    /// <inheritdoc/>
    public override bool TryMake(string name)
    {
        var isNew = Look(name).Kind == FileKind.Missing;
        if (isNew)
        {
            Try(() => Directory.CreateDirectory(Real(name)));
        }

        return isNew;
    }

    /// <inheritdoc/>
    public override SafeFileHandle Create(string name) =>
        Try(() => File.OpenHandle(Real(name), System.IO.FileMode.CreateNew, FileAccess.ReadWrite, FileShare.ReadWrite | FileShare.Delete));

    /// <inheritdoc/>
    public override SafeFileHandle? Read(string name) =>
        Look(name).Kind switch
        {
            FileKind.Missing => null,
            FileKind.File => Try(() => File.OpenHandle(Real(name), share: FileShare.ReadWrite | FileShare.Delete)),
            var other => throw DiskFault.Other(other, FileKind.File, At(name)),
        };

    /// <inheritdoc/>
    public override void Rename(string name, Folder to, string newName) => Move(name, (NamedFolder)to, newName, replaces: true);

    /// <inheritdoc/>
    public override bool RenameToNew(string name, Folder to, string newName)
    {
        var isNew = to.Look(newName).Kind == FileKind.Missing;
        if (isNew)
        {
            Move(name, (NamedFolder)to, newName, replaces: false);
        }

        return isNew;
    }

    /// <inheritdoc/>
    public override bool Swap(string name, string other) => false;

    /// <inheritdoc/>
    public override bool Link(string name, Folder to, string newName) => false;

    /// <inheritdoc/>
    public override void Delete(string name)
    {
        if (Look(name).Kind != FileKind.Missing)
        {
            Try(() => File.Delete(Real(name)));
        }
    }

    /// <inheritdoc/>
    public override void DeleteFolder(string name)
    {
        if (Look(name).Kind == FileKind.Folder)
        {
            Try(() => Directory.Delete(Real(name)));
        }
    }

    /// <inheritdoc/>
    public override void Sync() => Real();

    /// <inheritdoc/>
    public override void SyncAll() => Real();

    /// <inheritdoc/>
    public override bool TryLock()
    {
        try
        {
            ours = new FileStream(
                Real(".ohmstead.lock"),
                System.IO.FileMode.OpenOrCreate,
                FileAccess.ReadWrite,
                FileShare.None,
                1,
                FileOptions.DeleteOnClose
            );
            return true;
        }
        catch (Exception taken) when (taken is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    /// <inheritdoc/>
    public override void Unlock() => ours?.Dispose();

    /// <inheritdoc/>
    public override void TakeOver(FileFacts other) => Real();

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        if (disposing)
        {
            ours?.Dispose();
        }
    }

    private void Move(string name, NamedFolder to, string newName, bool replaces)
    {
        if (Look(name).Kind == FileKind.Folder)
        {
            Try(() => Directory.Move(Real(name), to.Real(newName)));
        }
        else
        {
            Try(() => File.Move(Real(name), to.Real(newName), replaces));
        }
    }

    private string Real(string name)
    {
        Real();
        return At(name);
    }

    private void Real()
    {
        for (var folder = this; folder.IsInside; folder = folder.Above!)
        {
            if ((new DirectoryInfo(folder.FullName).Attributes & FileAttributes.ReparsePoint) != FileAttributes.None)
            {
                throw DiskFault.Link(folder.FullName);
            }
        }
    }

    private NamedFolder? Above => above;

    private bool IsInside => above is not null;

    private static void Try(Action act) =>
        Try(() =>
        {
            act();
            return 0;
        });

    private static T Try<T>(Func<T> act)
    {
        try
        {
            return act();
        }
        catch (UnauthorizedAccessException denied)
        {
            throw new IOException(denied.Message, denied);
        }
    }
}
