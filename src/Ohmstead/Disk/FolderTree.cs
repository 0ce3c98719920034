using System.Collections.Concurrent;

namespace Ohmstead.Disk;

/// <summary>A place in a tree of folders: a name in a folder.</summary>
/// <param name="Folder">The folder.</param>
/// <param name="Name">The name.</param>
/// <param name="IsOwn">Whether the folder is let go with the place.</param>
internal readonly record struct TreePlace(Folder Folder, string Name, bool IsOwn) : IDisposable
{
    /// <inheritdoc/>
    public void Dispose()
    {
        if (IsOwn)
        {
            Folder.Dispose();
        }
    }
}

/// <summary>Places below a folder by their paths, with forward slashes. Called from several workers.</summary>
/// <remarks>Folders right below it are opened once, for most files lie there; those further down are opened for each act, for there may be
/// thousands.</remarks>
/// <param name="root">The folder, let go with the tree.</param>
internal sealed class FolderTree(Folder root) : IDisposable
{
    private readonly ConcurrentDictionary<string, Folder> kept = new(StringComparer.Ordinal);

    /// <summary>The folder.</summary>
    public Folder Root { get; } = root;

    /// <summary>Whether a path leads to a place below a folder, and nowhere else.</summary>
    public static bool IsInside(string path) =>
        path.Length > 0
        && !path.Contains('\\', StringComparison.Ordinal)
        && !path.Contains('\0', StringComparison.Ordinal)
        && path.Split('/').All(name => name is not ("" or "." or ".."));

    /// <summary>A place; null when a folder on the way is not there.</summary>
    public TreePlace? Find(string path) => At(path, makes: false);

    /// <summary>A place, with the folders on the way made.</summary>
    public TreePlace Make(string path) => At(path, makes: true)!.Value;

    /// <summary>What stands at a path.</summary>
    public FileFacts Look(string path)
    {
        using var place = Find(path) ?? default;
        return place.Folder?.Look(place.Name) ?? FileFacts.None;
    }

    /// <summary>Lets go what was opened below the folder, which may be taken away now. Nobody else may use the tree meanwhile.</summary>
    public void Forget()
    {
        foreach (var folder in kept.Values)
        {
            folder.Dispose();
        }

        kept.Clear();
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        Forget();
        Root.Dispose();
    }

    private TreePlace? At(string path, bool makes)
    {
        var names = path.Split('/');
        if (names.Length == 1)
        {
            return new(Root, path, IsOwn: false);
        }

        var folder = First(names[0], makes);
        for (var at = 1; at < names.Length - 1 && folder is not null; at++)
        {
            var next = Next(folder, names[at], makes);
            if (at > 1)
            {
                folder.Dispose();
            }

            folder = next;
        }

        return folder is null ? null : new(folder, names[^1], IsOwn: names.Length > 2);
    }

    private Folder? First(string name, bool makes)
    {
        if (kept.TryGetValue(name, out var known))
        {
            return known;
        }

        if (Next(Root, name, makes) is not { } found)
        {
            return null;
        }

        var first = kept.GetOrAdd(name, found);
        if (!ReferenceEquals(first, found))
        {
            found.Dispose();
        }

        return first;
    }

    private static Folder? Next(Folder folder, string name, bool makes) => makes ? folder.Make(name) : folder.Find(name);
}
