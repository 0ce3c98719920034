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
        name.StartsWith('-') ? $"there is no option '{name}'; --help tells those there are" : $"there is no {what} '{name}'";

    private static SortedSet<string> SetOf(SortedDictionary<string, SortedSet<string>> named, string root)
    {
        if (!named.TryGetValue(root, out var paths))
        {
            named[root] = paths = new(StringComparer.Ordinal);
        }

        return paths;
    }
}
