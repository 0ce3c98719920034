namespace Ohmstead.Machine.Tests.Faults;

/// <summary>A folder as it was, beside it, to begin from there again.</summary>
internal sealed class KeptFolder : IDisposable
{
    private readonly string root;
    private readonly string kept = Directory.CreateTempSubdirectory("ohmstead-kept-").FullName;

    private KeptFolder(string root) => this.root = root;

    /// <summary>Keeps what is in a folder now, but for links.</summary>
    public static KeptFolder Of(string root)
    {
        var made = new KeptFolder(root);
        Copy(root, made.kept);
        return made;
    }

    /// <summary>Makes the folder what it was.</summary>
    public void PutBack()
    {
        foreach (var entry in new DirectoryInfo(root).EnumerateFileSystemInfos())
        {
            if (entry is DirectoryInfo folder)
            {
                folder.Delete(recursive: true);
            }
            else
            {
                entry.Delete();
            }
        }

        Copy(kept, root);
    }

    /// <inheritdoc/>
    public void Dispose() => Directory.Delete(kept, recursive: true);

    private static void Copy(string from, string to)
    {
        foreach (var folder in Directory.EnumerateDirectories(from, "*", SearchOption.AllDirectories))
        {
            Directory.CreateDirectory(Path.Combine(to, Path.GetRelativePath(from, folder)));
        }

        foreach (var file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories))
        {
            File.Copy(file, Path.Combine(to, Path.GetRelativePath(from, file)));
        }
    }
}
