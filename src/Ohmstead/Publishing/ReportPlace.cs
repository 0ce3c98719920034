using Ohmstead.Running;

namespace Ohmstead.Publishing;

/// <summary>Where pages may be written, and under which names their folder is known again.</summary>
internal static class ReportPlace
{
    /// <summary>The list of files written last time; its presence says that the folder is ours.</summary>
    public const string ListName = ".ohmstead-report";

    /// <summary>Where new files wait that cannot wait beside the folder.</summary>
    public const string WaitingInside = ".ohmstead-new";

    private static readonly string[] Records = ["boards", "designs", "photos"];

    /// <summary>Where new files wait, beside the folder of that name.</summary>
    public static string WaitingBeside(string name) => $".{name}.ohmstead-new";

    /// <summary>Why pages must not be written into a folder, or null: it must be empty, new or ours, and must not be or hold the
    /// collection.</summary>
    /// <param name="root">The folder, absolute, links resolved.</param>
    /// <param name="source">The collection's folder, likewise.</param>
    public static string? Refusal(string root, string source)
    {
        var separator = Path.DirectorySeparatorChar;
        if (
            root == source
            || (source + separator).StartsWith(root + separator, StringComparison.Ordinal)
            || root == Path.GetPathRoot(root)
            || root == Environment.GetFolderPath(Environment.SpecialFolder.UserProfile)
        )
        {
            return $"pages are not written into '{Printable.Escape(root)}': it is or holds the collection, your home or the root; give "
                + "another folder with --to";
        }

        if (Records.Any(inside => (root + separator).StartsWith(Path.Combine(source, inside) + separator, StringComparison.Ordinal)))
        {
            return $"pages are not written among the records in '{Printable.Escape(root)}'; give another folder with --to";
        }

        if (File.Exists(root))
        {
            return $"'{Printable.Escape(root)}' is a file; give a folder with --to";
        }

        // What a run that was killed left waiting is ours too.
        return
            Directory.Exists(root)
            && !File.Exists(Path.Combine(root, ListName))
            && Directory.EnumerateFileSystemEntries(root).Any(entry => Path.GetFileName(entry) != WaitingInside)
            ? $"'{Printable.Escape(root)}' has files that are not pages of ours; give an empty folder with --to"
            : null;
    }

    /// <summary>The files that the last run wrote into a folder; none when it is no report.</summary>
    public static string[] FilesOf(string root) =>
        File.Exists(Path.Combine(root, ListName)) ? File.ReadAllLines(Path.Combine(root, ListName)) : [];
}
