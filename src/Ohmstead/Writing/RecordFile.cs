using System.Text;
using Ohmstead.Disk;
using Ohmstead.Records.Nodes;
using Ohmstead.Report.Html;
using Ohmstead.Running;

namespace Ohmstead.Writing;

/// <summary>Changes one record on disk: whole or not at all, one writer at a time.</summary>
/// <remarks>
/// The new text is written beside the record, flushed to the disk and renamed over it: whoever reads, and whoever pulls the plug, finds the
/// old record or the new one. Writers in one folder wait for each other.
/// </remarks>
internal static class RecordFile
{
    private const int WaitsAtOnce = 8;
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The text of a record, without a byte order mark.</summary>
    /// <param name="root">The collection's folder.</param>
    /// <param name="path">The record, from there.</param>
    /// <exception cref="IOException">It is a link, a pipe or a device, is too large, or is not UTF-8 text.</exception>
    public static string Read(string root, string path)
    {
        using var folder = FolderOf(root, path, makes: false);
        return Decode(Content(folder, path), out _);
    }

    /// <summary>Changes a record.</summary>
    /// <param name="root">The collection's folder.</param>
    /// <param name="path">The record, from there. No link on the way is followed.</param>
    /// <param name="error">Told what a person would not expect of the change, or null.</param>
    /// <param name="change">From the text as it is, without a byte order mark: the text as it shall be, or null to leave it; and what is to
    /// be told.</param>
    /// <exception cref="IOException">The file is a link, cannot be read or written, another writer keeps it, or another program changed it
    /// meanwhile.</exception>
    public static T Change<T>(string root, string path, TextWriter? error, Func<string, (string? Text, T Result)> change)
    {
        using var folder = FolderOf(root, path, makes: false);
        WriterTurn.Take(folder);
        var bytes = Content(folder, path);
        var (text, result) = change(Decode(bytes, out var mark));
        if (text is not null)
        {
            var name = Path.GetFileName(path);
            if (new FileInfo(Path.Combine(folder.FullName, name)).IsReadOnly)
            {
                throw new IOException("the file may not be written; nothing was, until its permissions allow it");
            }

            // Editors know nothing of our lock.
            if (!Content(folder, path).AsSpan().SequenceEqual(bytes))
            {
                throw new IOException("another program changed the file meanwhile; nothing was written, give the command again");
            }

            var old = folder.Look(name);
            WholeFile.Write(folder, name, [.. bytes.AsSpan(0, mark), .. Strict.GetBytes(text)], old);
            if (old.Names > 1)
            {
                // A record is replaced whole or not at all, and that gives the new text to one name.
                error?.WriteLine(
                    Printable.Escape(
                        $"{path}: the file had {old.Names} names on this disk (hard links); the new text has this one, the old text "
                            + "keeps the others"
                    )
                );
            }
        }

        return result;
    }

    /// <summary>Writes a record that is not there yet.</summary>
    /// <param name="root">The collection's folder.</param>
    /// <param name="path">The record, from there. What folders it needs are made.</param>
    /// <param name="text">What it holds.</param>
    /// <exception cref="IOException">There is one already, or it cannot be written.</exception>
    public static void Create(string root, string path, string text)
    {
        using var folder = FolderOf(root, path, makes: true);
        WriterTurn.Take(folder);
        WholeFile.Write(folder, Path.GetFileName(path), Strict.GetBytes(text), FileFacts.None);
    }

    /// <summary>Writes many records, all or none: every text is on the disk beside its record before the first is put in place.</summary>
    /// <param name="root">The collection's folder.</param>
    /// <param name="changes">The records.</param>
    /// <param name="error">Told what a person would not expect of a change.</param>
    /// <param name="placed">Those that are in place, one by one; where a failure is told, they are not taken back here.</param>
    /// <exception cref="IOException">One could not be written, or another program changed it meanwhile.</exception>
    public static void WriteAll(string root, IReadOnlyList<RecordChange> changes, TextWriter error, Stack<RecordChange> placed)
    {
        var folders = new SortedDictionary<string, Folder>(StringComparer.Ordinal);
        var waiting = new List<(Folder Folder, string Name, RecordChange Change, FileFacts Old, byte[] Bytes)>();
        try
        {
            foreach (var change in changes)
            {
                var below = Path.GetDirectoryName(change.Path) ?? string.Empty;
                if (!folders.TryGetValue(below, out var folder))
                {
                    folders[below] = folder = FolderOf(root, change.Path, makes: true);
                    WriterTurn.Take(folder);
                }

                var (bytes, old) = Changed(folder, change);
                waiting.Add((folder, Path.GetFileName(change.Path), change, old, bytes));
            }

            WaitAll(waiting);
            foreach (var (folder, name, change, old, _) in waiting)
            {
                WholeFile.Place(folder, name, old);
                placed.Push(change);
                if (old.Names > 1)
                {
                    error.WriteLine(
                        Printable.Escape(
                            $"{change.Path}: the file had {old.Names} names on this disk (hard links); the new text has this one"
                        )
                    );
                }
            }

            foreach (var folder in folders.Values)
            {
                folder.Sync();
            }
        }
        finally
        {
            foreach (var (folder, name, _, _, _) in waiting.Skip(placed.Count))
            {
                WholeFile.Clear(folder, name);
            }

            foreach (var folder in folders.Values)
            {
                folder.Dispose();
            }
        }
    }

    // A disk takes several waits at once in the time of one.
    private static void WaitAll(IReadOnlyList<(Folder Folder, string Name, RecordChange Change, FileFacts Old, byte[] Bytes)> waiting)
    {
        try
        {
            Parallel.ForEach(waiting, new ParallelOptions { MaxDegreeOfParallelism = WaitsAtOnce }, one =>
                WholeFile.Wait(one.Folder, one.Name, one.Bytes, one.Old)
            );
        }
        catch (AggregateException problem)
            when (problem.InnerExceptions.FirstOrDefault(inner => inner is IOException or UnauthorizedAccessException) is { } first)
        {
            throw new IOException(first.Message, first);
        }
    }

    // The bytes that a record will have, and what stands there; a byte order mark stays.
    private static (byte[] Bytes, FileFacts Old) Changed(Folder folder, RecordChange change)
    {
        if (change.Before is null)
        {
            return (Strict.GetBytes(change.After), FileFacts.None);
        }

        var bytes = Content(folder, change.Path);
        if (Decode(bytes, out var mark) != change.Before)
        {
            throw new IOException($"{change.Path}: another program changed the file meanwhile");
        }

        if (new FileInfo(Path.Combine(folder.FullName, Path.GetFileName(change.Path))).IsReadOnly)
        {
            throw new IOException($"{change.Path}: the file may not be written");
        }

        return ([.. bytes.AsSpan(0, mark), .. Strict.GetBytes(change.After)], folder.Look(Path.GetFileName(change.Path)));
    }

    /// <summary>Takes away a record that was just written, unless somebody changed it meanwhile.</summary>
    /// <param name="root">The collection's folder.</param>
    /// <param name="path">The record, from there.</param>
    /// <param name="text">What was written.</param>
    /// <returns>Whether it is gone.</returns>
    public static bool TakeBack(string root, string path, string text)
    {
        using var folder = FolderOf(root, path, makes: false);
        WriterTurn.Take(folder);
        if (Decode(Content(folder, path), out _) != text)
        {
            return false;
        }

        folder.Delete(Path.GetFileName(path));
        return true;
    }

    private static Folder FolderOf(string root, string path, bool makes) =>
        FolderPath.Below(root, Path.GetDirectoryName(path) ?? string.Empty, makes);

    private static byte[] Content(Folder folder, string path)
    {
        var name = Path.GetFileName(path);
        if (folder.Look(name).Kind == FileKind.Link)
        {
            throw new IOException("a record that is a symbolic link is not written; put the file itself there");
        }

        using var file = folder.Read(name) ?? throw DiskFault.Other(FileKind.Missing, FileKind.File, Path.Combine(folder.FullName, name));
        var length = RandomAccess.GetLength(file);
        if (length > ReadingLimits.Usual.FileBytes)
        {
            throw new IOException($"it has {length} bytes, at most {ReadingLimits.Usual.FileBytes} are read");
        }

        using var bytes = new PageBuffer((int)Math.Max(length, 1));
        FileBytes.Read(file, 0, (int)length, bytes);
        return bytes.Written.ToArray();
    }

    private static string Decode(ReadOnlySpan<byte> bytes, out int mark)
    {
        mark = bytes.StartsWith(Encoding.UTF8.Preamble) ? Encoding.UTF8.Preamble.Length : 0;
        try
        {
            return Strict.GetString(bytes[mark..]);
        }
        catch (DecoderFallbackException problem)
        {
            throw new IOException("the record is not UTF-8 text; 'check' names the byte", problem);
        }
    }
}

/// <summary>A record that begins or changes.</summary>
/// <param name="Path">Its path from the root of the collection.</param>
/// <param name="Before">Its text, without a byte order mark; null where it is not there yet.</param>
/// <param name="After">Its text as it will be.</param>
internal sealed record RecordChange(string Path, string? Before, string After);
