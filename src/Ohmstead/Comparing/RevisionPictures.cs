using System.Collections.Concurrent;
using System.Text;
using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Collections;
using Ohmstead.Git;
using Ohmstead.Pictures;

namespace Ohmstead.Comparing;

/// <summary>The pictures of a revision.</summary>
/// <param name="entries">The files, by path.</param>
/// <param name="objects">Their contents.</param>
internal sealed class RevisionPictures(IReadOnlyDictionary<string, GitEntry> entries, GitObjects objects) : IPictures
{
    // What Git LFS keeps elsewhere is named in the repository by a few lines that begin so; how the picture looks is then not known.
    private static readonly byte[] Elsewhere = Encoding.ASCII.GetBytes("version https://git-lfs.github.com/spec/");

    // A picture beyond this is refused by its length on the disk as well; nothing is said of it here.
    private const long Most = 256L << 20;

    private readonly ConcurrentDictionary<string, PictureFault?> faults = new(StringComparer.Ordinal);

    /// <inheritdoc/>
    public PictureState At(string path) =>
        FolderPictures.WhyNot(path) is { } wrong ? wrong
        : entries.TryGetValue(path, out var entry)
            ? entry.Kind == GitEntryKind.File ? PictureState.Present
                : PictureState.Outside
        : IsBehindLink(path) ? PictureState.Outside
        : PictureState.Missing;

    /// <inheritdoc/>
    public IEnumerable<string> NamesInFolder(string path)
    {
        var folder = path[..(path.LastIndexOf('/') + 1)];
        return At(path) == PictureState.Missing
            ? entries
                .Keys.Where(one =>
                    one.StartsWith(folder, StringComparison.Ordinal) && one.IndexOf('/', folder.Length) < 0 && one.Length > folder.Length
                )
                .Select(one => one[folder.Length..])
                .Order(StringComparer.Ordinal)
            : [];
    }

    /// <inheritdoc/>
    public PictureFault? Fault(string path) => faults.GetOrAdd(path, Look);

    private PictureFault? Look(string path)
    {
        if (
            !entries.TryGetValue(path, out var entry)
            || objects.Read(entry.Id, Most) is not { Bytes: { } bytes }
            || bytes.AsSpan().StartsWith(Elsewhere)
        )
        {
            return null;
        }

        using var file = new MemoryStream(bytes, writable: false);
        return PictureLimits.Usual.Read(file, path).Is(out _, out var why) ? null : FolderPictures.FaultOf(why);
    }

    private bool IsBehindLink(string path)
    {
        for (var at = path.IndexOf('/', StringComparison.Ordinal); at >= 0; at = path.IndexOf('/', at + 1))
        {
            if (entries.GetValueOrDefault(path[..at]) is { Kind: not GitEntryKind.File })
            {
                return true;
            }
        }

        return false;
    }
}
