using System.Collections.Concurrent;
using System.Collections.Frozen;
using Microsoft.Win32.SafeHandles;
using Ohmstead.Output;
using Ohmstead.Report.Html;
using Ohmstead.Report.Pages;

namespace Ohmstead.Publishing;

/// <summary>The folder that pages are written to: the old report stays whole until the new one is complete. Only what changed is written; only files that this program wrote are ever taken away.</summary>
/// <remarks>New pages wait in a folder of their own inside, on the same disk, and are renamed into place at the end.</remarks>
internal sealed class ReportFolder : IReportFiles, IDisposable
{
    /// <summary>The list of files written last time; its presence says that the folder is ours.</summary>
    private const string ListName = ".ohmstead-report";

    /// <summary>Where new files wait.</summary>
    private const string WaitingName = ".ohmstead-new";

    /// <summary>What a run holds as long as it writes, among the new files.</summary>
    private const string LockName = "lock";

    /// <summary>Where pages wait that are not finished yet.</summary>
    private const string HeldName = "held";

    private static readonly string[] Records = ["boards", "designs", "photos"];

    private readonly ConcurrentDictionary<string, bool> files = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, bool> made = new(StringComparer.Ordinal);
    private readonly ReaderWriterLockSlim gate = new();
    private readonly FileStream ours;
    private readonly string waiting;
    private HeldPages held;
    private readonly FrozenSet<string> before;
    private readonly bool isNew;
    private volatile bool isClosed;

    private ReportFolder(string root, FrozenSet<string> before, bool isNew, FileStream ours)
    {
        Root = root;
        waiting = Path.Combine(root, WaitingName);
        held = new(Path.Combine(waiting, HeldName));
        this.before = before;
        this.isNew = isNew;
        this.ours = ours;
    }

    /// <summary>The folder, absolute, links resolved.</summary>
    public string Root { get; }

    /// <summary>The files that the last run wrote into a folder; none when it is no report.</summary>
    public static string[] FilesOf(string root) => File.Exists(Path.Combine(root, ListName)) ? File.ReadAllLines(Path.Combine(root, ListName)) : [];

    /// <summary>How many files are new or changed.</summary>
    public int Written => files.Values.Count(isWritten => isWritten);

    /// <summary>How many files already had the same bytes.</summary>
    public int Unchanged => files.Values.Count(isWritten => !isWritten);

    /// <summary>Opens the folder for one run.</summary>
    /// <exception cref="IOException">It cannot be written, or another run is writing it.</exception>
    public static ReportFolder Open(string root)
    {
        var wasThere = Directory.Exists(root);
        var below = Path.Combine(root, WaitingName);
        Directory.CreateDirectory(below);
        var taken = Take(Path.Combine(below, LockName), root);
        // What a run that was killed left waiting is no page of this one.
        Empty(below);
        return new(root, FilesOf(root).ToFrozenSet(StringComparer.Ordinal), !wasThere, taken);
    }

    /// <summary>Why pages must not be written into a folder, or null: it must be empty, new or ours, and must not be or hold the collection.</summary>
    /// <param name="root">The folder, absolute, links resolved.</param>
    /// <param name="source">The collection's folder, likewise.</param>
    public static string? Refusal(string root, string source)
    {
        var separator = Path.DirectorySeparatorChar;
        if (root == source || (source + separator).StartsWith(root + separator, StringComparison.Ordinal) || root == Path.GetPathRoot(root)
            || root == Environment.GetFolderPath(Environment.SpecialFolder.UserProfile))
        {
            return $"pages are not written into '{Printable.Of(root)}': it is or holds the collection, your home or the root; give another folder with --to";
        }

        if (Records.Any(inside => (root + separator).StartsWith(Path.Combine(source, inside) + separator, StringComparison.Ordinal)))
        {
            return $"pages are not written among the records in '{Printable.Of(root)}'; give another folder with --to";
        }

        if (File.Exists(root))
        {
            return $"'{Printable.Of(root)}' is a file; give a folder with --to";
        }

        // What a run that was killed left waiting is ours too.
        return Directory.Exists(root) && !File.Exists(Path.Combine(root, ListName)) && Directory.EnumerateFileSystemEntries(root).Any(entry => Path.GetFileName(entry) != WaitingName)
            ? $"'{Printable.Of(root)}' has files that are not pages of ours; give an empty folder with --to"
            : null;
    }

    /// <summary>Puts a file by, whole, unless the same bytes are in place already. Called from several workers; does nothing once the run has ended.</summary>
    public void Put(string path, ReadOnlySpan<byte> bytes)
    {
        gate.EnterReadLock();
        try
        {
            var isChanged = !isClosed && !(before.Contains(path) && IsSame(Path.Combine(Root, path), bytes));
            if (isClosed || !files.TryAdd(path, isChanged) || !isChanged)
            {
                return;
            }

            Write(Path.Combine(waiting, path), bytes);
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
            if (isClosed)
            {
                return;
            }

            held.Dispose();
            Empty(waiting);
            files.Clear();
            made.Clear();
            held = new(Path.Combine(waiting, HeldName));
        }
        finally
        {
            gate.ExitWriteLock();
        }
    }

    /// <summary>Keeps bytes on the disk until <see cref="TakeKept"/> asks for them.</summary>
    /// <returns>What to ask by.</returns>
    public HeldPage Keep(ReadOnlySpan<byte> bytes)
    {
        gate.EnterReadLock();
        try
        {
            return isClosed ? default : held.Keep(bytes);
        }
        finally
        {
            gate.ExitReadLock();
        }
    }

    /// <summary>Gives back what was kept; nothing once the run has ended.</summary>
    /// <param name="page">What <see cref="Keep"/> gave.</param>
    /// <param name="into">Where to.</param>
    public void TakeKept(HeldPage page, PageBuffer into)
    {
        gate.EnterReadLock();
        try
        {
            if (!isClosed)
            {
                held.Take(page, into);
            }
        }
        finally
        {
            gate.ExitReadLock();
        }
    }

    /// <summary>Starts a file that is written piece by piece and put by with <see cref="Put(string, FileStream)"/>; one that never is goes with the waiting folder.</summary>
    public FileStream Start(string path)
    {
        gate.EnterReadLock();
        try
        {
            // A run that was taken back must not make its waiting folder again.
            return isClosed ? throw new IOException($"the pages in '{Root}' were left as they were") : Waiting(Path.Combine(waiting, path));
        }
        finally
        {
            gate.ExitReadLock();
        }
    }

    // A folder is made once, and asked for by each of its ten thousand files. No lock is taken on a file that nobody else can know, and none is cut
    // to nought: a file system that minds power cuts would then write its bytes to the disk before going on.
    private void Write(string full, ReadOnlySpan<byte> bytes)
    {
        var folder = Path.GetDirectoryName(full)!;
        made.GetOrAdd(folder, static folder => Directory.CreateDirectory(folder).Exists);

        using var file = New(full);
        FileBytes.Write(file, bytes, 0);
    }

    private static SafeFileHandle New(string full)
    {
        try
        {
            return File.OpenHandle(full, FileMode.CreateNew, FileAccess.Write, FileShare.ReadWrite | FileShare.Delete);
        }
        catch (IOException) when (File.Exists(full))
        {
            // Where capitals do not count, the numbers of two boards may name one file. The records are in error, and a check says so.
            return File.OpenHandle(full, FileMode.Create, FileAccess.Write, FileShare.ReadWrite | FileShare.Delete);
        }
    }

    private static FileStream Waiting(string full)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(full)!);
        return new FileStream(full, FileMode.CreateNew, FileAccess.ReadWrite, FileShare.ReadWrite | FileShare.Delete, 1 << 16);
    }

    /// <summary>Puts a file by that was started here, and closes it.</summary>
    public void Put(string path, FileStream started)
    {
        gate.EnterReadLock();
        try
        {
            if (!isClosed)
            {
                files.TryAdd(path, !IsSame(Path.Combine(Root, path), started));
            }
        }
        finally
        {
            started.Dispose();
            gate.ExitReadLock();
        }
    }

    /// <summary>A file that the last run wrote, as it is now; null when it wrote none of that name or it is gone.</summary>
    public byte[]? Kept(string path) => before.Contains(path) && File.Exists(Path.Combine(Root, path)) ? File.ReadAllBytes(Path.Combine(Root, path)) : null;

    /// <summary>Puts everything in place, takes away pages of boards that are gone, and keeps the list of what is ours.</summary>
    public void Finish()
    {
        Put(".nojekyll", []);
        gate.EnterWriteLock();
        try
        {
            File.WriteAllText(Path.Combine(waiting, ListName), string.Join('\n', files.Keys.Order(StringComparer.Ordinal)) + "\n");
            // The list first: should the rest be cut short, the folder is still known as ours.
            File.Move(Path.Combine(waiting, ListName), Path.Combine(Root, ListName), overwrite: true);
            var whole = files.Where(file => file.Value).Select(file => Top(file.Key)).OfType<string>().ToHashSet(StringComparer.Ordinal);
            whole.RemoveWhere(folder => Path.Exists(Path.Combine(Root, folder)));
            // A folder that was not there before comes into place with all its files at once.
            foreach (var folder in whole.Order(StringComparer.Ordinal))
            {
                Directory.Move(Path.Combine(waiting, folder), Path.Combine(Root, folder));
            }

            foreach (var path in files.Where(file => file.Value && !(Top(file.Key) is { } top && whole.Contains(top))).Select(file => file.Key).Order(StringComparer.Ordinal))
            {
                var full = Path.Combine(Root, path);
                Directory.CreateDirectory(Path.GetDirectoryName(full)!);
                File.Move(Path.Combine(waiting, path), full, overwrite: true);
            }

            foreach (var gone in before.Where(path => !files.ContainsKey(path) && !Path.IsPathRooted(path) && !path.Split('/').Contains("..")))
            {
                File.Delete(Path.Combine(Root, gone));
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
            if (isClosed)
            {
                return;
            }

            Close();
            if (isNew)
            {
                Directory.Delete(Root);
            }
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

    private static void Empty(string below)
    {
        foreach (var left in Directory.EnumerateDirectories(below))
        {
            Directory.Delete(left, recursive: true);
        }

        foreach (var left in Directory.EnumerateFiles(below).Where(file => Path.GetFileName(file) != LockName))
        {
            File.Delete(left);
        }
    }

    private static FileStream Take(string path, string root)
    {
        try
        {
            return new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
        }
        catch (IOException taken)
        {
            throw new IOException($"another run is writing pages into '{root}'; wait for it, or give another folder with --to", taken);
        }
    }

    private static bool IsSame(string full, ReadOnlySpan<byte> bytes)
    {
        var info = new FileInfo(full);
        if (!info.Exists || info.Length != bytes.Length)
        {
            return false;
        }

        // Room of its own for each of ten thousand pages would be garbage of the slow kind.
        using var there = new PageBuffer(Math.Max(bytes.Length, 1));
        using var file = File.OpenHandle(full);
        FileBytes.Read(file, 0, bytes.Length, there);
        return bytes.SequenceEqual(there.Written);
    }

    private static bool IsSame(string full, FileStream started)
    {
        var info = new FileInfo(full);
        if (!info.Exists || info.Length != started.Length)
        {
            return false;
        }

        using var old = info.OpenRead();
        started.Position = 0;
        Span<byte> then = stackalloc byte[4096];
        Span<byte> now = stackalloc byte[4096];
        int read;
        while ((read = old.ReadAtLeast(then, then.Length, throwOnEndOfStream: false)) > 0)
        {
            if (started.ReadAtLeast(now, read, throwOnEndOfStream: false) != read || !then[..read].SequenceEqual(now[..read]))
            {
                return false;
            }
        }

        return true;
    }

    private static string? Top(string path) => path.IndexOf('/', StringComparison.Ordinal) is > 0 and var end ? path[..end] : null;

    private void Close()
    {
        isClosed = true;
        held.Dispose();
        ours.Dispose();
        Directory.Delete(waiting, recursive: true);
    }
}
