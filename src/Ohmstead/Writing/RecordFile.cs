using System.Text;
using Ohmstead.Records.Nodes;

namespace Ohmstead.Writing;

/// <summary>Changes one record on disk: whole or not at all, one writer at a time.</summary>
/// <remarks>
/// The new text is written beside the record, flushed to the disk and renamed over it: whoever reads, and whoever pulls the plug, finds the old
/// record or the new one. Writers in one folder wait for each other.
/// </remarks>
internal static class RecordFile
{
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The text of a record, without a byte order mark.</summary>
    /// <exception cref="IOException">It is a link, a pipe or a device, is too large, or is not UTF-8 text.</exception>
    public static string Read(string full) => Decode(Content(full), out _);

    /// <summary>Changes a record.</summary>
    /// <param name="full">The file, absolute.</param>
    /// <param name="change">From the text as it is, without a byte order mark: the text as it shall be, or null to leave it; and what is to be told.</param>
    /// <exception cref="IOException">The file is a link, cannot be read or written, another writer keeps it, or another program changed it meanwhile.</exception>
    public static T Change<T>(string full, Func<string, (string? Text, T Result)> change)
    {
        using var turn = WriterTurn.Take(Path.GetDirectoryName(full)!);
        var bytes = Content(full);
        var (text, result) = change(Decode(bytes, out var mark));
        if (text is not null)
        {
            var info = new FileInfo(full);
            if (info.IsReadOnly)
            {
                throw new IOException("the file may not be written; nothing was, until its permissions allow it");
            }

            // Editors know nothing of our lock.
            if (!Content(full).AsSpan().SequenceEqual(bytes))
            {
                throw new IOException("another program changed the file meanwhile; nothing was written, give the command again");
            }

            Replace(info, [.. bytes.AsSpan(0, mark), .. Strict.GetBytes(text)]);
        }

        return result;
    }

    /// <summary>Writes a record that is not there yet.</summary>
    /// <exception cref="IOException">There is one already, or it cannot be written.</exception>
    public static void Create(string full, string text)
    {
        var info = new FileInfo(full);
        info.Directory!.Create();
        using var turn = WriterTurn.Take(info.DirectoryName!);
        if (info.Exists)
        {
            throw new IOException("there is a file of that name already; nothing was written");
        }

        Replace(info, Strict.GetBytes(text));
    }

    private static byte[] Content(string full)
    {
        var info = new FileInfo(full);
        if ((info.Attributes & FileAttributes.ReparsePoint) != FileAttributes.None)
        {
            throw new IOException("a record that is a symbolic link is not written; put the file itself there");
        }

        // A pipe or a device has no length and is never opened: it could keep the run waiting for ever.
        return info.Length > ReadingLimits.Usual.FileBytes ? throw new IOException($"it has {info.Length} bytes, at most {ReadingLimits.Usual.FileBytes} are read")
            : info.Length == 0 ? [] : File.ReadAllBytes(full);
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

    private static void Replace(FileInfo record, byte[] bytes)
    {
        // One name for the waiting text: what a killed run left is taken away by the next, which may be another user's and could not write into it.
        var waiting = Path.Combine(record.DirectoryName!, "." + record.Name + ".new");
        var isInPlace = false;
        try
        {
            File.Delete(waiting);
            using (var file = new FileStream(waiting, FileMode.CreateNew, FileAccess.Write, FileShare.None))
            {
                file.Write(bytes);
                file.Flush(flushToDisk: true);
            }

            if (record.Exists && !OperatingSystem.IsWindows())
            {
                File.SetUnixFileMode(waiting, File.GetUnixFileMode(record.FullName));
            }

            File.Move(waiting, record.FullName, overwrite: true);
            isInPlace = true;
        }
        catch (ArgumentOutOfRangeException tooLarge)
        {
            // That is how the runtime tells that the system allows no file of this size.
            throw new IOException("the system allows no file of this size; nothing was written", tooLarge);
        }
        finally
        {
            if (!isInPlace)
            {
                File.Delete(waiting);
            }
        }
    }
}
