using System.Collections.Concurrent;
using System.Collections.Frozen;
using Microsoft.Win32.SafeHandles;
using Ohmstead.Disk;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;

namespace Ohmstead.Publishing;

/// <summary>The folder that pages are written to: the old report stays whole until the new one is complete. Only files that this program
/// wrote are ever taken away.</summary>
/// <remarks>
/// New pages wait in a folder of their own on the same disk. At the end it becomes the report in one step (<see cref="PageSwitch"/>), or
/// its pages are put in place one by one where that cannot be (<see cref="PagesInPlace"/>). No link is followed.
/// </remarks>
internal sealed class ReportFolder : IReportFiles, IDisposable
{
    private readonly ConcurrentDictionary<string, bool> files = new(StringComparer.Ordinal);
    private readonly ReaderWriterLockSlim gate = new();
    private readonly Folder parent;
    private readonly FolderTree? old;
    private readonly WaitingPages waiting;
    private readonly FrozenSet<string> before;
    private volatile bool isClosed;

    private ReportFolder(string root, Folder parent, Folder? there, FrozenSet<string> before, WaitingPages waiting)
    {
        Root = root;
        this.parent = parent;
        this.waiting = waiting;
        old = there is null ? null : new(there);
        this.before = before;
    }

    /// <summary>The folder, absolute.</summary>
    public string Root { get; }

    /// <summary>How many files are new or changed.</summary>
    public int Written => files.Values.Count(isWritten => isWritten);

    /// <summary>How many files already had the same bytes.</summary>
    public int Unchanged => files.Values.Count(isWritten => !isWritten);

    /// <summary>Opens the folder for one run.</summary>
    /// <param name="path">The folder, as it was asked for.</param>
    /// <param name="collection">The collection's folder, or null when it is not known.</param>
    /// <exception cref="IOException">It cannot be written, there is a link in the way, or another run is writing it.</exception>
    public static ReportFolder Open(string path, string? collection)
    {
        var root = FolderPath.Asked(path, collection);
        var name = Path.GetFileName(root);
        var above = FolderPath.Open(Path.GetDirectoryName(root) ?? root, collection, makes: true);
        Folder? there = null;
        try
        {
            there = above.Find(name);
            return new(root, above, there, there is null ? [] : ReportList.Read(there), Wait(root, above, there));
        }
        catch
        {
            there?.Dispose();
            above.Dispose();
            throw;
        }
    }

    /// <summary>Puts a file by, whole, unless the same bytes are in place already. Called from several workers; does nothing once the run
    /// has ended.</summary>
    public void Put(string path, ReadOnlySpan<byte> bytes)
    {
        gate.EnterReadLock();
        try
        {
            var isChanged = !isClosed && !IsThere(path, bytes);
            if (!isClosed && files.TryAdd(path, isChanged) && isChanged)
            {
                // No lock is taken on a file that nobody else can know, and none is cut to zero: a file system that minds power cuts
                // would then write its bytes to the disk before going on.
                using var file = New(path);
                FileBytes.Write(file, bytes, 0);
            }
        }
        finally
        {
            gate.ExitReadLock();
        }
    }

    /// <summary>Begins the run again: what was put by so far is no page of this report. No file that was started may be open.</summary>
    public void Restart()
    {
        gate.EnterWriteLock();
        try
        {
            if (!isClosed)
            {
                waiting.Restart();
                files.Clear();
            }
        }
        finally
        {
            gate.ExitWriteLock();
        }
    }

    /// <summary>Keeps bytes on the disk until <see cref="TakeKept"/> asks for them.</summary>
    /// <returns>What to ask by.</returns>
    public HeldPiece Keep(ReadOnlySpan<byte> bytes)
    {
        gate.EnterReadLock();
        try
        {
            return isClosed ? default : waiting.Held.Keep(bytes);
        }
        finally
        {
            gate.ExitReadLock();
        }
    }

    /// <summary>Gives back what was kept; nothing once the run has ended.</summary>
    /// <param name="piece">What <see cref="Keep"/> gave.</param>
    /// <param name="into">Where to.</param>
    public void TakeKept(HeldPiece piece, PageBuffer into)
    {
        gate.EnterReadLock();
        try
        {
            if (!isClosed)
            {
                waiting.Held.Take(piece, into);
            }
        }
        finally
        {
            gate.ExitReadLock();
        }
    }

    /// <summary>Starts a file that is written piece by piece and put by with <see cref="Put(string, FileStream)"/>; one that never is goes
    /// with the waiting folder.</summary>
    public FileStream Start(string path)
    {
        gate.EnterReadLock();
        try
        {
            // A run that was taken back must not make its waiting folder again.
            return isClosed ? throw new IOException($"the pages in '{Root}' were left as they were") : new WaitingFile(New(path));
        }
        finally
        {
            gate.ExitReadLock();
        }
    }

    /// <summary>Puts a file by that was started here, and closes it.</summary>
    public void Put(string path, FileStream started)
    {
        gate.EnterReadLock();
        try
        {
            if (isClosed)
            {
                return;
            }

            started.Flush(flushToDisk: false);
            using var there = OldFile(path);
            var isChanged = there is null || !FileBytes.AreSame(started.SafeFileHandle, there);
            if (files.TryAdd(path, isChanged) && !isChanged)
            {
                using var place = waiting.Tree.Make(path);
                place.Folder.Delete(place.Name);
            }
        }
        finally
        {
            started.Dispose();
            gate.ExitReadLock();
        }
    }

    /// <summary>A file that the last run wrote, as it is now; null when it wrote none of that name or it is gone.</summary>
    public byte[]? Kept(string path)
    {
        using var file = OldFile(path);
        if (file is null)
        {
            return null;
        }

        using var bytes = new PageBuffer();
        FileBytes.Read(file, 0, (int)Math.Min(RandomAccess.GetLength(file), int.MaxValue), bytes);
        return bytes.Written.ToArray();
    }

    /// <summary>The files that the last run wrote.</summary>
    public IReadOnlyCollection<string> Before => before;

    /// <summary>Puts everything in place, takes away pages of boards that are gone, and keeps the list of what is ours.</summary>
    public void Finish()
    {
        Put(".nojekyll", []);
        gate.EnterWriteLock();
        try
        {
            if (isClosed)
            {
                return;
            }

            var list = ReportList.Bytes(files.Keys);
            if (old is null || files.Values.Any(isWritten => isWritten) || !IsThere(ReportPlace.ListName, list, isListed: true))
            {
                using (var file = New(ReportPlace.ListName))
                {
                    FileBytes.Write(file, list, 0);
                }

                Switch();
            }

            if (old?.Root.Look(ReportPlace.WaitingInside).Kind == FileKind.Folder && !waiting.IsInside)
            {
                old.Root.DeleteTree(ReportPlace.WaitingInside);
            }

            Close();
        }
        finally
        {
            gate.ExitWriteLock();
        }
    }

    /// <summary>Leaves the report as it was before this run, unless the run has finished.</summary>
    public void Abandon()
    {
        if (isClosed)
        {
            return;
        }

        gate.EnterWriteLock();
        try
        {
            if (!isClosed)
            {
                Close();
            }
        }
        catch (IOException)
        {
            // What made the run fail is told; what could not be taken away is taken away by the next.
        }
        finally
        {
            gate.ExitWriteLock();
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        Abandon();
        gate.Dispose();
    }

    private void Switch()
    {
        if (old is not null)
        {
            if (!new PageSwitch(parent, Path.GetFileName(Root), old.Root, waiting, before, files).Try())
            {
                new PagesInPlace(old, waiting, before, files).Write();
            }

            return;
        }

        waiting.Complete();
        waiting.Tree.Root.SyncAll();
        waiting.Tree.Root.Unlock();
        if (!parent.RenameToNew(waiting.Name, parent, Path.GetFileName(Root)))
        {
            throw new IOException($"'{Root}' was put there by somebody else during the run; give the command again");
        }

        parent.Sync();
    }

    private static WaitingPages Wait(string root, Folder above, Folder? there)
    {
        var name = Path.GetFileName(root);
        if (there is not null)
        {
            if (!there.TryLock())
            {
                throw WaitingPages.AnotherRun(root);
            }

            if (there.Look(ReportPlace.WaitingInside).Kind is var kind and not (FileKind.Missing or FileKind.Folder))
            {
                throw DiskFault.Other(kind, FileKind.Folder, Path.Combine(root, ReportPlace.WaitingInside));
            }
        }

        var isOneDisk =
            there is null
            || (there.Facts.Identity.Disk, there.Facts.Identity.Mount) == (above.Facts.Identity.Disk, above.Facts.Identity.Mount);
        if (isOneDisk)
        {
            try
            {
                return WaitingPages.Open(above, ReportPlace.WaitingBeside(name), there, root, isInside: false);
            }
            catch (IOException closed) when (there is not null && SystemNumbers.IsClosed(closed.HResult))
            {
                // Whoever may write the report need not be allowed to make anything beside it.
            }
        }

        return WaitingPages.Open(there!, ReportPlace.WaitingInside, there, root, isInside: true);
    }

    private bool IsThere(string path, ReadOnlySpan<byte> bytes, bool isListed = false)
    {
        using var file = OldFile(path, isListed);
        if (file is null || RandomAccess.GetLength(file) != bytes.Length)
        {
            return false;
        }

        // Room of its own for each of ten thousand pages would be garbage of the slow kind.
        using var there = new PageBuffer(Math.Max(bytes.Length, 1));
        FileBytes.Read(file, 0, bytes.Length, there);
        return bytes.SequenceEqual(there.Written);
    }

    private SafeFileHandle? OldFile(string path, bool isListed = false)
    {
        if (old is null || !(isListed || before.Contains(path)))
        {
            return null;
        }

        using var place = old.Find(path) ?? default;
        return place.Folder?.Read(place.Name);
    }

    private SafeFileHandle New(string path)
    {
        using var place = waiting.Tree.Make(path);
        try
        {
            return place.Folder.Create(place.Name);
        }
        catch (IOException) when (place.Folder.Look(place.Name).Kind == FileKind.File)
        {
            // Where capitals do not count, the numbers of two boards may name one file. The records are in error, and a check says so.
            place.Folder.Delete(place.Name);
            return place.Folder.Create(place.Name);
        }
    }

    private void Close()
    {
        isClosed = true;
        try
        {
            waiting.Discard();
        }
        finally
        {
            waiting.Dispose();
            old?.Dispose();
            parent.Dispose();
        }
    }
}
