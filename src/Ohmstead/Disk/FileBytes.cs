using Microsoft.Win32.SafeHandles;
using Ohmstead.Report.Html;

namespace Ohmstead.Disk;

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
    /// <param name="file">The file.</param>
    /// <param name="at">From where.</param>
    /// <param name="length">How many at most.</param>
    /// <param name="into">Where to.</param>
    /// <returns>How many were there.</returns>
    public static int Read(SafeFileHandle file, long at, int length, PageBuffer into)
    {
        var done = 0;
        for (
            int read;
            done < length && (read = RandomAccess.Read(file, into.GetSpan(length - done)[..(length - done)], at + done)) > 0;
            done += read
        )
        {
            into.Advance(read);
        }

        return done;
    }

    /// <summary>Whether two files hold the same bytes.</summary>
    public static bool AreSame(SafeFileHandle one, SafeFileHandle other)
    {
        var length = RandomAccess.GetLength(one);
        if (RandomAccess.GetLength(other) != length)
        {
            return false;
        }

        const int Piece = 1 << 16;
        using var first = new PageBuffer(Piece);
        using var second = new PageBuffer(Piece);
        for (long at = 0; at < length; at += Piece)
        {
            first.Clear();
            second.Clear();
            var read = Read(one, at, Piece, first);
            if (read == 0 || Read(other, at, Piece, second) != read || !first.Written.SequenceEqual(second.Written))
            {
                return false;
            }
        }

        return true;
    }
}
