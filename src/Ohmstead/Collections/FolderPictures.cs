using System.Collections.Concurrent;
using System.Collections.Frozen;
using Microsoft.Win32.SafeHandles;
using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Disk;
using Ohmstead.Pictures;

namespace Ohmstead.Collections;

/// <summary>The pictures of a collection on disk. A path is looked at by its own words first, so nothing outside the root is ever
/// touched.</summary>
/// <param name="root">The root.</param>
/// <param name="moved">Pictures that are taken to lie at another path than they do, each with where it is now, or with null where it
/// was looked at already; or null.</param>
internal sealed class FolderPictures(string root, IReadOnlyDictionary<string, string?>? moved = null) : IPictures
{
    private readonly ConcurrentDictionary<string, PictureState> known = new(StringComparer.Ordinal);

    // Each folder is listed once, not once for each picture in it.
    private readonly ConcurrentDictionary<string, FrozenSet<string>> folders = new(StringComparer.Ordinal);

    private readonly ConcurrentDictionary<string, PictureFault?> faults = new(StringComparer.Ordinal);

    /// <inheritdoc/>
    public PictureState At(string path) => Now(path) is { } now ? known.GetOrAdd(now, Look) : PictureState.Present;

    /// <inheritdoc/>
    public IEnumerable<string> NamesInFolder(string path)
    {
        var full = Path.Combine(root, path[..(path.LastIndexOf('/') + 1)]);
        return At(path) == PictureState.Missing && CollectionFolder.MayBeListed(full)
            ? Directory.EnumerateFiles(full).Select(file => Path.GetFileName(file)).Order(StringComparer.Ordinal)
            : [];
    }

    /// <inheritdoc/>
    public PictureFault? Fault(string path) => Now(path) is { } now ? faults.GetOrAdd(now, Open) : null;

    private string? Now(string path) => moved is not null && moved.TryGetValue(path, out var now) ? now : path;

    private static FrozenSet<string> NamesIn(string folder) =>
        Directory.Exists(folder)
            ? Directory.EnumerateFileSystemEntries(folder).Select(entry => Path.GetFileName(entry)).ToFrozenSet(StringComparer.Ordinal)
            : [];

    private PictureFault? Open(string path)
    {
        try
        {
            using var file = new FileStream(Handle(path), FileAccess.Read, bufferSize: 512);
            return PictureLimits.Usual.Read(file, path).Is(out _, out var why) ? null : FaultOf(why);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return Unreadable(problem);
        }
    }

    /// <summary>A picture that is there and cannot be read, in words.</summary>
    public static PictureFault Unreadable(Exception problem) =>
        new($"it cannot be read: {problem.Message}", "look at the permissions of the file and its folder, and at the disk");

    /// <summary>Opens a picture. No link on the way is followed, and a pipe or a device is never opened.</summary>
    /// <exception cref="IOException">It cannot be opened.</exception>
    public SafeFileHandle Handle(string path)
    {
        using var folder = FolderPath.Below(root, Path.GetDirectoryName(path) ?? string.Empty, makes: false);
        return folder.Read(Path.GetFileName(path)) ?? throw DiskFault.Other(FileKind.Missing, FileKind.File, path);
    }

    /// <summary>A fault with what to do about it.</summary>
    public static PictureFault FaultOf(string why) =>
        new(why, "save it again as a PNG or JPEG picture of usual size, under a name that says which");

    // What cannot be looked at is taken to be there: to open it then says why it cannot be.
    private PictureState Look(string path)
    {
        try
        {
            return Seek(path);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return PictureState.Present;
        }
    }

    /// <summary>Why no picture can stand at a path, by its words alone; null where one can.</summary>
    public static PictureState? WhyNot(string path) =>
        Path.IsPathRooted(path) || path.Split('/', '\\').Any(part => part is "" or "." or "..") ? PictureState.Outside
        : path.AsSpan().IndexOfAny(@"\:%") >= 0 || path.Any(char.IsControl) ? PictureState.NotAddressable
        : Path.GetExtension(path).ToUpperInvariant() is not (".PNG" or ".JPG" or ".JPEG" or ".GIF" or ".WEBP" or ".SVG")
            ? PictureState.NoPicture
        : null;

    private PictureState Seek(string path)
    {
        if (WhyNot(path) is { } wrong)
        {
            return wrong;
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
