using System.IO.Enumeration;

namespace Ohmstead.Collections;

/// <summary>The files of a collection on disk. Symbolic links below the root are not followed.</summary>
/// <param name="root">The root folder, absolute.</param>
/// <param name="boards">Paths of board files, from the root with forward slashes, in ordinal order.</param>
/// <param name="designs">Paths of design files, likewise.</param>
internal sealed class CollectionFolder(string root, IReadOnlyList<string> boards, IReadOnlyList<string> designs)
{
    /// <summary>The root folder.</summary>
    public string Root { get; } = root;

    /// <summary>Board files.</summary>
    public IReadOnlyList<string> Boards { get; } = boards;

    /// <summary>Design files.</summary>
    public IReadOnlyList<string> Designs { get; } = designs;

    /// <summary>Folders of records that cannot be listed, and links in their place: what lies in them is not known.</summary>
    public IEnumerable<string> Closed => Boards.Concat(Designs).Where(path => !path.EndsWith(".md", StringComparison.Ordinal));

    /// <summary>What is told, and nothing written, where what is written hangs on all records being known; null where they are.</summary>
    public string? WhyNotWhole =>
        Closed.FirstOrDefault() is { } closed
            ? new DirectoryInfo(Full(closed)).LinkTarget is not null
                ? $"'{closed}' is a symbolic link, and nothing is done through one; put the folder itself there"
                : $"{closed} cannot be listed, so it is not known which records there are; nothing was written. Look at its permissions"
            : null;

    /// <summary>The other boards of the collection, where only some are looked at; else null.</summary>
    public Neighbours? Beside { get; private init; }

    /// <summary>A file at the root that is taken to be there, though it may not be on disk yet.</summary>
    private string? Also { get; init; }

    /// <summary>Where its files come from.</summary>
    public IRecordFiles Files { get; init; } = new DiskFiles(root);

    /// <summary>A file at the root, or null when there is nothing of that name; whoever reads it says what else it may be.</summary>
    public string? Named(string name) => name == Also || Files.Has(name) ? name : null;

    /// <summary>The absolute path of a file of the collection.</summary>
    public string Full(string path) => Path.Combine(Root, path);

    /// <summary>The whole collection in a folder.</summary>
    public static CollectionFolder Open(string folder)
    {
        var root = Path.GetFullPath(folder);
        var boards = Markdown(root, "boards");
        // One board alone in a folder, with none of the other files, is a collection too.
        return new(
            root,
            boards.Count > 0 || Directory.Exists(Path.Combine(root, "designs")) ? boards : Markdown(root, string.Empty),
            Markdown(root, "designs")
        );
    }

    /// <summary>A collection of which only some boards are looked at.</summary>
    public CollectionFolder Only(IReadOnlyList<string> boards) =>
        new(Root, boards, Designs)
        {
            Also = Also,
            Files = Files,
            Beside = boards.Count == 0 ? null : new([.. Boards.Except(boards, StringComparer.Ordinal)]),
        };

    /// <summary>A collection that has these boards and no other.</summary>
    public CollectionFolder Having(IReadOnlyList<string> boards) =>
        new(Root, boards, Designs)
        {
            Also = Also,
            Files = Files,
            Beside = Beside,
        };

    /// <summary>A collection with one file at its root more, which need not be on disk yet.</summary>
    public CollectionFolder With(string name) => new(Root, Boards, Designs) { Beside = Beside, Also = name };

    /// <summary>A collection with one design more, which need not be on disk yet.</summary>
    public CollectionFolder WithDesign(string path) =>
        new(Root, Boards, [.. Designs.Append(path).Order(StringComparer.Ordinal)]) { Beside = Beside };

    /// <summary>The root of the collection that a file belongs to: the nearest folder above with a collection file, else the file's
    /// own.</summary>
    public static string RootOf(string file)
    {
        var own = Path.GetDirectoryName(Path.GetFullPath(file))!;
        for (var folder = own; folder is not null; folder = Path.GetDirectoryName(folder))
        {
            if (File.Exists(Path.Combine(folder, "collection.yaml")))
            {
                return folder;
            }
        }

        return Path.GetFileName(own) is "boards" or "designs" ? Path.GetDirectoryName(own)! : own;
    }

    private static EnumerationOptions RightThere =>
        new() { AttributesToSkip = FileAttributes.Hidden | FileAttributes.System, IgnoreInaccessible = false };

    private static EnumerationOptions Everywhere =>
        new()
        {
            RecurseSubdirectories = true,
            AttributesToSkip = FileAttributes.Hidden | FileAttributes.System,
            IgnoreInaccessible = false,
        };

    private static List<string> Markdown(string root, string folder)
    {
        var start = Path.Combine(root, folder);
        // A folder that is a link, or cannot be listed, is told in the place of what it holds.
        if (folder.Length > 0 && new DirectoryInfo(start).LinkTarget is not null)
        {
            return [folder];
        }

        if (!Directory.Exists(start))
        {
            return [];
        }

        if (!MayBeListed(start))
        {
            return [folder.Length > 0 ? folder : "."];
        }

        // Links are listed and not followed: whoever reads them says so, for a record that is passed over must not pass for a sound one.
        var options = folder.Length > 0 ? Everywhere : RightThere;
        var entries = new FileSystemEnumerable<string>(start, (ref FileSystemEntry entry) => FullPath(ref entry), options)
        {
            ShouldIncludePredicate = (ref FileSystemEntry entry) =>
                IsLink(ref entry) ? folder.Length > 0 || IsMarkdown(ref entry)
                : entry.IsDirectory ? folder.Length > 0 && !MayBeListed(ref entry)
                : IsMarkdown(ref entry),
            ShouldRecursePredicate = (ref FileSystemEntry entry) => !IsLink(ref entry) && MayBeListed(ref entry),
        };
        try
        {
            return InOrder(
                root,
                entries.Where(file => folder.Length > 0 || Path.GetFileName(file) is not ("README.md" or "DEVELOPERS.md"))
            );
        }
        catch (Exception closed) when (closed is IOException or UnauthorizedAccessException)
        {
            // It could be listed a moment ago. What is passed over in silence would pass for not there.
            return [folder.Length > 0 ? folder : "."];
        }
    }

    /// <summary>The files of a folder that are no records by their names; links are left out.</summary>
    /// <param name="among">The folder, boards or designs.</param>
    public IReadOnlyList<string> OtherFiles(string among)
    {
        var start = Path.Combine(Root, among);
        if (new DirectoryInfo(start).LinkTarget is not null || !Directory.Exists(start) || !MayBeListed(start))
        {
            return [];
        }

        var entries = new FileSystemEnumerable<string>(start, (ref FileSystemEntry entry) => FullPath(ref entry), Everywhere)
        {
            ShouldIncludePredicate = (ref FileSystemEntry entry) => !entry.IsDirectory && !IsLink(ref entry) && !IsMarkdown(ref entry),
            ShouldRecursePredicate = (ref FileSystemEntry entry) => !IsLink(ref entry) && MayBeListed(ref entry),
        };
        try
        {
            return InOrder(Root, entries);
        }
        catch (Exception closed) when (closed is IOException or UnauthorizedAccessException)
        {
            // Told by whoever lists the records in it.
            return [];
        }
    }

    private static List<string> InOrder(string root, IEnumerable<string> entries)
    {
        var files = entries.Select(file => Path.GetRelativePath(root, file).Replace('\\', '/')).ToList();
        files.Sort(StringComparer.Ordinal);
        return files;
    }

    private static bool IsLink(ref FileSystemEntry entry) => (entry.Attributes & FileAttributes.ReparsePoint) != FileAttributes.None;

    private static bool MayBeListed(ref FileSystemEntry entry) => MayBeListed(FullPath(ref entry));

    // The entry's own answer is empty where it would be longer than the system takes.
    private static string FullPath(ref FileSystemEntry entry) => Path.Join(entry.Directory, entry.FileName);

    /// <summary>Whether a folder is there and the system says what is in it.</summary>
    internal static bool MayBeListed(string folder)
    {
        try
        {
            using var names = Directory.EnumerateFileSystemEntries(folder).GetEnumerator();
            names.MoveNext();
            return true;
        }
        catch (Exception closed) when (closed is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    private static bool IsMarkdown(ref FileSystemEntry entry) => entry.FileName.EndsWith(".md", StringComparison.Ordinal);
}
