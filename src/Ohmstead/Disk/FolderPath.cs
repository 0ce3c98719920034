namespace Ohmstead.Disk;

/// <summary>Opens the folder that something is written into, by its path.</summary>
/// <remarks>
/// How a person's own machine is laid out may hold links, and they are followed. What lies below the folder that they work in, and below
/// the collection, may have come from somebody else: no link is followed there.
/// </remarks>
internal static class FolderPath
{
    /// <summary>Opens it.</summary>
    /// <param name="path">The folder, as it was asked for.</param>
    /// <param name="collection">The collection's folder, or null when it is not known.</param>
    /// <param name="makes">True to make what is not there.</param>
    /// <exception cref="IOException">There is a link in the way, something that is no folder, or nothing.</exception>
    public static Folder Open(string path, string? collection, bool makes)
    {
        var full = Path.TrimEndingDirectorySeparator(Path.GetFullPath(path));
        var start = StartOf(full, collection);
        return Below(start, Path.GetRelativePath(start, full), makes);
    }

    /// <summary>Opens a folder below one that was asked for, and follows no link on the way.</summary>
    /// <param name="start">The one that was asked for, absolute.</param>
    /// <param name="path">The path from there.</param>
    /// <param name="makes">True to make what is not there.</param>
    /// <exception cref="IOException">There is a link in the way, something that is no folder, or nothing.</exception>
    public static Folder Below(string start, string path, bool makes)
    {
        var folder = Folder.Open(start);
        foreach (var name in path.Split('/', Path.DirectorySeparatorChar).Where(name => name is not ("" or ".")))
        {
            using var above = folder;
            folder = makes
                ? above.Make(name)
                : above.Find(name) ?? throw DiskFault.Other(FileKind.Missing, FileKind.Folder, Path.Combine(above.FullName, name));
        }

        return folder;
    }

    /// <summary>The path of a folder as it is used: with the links followed where they are a person's own.</summary>
    /// <param name="path">The folder, as it was asked for.</param>
    /// <param name="collection">The collection's folder, or null when it is not known.</param>
    public static string Asked(string path, string? collection)
    {
        var full = Path.TrimEndingDirectorySeparator(Path.GetFullPath(path));
        return KnownStart(full, collection) is null ? RealPath.Resolve(full) : full;
    }

    private static string StartOf(string full, string? collection)
    {
        if (KnownStart(full, collection) is { } known)
        {
            return known;
        }

        // Elsewhere the folder itself must be one; of those above, only what is not there yet is made.
        var above = Path.GetDirectoryName(full) ?? full;
        while (!Directory.Exists(above) && Path.GetDirectoryName(above) is { } next)
        {
            above = next;
        }

        return above;
    }

    // The uppermost folder below which nothing is trusted, where the path lies below one.
    private static string? KnownStart(string full, string? collection) =>
        new[] { Environment.CurrentDirectory, collection is null ? null : Path.GetFullPath(collection) }
            .OfType<string>()
            .Select(Path.TrimEndingDirectorySeparator)
            .Where(start =>
                start != Path.GetPathRoot(start)
                && (full == start || full.StartsWith(start + Path.DirectorySeparatorChar, StringComparison.Ordinal))
            )
            .MinBy(start => start.Length);
}
