using Microsoft.Win32.SafeHandles;
using Ohmstead.Disk;
using Ohmstead.Report.Html;

namespace Ohmstead.Publishing;

/// <summary>Where a piece of a file waits that is not finished yet.</summary>
/// <param name="At">How many bytes come before it.</param>
/// <param name="Length">How many bytes it has.</param>
internal readonly record struct HeldPiece(long At, int Length);

/// <summary>Pieces that wait on the disk, one behind the other in one file: memory does not grow with what is not finished yet, and no file
/// is made for each.</summary>
/// <param name="folder">Where.</param>
/// <param name="name">The file, which must not be there; it is made for the first piece.</param>
internal sealed class HeldPieces(Folder folder, string name) : IDisposable
{
    private readonly Lock opening = new();
    private SafeFileHandle? file;
    private long end;

    /// <summary>Keeps a piece. Called from several workers.</summary>
    public HeldPiece Keep(ReadOnlySpan<byte> piece)
    {
        var at = Interlocked.Add(ref end, piece.Length) - piece.Length;
        FileBytes.Write(File(), piece, at);
        return new(at, piece.Length);
    }

    /// <summary>Gives a piece back. Called from several workers.</summary>
    /// <param name="piece">Which one.</param>
    /// <param name="into">Where to.</param>
    /// <exception cref="EndOfStreamException">The disk gives less than was kept.</exception>
    public void Take(HeldPiece piece, PageBuffer into)
    {
        if (FileBytes.Read(File(), piece.At, piece.Length, into) < piece.Length)
        {
            throw new EndOfStreamException($"a page that waited in '{Path.Combine(folder.FullName, name)}' cannot be read again");
        }
    }

    /// <inheritdoc/>
    public void Dispose() => file?.Dispose();

    private SafeFileHandle File()
    {
        lock (opening)
        {
            return file ??= folder.Create(name);
        }
    }
}
