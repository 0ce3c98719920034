using Microsoft.Win32.SafeHandles;
using Ohmstead.Disk;
using Ohmstead.Report.Html;

namespace Ohmstead.Publishing;

/// <summary>Where a page waits that is not finished yet.</summary>
/// <param name="At">How many bytes come before it.</param>
/// <param name="Length">How many bytes it has.</param>
internal readonly record struct HeldPage(long At, int Length);

/// <summary>Pages that wait on the disk, one behind the other in one file: memory does not grow with what is not finished yet, and no file
/// is made for each.</summary>
/// <param name="folder">Where.</param>
/// <param name="name">The file, which must not be there; it is made for the first page.</param>
internal sealed class HeldPages(Folder folder, string name) : IDisposable
{
    private readonly Lock opening = new();
    private SafeFileHandle? file;
    private long end;

    /// <summary>Keeps a page. Called from several workers.</summary>
    public HeldPage Keep(ReadOnlySpan<byte> page)
    {
        var at = Interlocked.Add(ref end, page.Length) - page.Length;
        FileBytes.Write(File(), page, at);
        return new(at, page.Length);
    }

    /// <summary>Gives a page back. Called from several workers.</summary>
    /// <param name="page">Which one.</param>
    /// <param name="into">Where to.</param>
    /// <exception cref="EndOfStreamException">The disk gives less than was kept.</exception>
    public void Take(HeldPage page, PageBuffer into)
    {
        if (FileBytes.Read(File(), page.At, page.Length, into) < page.Length)
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
