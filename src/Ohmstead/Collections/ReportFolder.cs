using System.Collections.Concurrent;
using Ohmstead.Output;

namespace Ohmstead.Collections;

/// <summary>The folder that pages are written to. Only what changed is written; only files that this program wrote are ever taken away.</summary>
internal sealed class ReportFolder
{
    /// <summary>The list of files written last time; its presence says that the folder is ours.</summary>
    private const string ListName = ".ohmstead-report";

    private readonly ConcurrentDictionary<string, byte> files = new(StringComparer.Ordinal);
    private readonly string[] before;
    private int written;
    private int unchanged;

    private ReportFolder(string root, string[] before)
    {
        Root = root;
        this.before = before;
    }

    /// <summary>The folder, absolute.</summary>
    public string Root { get; }

    /// <summary>How many files were written.</summary>
    public int Written => written;

    /// <summary>How many files already had the same bytes.</summary>
    public int Unchanged => unchanged;

    /// <summary>Opens the folder, or says why not: it must be empty, new or ours, and must not be or hold the collection.</summary>
    public static ReportFolder? Open(string folder, string source, TextWriter error)
    {
        var root = Path.GetFullPath(folder);
        var separator = Path.DirectorySeparatorChar;
        if (root == source || (source + separator).StartsWith(root + separator, StringComparison.Ordinal) || root == Path.GetPathRoot(root)
            || root == Environment.GetFolderPath(Environment.SpecialFolder.UserProfile))
        {
            error.WriteLine($"pages are not written into '{Printable.Of(root)}': it is or holds the collection, your home or the root; give another folder with --to");
            return null;
        }

        foreach (var inside in new[] { "boards", "designs", "photos" })
        {
            if ((root + separator).StartsWith(Path.Combine(source, inside) + separator, StringComparison.Ordinal))
            {
                error.WriteLine($"pages are not written among the records in '{Printable.Of(root)}'; give another folder with --to");
                return null;
            }
        }

        var list = Path.Combine(root, ListName);
        if (Directory.Exists(root) && !File.Exists(list) && Directory.EnumerateFileSystemEntries(root).Any())
        {
            error.WriteLine($"'{Printable.Of(root)}' has files that are not pages of ours; give an empty folder with --to");
            return null;
        }

        Directory.CreateDirectory(root);
        return new(root, File.Exists(list) ? File.ReadAllLines(list) : []);
    }

    /// <summary>Puts a file in place whole, unless the same bytes are there already. Called from several workers.</summary>
    public void Put(string path, ReadOnlySpan<byte> bytes)
    {
        if (!files.TryAdd(path, 0))
        {
            return;
        }

        var full = Path.Combine(Root, path);
        if (IsSame(full, bytes))
        {
            Interlocked.Increment(ref unchanged);
            return;
        }

        Directory.CreateDirectory(Path.GetDirectoryName(full)!);
        var beside = full + ".new";
        using (var file = File.OpenHandle(beside, FileMode.Create, FileAccess.Write, FileShare.None))
        {
            RandomAccess.Write(file, bytes, 0);
        }

        File.Move(beside, full, overwrite: true);
        Interlocked.Increment(ref written);
    }

    /// <summary>Takes away pages of boards that are gone, and keeps the list of what is ours.</summary>
    public void Finish()
    {
        foreach (var gone in before.Where(path => !files.ContainsKey(path) && !Path.IsPathRooted(path) && !path.Split('/').Contains("..")))
        {
            File.Delete(Path.Combine(Root, gone));
        }

        var lines = files.Keys.Order(StringComparer.Ordinal);
        File.WriteAllText(Path.Combine(Root, ListName), string.Join('\n', lines) + "\n");
        File.WriteAllText(Path.Combine(Root, ".nojekyll"), string.Empty);
    }

    private static bool IsSame(string full, ReadOnlySpan<byte> bytes)
    {
        var info = new FileInfo(full);
        return info.Exists && info.Length == bytes.Length && bytes.SequenceEqual(File.ReadAllBytes(full));
    }
}
