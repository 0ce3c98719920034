using System.Collections.Concurrent;
using System.Collections.Frozen;
using Ohmstead.Assessment.Checks;
using Ohmstead.Pictures;

namespace Ohmstead.Collections;

/// <summary>The pictures of a collection on disk. A path is looked at by its own words first, so nothing outside the root is ever touched.</summary>
internal sealed class FolderPictures(string root) : IPictures
{
    private readonly ConcurrentDictionary<string, PictureState> known = new(StringComparer.Ordinal);

    // Each folder is listed once, not once for each picture in it.
    private readonly ConcurrentDictionary<string, FrozenSet<string>> folders = new(StringComparer.Ordinal);

    private readonly ConcurrentDictionary<string, PictureFault?> faults = new(StringComparer.Ordinal);

    /// <inheritdoc/>
    public PictureState At(string path) => known.GetOrAdd(path, Look);

    /// <inheritdoc/>
    public IEnumerable<string> Beside(string path)
    {
        var full = Path.Combine(root, path[..(path.LastIndexOf('/') + 1)]);
        return At(path) == PictureState.Missing && Directory.Exists(full)
            ? Directory.EnumerateFiles(full).Select(file => Path.GetFileName(file)).Order(StringComparer.Ordinal) : [];
    }

    /// <inheritdoc/>
    public PictureFault? Fault(string path) => faults.GetOrAdd(path, Open);

    private static FrozenSet<string> NamesIn(string folder) =>
        Directory.Exists(folder) ? Directory.EnumerateFileSystemEntries(folder).Select(entry => Path.GetFileName(entry)).ToFrozenSet(StringComparer.Ordinal) : [];

    private PictureFault? Open(string path)
    {
        using var file = new FileStream(Path.Combine(root, path), FileMode.Open, FileAccess.Read, FileShare.Read, bufferSize: 512);
        return PictureLimits.Usual.Read(file, path).Is(out _, out var why) ? null : FaultOf(why);
    }

    /// <summary>A fault with what to do about it.</summary>
    public static PictureFault FaultOf(string why) => new(why, "save it again as a PNG or JPEG picture of usual size, under a name that says which");

    private PictureState Look(string path)
    {
        if (path.Length == 0 || path.Contains('\\', StringComparison.Ordinal) || path.Contains(':', StringComparison.Ordinal) || path.Contains('%', StringComparison.Ordinal)
            || path.Any(char.IsControl) || Path.IsPathRooted(path) || path.Split('/').Any(part => part is "" or "." or ".."))
        {
            return PictureState.Outside;
        }

        if (Path.GetExtension(path).ToUpperInvariant() is not (".PNG" or ".JPG" or ".JPEG" or ".GIF" or ".WEBP" or ".SVG"))
        {
            return PictureState.NoPicture;
        }

        var folder = root;
        foreach (var part in path.Split('/'))
        {
            // Capitals count on every system: the name must be there exactly as written.
            if (!folders.GetOrAdd(folder, NamesIn).Contains(part))
            {
                return PictureState.Missing;
            }

            var entry = Path.Combine(folder, part);
            if ((File.GetAttributes(entry) & FileAttributes.ReparsePoint) != FileAttributes.None)
            {
                return PictureState.Outside;
            }

            folder = entry;
        }

        return File.Exists(folder) ? PictureState.Present : PictureState.Missing;
    }
}
