using Ohmstead.Records.Findings;

namespace Ohmstead.Collections;

/// <summary>Files of one collection that a person named, by the files themselves or by their folder.</summary>
/// <param name="Folder">The collection they belong to.</param>
/// <param name="Paths">Their paths from its root, in ordinal order, each once.</param>
internal sealed record NamedFiles(CollectionFolder Folder, IReadOnlyList<string> Paths)
{
    private static readonly string[] Shared = ["collection.yaml", "instruments.yaml", "meters.yaml", "stock.yaml"];

    /// <summary>Sorts what was named by collection.</summary>
    /// <param name="names">Files and folders.</param>
    /// <param name="isRecord">Whether a path from the root is that of a record.</param>
    /// <returns>The files, one entry a collection; or what is wrong with a name.</returns>
    public static (IReadOnlyList<NamedFiles> Files, string? Problem) Group(IReadOnlyList<string> names, Func<string, bool> isRecord)
    {
        var named = new SortedDictionary<string, SortedSet<string>>(StringComparer.Ordinal);
        foreach (var name in names)
        {
            if (Directory.Exists(name))
            {
                var folder = CollectionFolder.Open(name);
                var files = Shared.Where(known => folder.Named(known) is not null).Concat(folder.Designs).Concat(folder.Boards).ToArray();
                if (files.Length == 0)
                {
                    return ([], $"no records in '{folder.Root}': a collection has boards/*.md, or name a file");
                }

                SetOf(named, folder.Root).UnionWith(files);
                continue;
            }

            if (!File.Exists(name))
            {
                return ([], Missing(name));
            }

            var root = CollectionFolder.RootOf(name);
            var path = Path.GetRelativePath(root, Path.GetFullPath(name)).Replace('\\', '/');
            if (!isRecord(path))
            {
                return (
                    [],
                    $"'{name}' is no record: a board or a design is a .md file; the others are collection.yaml, instruments.yaml, "
                        + "meters.yaml and stock.yaml"
                );
            }

            SetOf(named, root).Add(path);
        }

        return ([.. named.Select(entry => new NamedFiles(CollectionFolder.Open(entry.Key), [.. entry.Value]))], null);
    }

    /// <summary>Says that nothing has a name that was given. One that looks like an option was probably meant as one.</summary>
    /// <param name="name">What was given.</param>
    /// <param name="what">What it should be.</param>
    public static string Missing(string name, string what = "file or folder") =>
        name.StartsWith('-')
            ? $"there is no option '{name}'; --help tells those there are"
            : Nearest.Told($"there is no {what} '{name}'", Beside(name));

    /// <summary>Says that a folder is one of a collection, and no collection itself; null where it is none.</summary>
    public static string? Inside(CollectionFolder files)
    {
        var above = Path.GetDirectoryName(files.Root);
        return
            Path.GetFileName(files.Root) is "boards" or "designs" or "photos"
            && above is not null
            && File.Exists(Path.Combine(above, "collection.yaml"))
            && !File.Exists(Path.Combine(files.Root, "collection.yaml"))
            ? $"'{files.Root}' is a folder of a collection; the collection is {above}"
            : null;
    }

    /// <summary>Says that a folder holds no board, and which one about it does.</summary>
    public static string NoBoards(CollectionFolder files)
    {
        var told = $"no boards in '{files.Root}': a collection has boards/*.md";
        var above = CollectionFolder.RootOf(Path.Combine(files.Root, "collection.yaml"));
        string[] near = [above, .. Subfolders(files.Root)];
        return near.FirstOrDefault(folder => folder != files.Root && Directory.Exists(Path.Combine(folder, "boards"))) is { } meant
            ? $"{told}; the collection is '{meant}'"
            : told;
    }

    private static string[] Subfolders(string root)
    {
        try
        {
            return [.. Directory.EnumerateDirectories(root).Order(StringComparer.Ordinal)];
        }
        catch (Exception closed) when (closed is IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }

    // The nearest name in the same folder.
    private static string? Beside(string name)
    {
        try
        {
            var folder = Path.GetDirectoryName(name) is { Length: > 0 } above ? above : ".";
            var names = Directory.EnumerateFileSystemEntries(folder).Select(entry => Path.GetFileName(entry)).Order(StringComparer.Ordinal);
            return Nearest.To(Path.GetFileName(name), names) is { } near
                ? Path.Combine(Path.GetDirectoryName(name) ?? string.Empty, near)
                : null;
        }
        catch (Exception closed) when (closed is IOException or UnauthorizedAccessException or ArgumentException)
        {
            return null;
        }
    }

    private static SortedSet<string> SetOf(SortedDictionary<string, SortedSet<string>> named, string root)
    {
        if (!named.TryGetValue(root, out var paths))
        {
            named[root] = paths = new(StringComparer.Ordinal);
        }

        return paths;
    }
}
