using System.Diagnostics;
using System.Security.Cryptography;
using System.Text;
using Ohmstead.Records.Nodes;

namespace Ohmstead.Writing;

/// <summary>Changes one record on disk: whole or not at all, one writer at a time.</summary>
/// <remarks>
/// The new text is written beside the record, flushed to the disk and renamed over it: whoever reads, and whoever pulls the plug, finds the old
/// record or the new one. Two writers wait for each other at a lock of their own, kept out of the collection so that Git never sees it.
/// </remarks>
internal static class RecordFile
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);
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
        using var turn = Take(full);
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
        using var turn = Take(full);
        var info = new FileInfo(full);
        if (info.Exists)
        {
            throw new IOException("there is a file of that name already; nothing was written");
        }

        info.Directory!.Create();
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
        // One name for the waiting text: what a killed run left is written over by the next.
        var waiting = Path.Combine(record.DirectoryName!, "." + record.Name + ".new");
        var isInPlace = false;
        try
        {
            using (var file = new FileStream(waiting, FileMode.Create, FileAccess.Write, FileShare.None))
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

    private static FileStream Take(string full)
    {
        // Few locks for all records, so that a run over thousands leaves no thousands of files behind; two records that share one wait for each other.
        var (user, place) = (Hash(Environment.UserName), Hash(Path.GetFullPath(full)));
        var path = Path.Combine(Path.GetTempPath(), $"ohmstead-{Convert.ToHexStringLower(user.AsSpan(0, 8))}-{place[0]:x2}.lock");
        var since = Stopwatch.GetTimestamp();
        while (true)
        {
            try
            {
                return new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
            }
            catch (IOException) when (Stopwatch.GetElapsedTime(since) < Patience)
            {
                Thread.Sleep(5);
            }
            catch (IOException taken)
            {
                throw new IOException("another program keeps this record; nothing was written", taken);
            }
        }
    }

    private static byte[] Hash(string text) => SHA256.HashData(Encoding.UTF8.GetBytes(text));
}
