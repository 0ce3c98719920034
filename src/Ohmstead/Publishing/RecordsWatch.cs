namespace Ohmstead.Publishing;

/// <summary>Waits until something in a folder of records was saved and the saving has come to rest.</summary>
internal sealed class RecordsWatch : IDisposable
{
    // An editor writes one file in several steps: a new file, a rename, a touch. After this silence it is done.
    private static readonly TimeSpan Rest = TimeSpan.FromMilliseconds(200);

    private readonly FileSystemWatcher watcher;
    private readonly SemaphoreSlim saved = new(0);
    private readonly string[] besides;

    /// <summary>Watches a folder and all below it.</summary>
    /// <param name="root">The folder of the records, absolute.</param>
    /// <param name="besides">The folder of the pages: what is written there is no record.</param>
    public RecordsWatch(string root, string besides)
    {
        // New pages wait beside the others.
        var waiting = Path.Combine(Path.GetDirectoryName(besides) ?? besides, ReportPlace.WaitingBeside(Path.GetFileName(besides)));
        this.besides = [besides + Path.DirectorySeparatorChar, waiting + Path.DirectorySeparatorChar];
        watcher = new FileSystemWatcher(root)
        {
            IncludeSubdirectories = true,
            NotifyFilter = NotifyFilters.FileName | NotifyFilters.DirectoryName | NotifyFilters.LastWrite | NotifyFilters.Size,
        };
        watcher.Changed += (_, saving) => Note(saving.FullPath);
        watcher.Created += (_, saving) => Note(saving.FullPath);
        watcher.Deleted += (_, saving) => Note(saving.FullPath);
        watcher.Renamed += (_, saving) => Note(saving.FullPath);
        // Too much at once to be told one by one: then everything may have changed.
        watcher.Error += (_, _) => saved.Release();
        watcher.EnableRaisingEvents = true;
    }

    /// <summary>Waits for the next saving and for its rest.</summary>
    public void Wait()
    {
        saved.Wait();
        while (saved.Wait(Rest))
        {
            // Still being written.
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        watcher.Dispose();
        saved.Dispose();
    }

    // What editors keep beside a file while they work on it, and the store of Git, are no records.
    private void Note(string path)
    {
        var isRecord =
            !besides.Any(folder => (path + Path.DirectorySeparatorChar).StartsWith(folder, StringComparison.Ordinal))
            && !path.Contains($"{Path.DirectorySeparatorChar}.git{Path.DirectorySeparatorChar}", StringComparison.Ordinal)
            && Path.GetExtension(path).ToUpperInvariant() is ".MD" or ".YAML" or ".PNG" or ".JPG" or ".JPEG" or ".GIF" or ".WEBP" or "";
        if (isRecord)
        {
            saved.Release();
        }
    }
}
