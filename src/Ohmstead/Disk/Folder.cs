using Microsoft.Win32.SafeHandles;

namespace Ohmstead.Disk;

/// <summary>
/// A folder that was opened once. Names are looked up in it and nowhere else, and no link is followed: whatever is put in the way
/// afterwards is met at the moment of acting, and refused.
/// </summary>
/// <remarks>All failures are <see cref="IOException"/>.</remarks>
internal abstract class Folder : IDisposable
{
    /// <summary>Opens a folder.</summary>
    /// <param name="full">Its path, absolute. Links on it are followed: <see cref="FolderPath"/> decides how far they may be.</param>
    public static Folder Open(string full) =>
        OperatingSystem.IsLinux() || OperatingSystem.IsMacOS() ? HandleFolder.From(full) : NamedFolder.From(full);

    /// <summary>Its path as it was opened; for words, and to list it.</summary>
    public abstract string FullName { get; }

    /// <summary>What the system says of it.</summary>
    public abstract FileFacts Facts { get; }

    /// <summary>What stands at a name.</summary>
    public abstract FileFacts Look(string name);

    /// <summary>A folder inside; null when there is none of that name.</summary>
    public abstract Folder? Find(string name);

    /// <summary>Makes a folder inside.</summary>
    /// <returns>False when there is something of that name.</returns>
    public abstract bool TryMake(string name);

    /// <summary>A folder inside, made where there is none.</summary>
    public Folder Make(string name)
    {
        while (true)
        {
            if (Find(name) is { } there)
            {
                return there;
            }

            TryMake(name);
        }
    }

    /// <summary>Makes a file that is not there yet, to read and to write.</summary>
    public abstract SafeFileHandle Create(string name);

    /// <summary>Opens an ordinary file to read it; null when there is none of that name.</summary>
    public abstract SafeFileHandle? Read(string name);

    /// <summary>Gives a file or folder a name in a folder of the same disk. What has that name is replaced; a link itself, and not what it
    /// leads to.</summary>
    public abstract void Rename(string name, Folder to, string newName);

    /// <summary>The same where nothing may have that name yet.</summary>
    /// <returns>False when something has it.</returns>
    public abstract bool RenameToNew(string name, Folder to, string newName);

    /// <summary>Gives two folders the names of each other, in one step.</summary>
    /// <returns>False where the system or the disk cannot do that.</returns>
    public abstract bool Swap(string name, string other);

    /// <summary>Gives a file a second name; a link itself, and not what it leads to.</summary>
    /// <returns>False where the disk has no second names.</returns>
    public abstract bool Link(string name, Folder to, string newName);

    /// <summary>Takes away a file or a link; nothing happens when there is none.</summary>
    public abstract void Delete(string name);

    /// <summary>Takes away an empty folder.</summary>
    public abstract void DeleteFolder(string name);

    /// <summary>Waits until the names of this folder are on the disk.</summary>
    public abstract void Sync();

    /// <summary>Waits until all that was written below this folder is on the disk.</summary>
    public abstract void SyncAll();

    /// <summary>Takes the folder for writing, as long as it is open.</summary>
    /// <returns>False while another has it.</returns>
    public abstract bool TryLock();

    /// <summary>Lets go what of the lock would keep the folder from another name; elsewhere it lasts as long as the folder is
    /// open.</summary>
    public virtual void Unlock() { }

    /// <summary>Takes over the permissions of another folder, and its owner where that is allowed.</summary>
    public abstract void TakeOver(FileFacts other);

    /// <summary>The names in it. Each is looked up anew by whoever acts on it.</summary>
    public IReadOnlyList<string> Names() =>
        [.. Directory.EnumerateFileSystemEntries(FullName, "*", All).Select(path => Path.GetFileName(path))];

    /// <summary>Takes away a file, or a folder with all that is in it. Links are taken away themselves, and never followed.</summary>
    public void DeleteTree(string name)
    {
        if (Look(name).Kind != FileKind.Folder)
        {
            Delete(name);
            return;
        }

        using (var below = Find(name))
        {
            foreach (var inside in below?.Names() ?? [])
            {
                below!.DeleteTree(inside);
            }
        }

        DeleteFolder(name);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        Dispose(disposing: true);
        GC.SuppressFinalize(this);
    }

    /// <summary>Lets the folder go.</summary>
    protected abstract void Dispose(bool disposing);

    /// <summary>A name is one word of a path: nothing leads out of the folder.</summary>
    protected string At(string name) =>
        name is "" or "." or ".." || name.AsSpan().IndexOfAny('/', '\0', Path.DirectorySeparatorChar) >= 0
            ? throw new IOException($"'{name}' is no name of a file or folder")
            : Path.Combine(FullName, name);

    private static EnumerationOptions All =>
        new()
        {
            AttributesToSkip = FileAttributes.None,
            IgnoreInaccessible = false,
            MatchType = MatchType.Simple,
        };
}
