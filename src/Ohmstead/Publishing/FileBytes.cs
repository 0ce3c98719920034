using Microsoft.Win32.SafeHandles;
using Ohmstead.Report.Html;

namespace Ohmstead.Publishing;

/// <summary>Bytes to and from a file at a place of it, whole.</summary>
internal static class FileBytes
{
    /// <summary>Writes all bytes.</summary>
    /// <exception cref="IOException">They cannot be written.</exception>
    public static void Write(SafeFileHandle file, ReadOnlySpan<byte> bytes, long at)
    {
        try
        {
            RandomAccess.Write(file, bytes, at);
        }
        catch (ArgumentOutOfRangeException tooLong)
        {
            // The library takes the file for a wrong argument when it would grow beyond what the disk or the account allows.
            throw new IOException("a file would be longer than this disk or this account allows", tooLong);
        }
    }

    /// <summary>Reads as many bytes as are there, up to a length.</summary>
    /// <returns>How many were there.</returns>
    public static int Read(SafeFileHandle file, long at, int length, PageBuffer into)
    {
        var done = 0;
        for (int read; done < length && (read = RandomAccess.Read(file, into.GetSpan(length - done)[..(length - done)], at + done)) > 0; done += read)
        {
            into.Advance(read);
        }

        return done;
    }
}
