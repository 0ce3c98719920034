namespace Ohmstead.Tests.Support;

/// <summary>A folder for one test: a copy of the demo collection, or an empty one. Gone when the test ends.</summary>
internal sealed class CollectionCopy : IDisposable
{
    private CollectionCopy(string root) => Root = root;

    /// <summary>The demo collection itself, only to be read.</summary>
    public static string Untouched { get; } = Path.Combine(AppContext.BaseDirectory, "records");

    /// <summary>How many boards the demo collection has.</summary>
    public static int Boards => Directory.GetFiles(Path.Combine(Untouched, "boards"), "*.md").Length;

    /// <summary>The folder.</summary>
    public string Root { get; }

    /// <summary>A copy of the demo collection.</summary>
    public static CollectionCopy Make()
    {
        var copy = Empty();
        Put(copy.Root);
        return copy;
    }

    /// <summary>Copies the demo collection into a folder.</summary>
    public static void Put(string folder)
    {
        foreach (var file in Directory.EnumerateFiles(Untouched, "*", SearchOption.AllDirectories))
        {
            var target = Path.Combine(folder, Path.GetRelativePath(Untouched, file));
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(file, target);
        }
    }

    /// <summary>An empty folder.</summary>
    public static CollectionCopy Empty() => new(Directory.CreateTempSubdirectory("ohmstead-").FullName);

    /// <summary>The absolute path of a file or folder in it.</summary>
    public string At(string path) => Path.Combine(Root, path);

    /// <summary>The text of a file.</summary>
    public string Read(string path) => File.ReadAllText(At(path));

    /// <summary>Writes a file, with its folder.</summary>
    public void Write(string path, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(At(path))!);
        File.WriteAllText(At(path), text);
    }

    /// <inheritdoc/>
    public void Dispose() => Directory.Delete(Root, recursive: true);
}
