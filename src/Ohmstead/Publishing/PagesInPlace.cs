using Ohmstead.Disk;

namespace Ohmstead.Publishing;

/// <summary>
/// Puts new pages in place one by one, where a whole report cannot be: nothing may be made beside it, it is a disk of its own, somebody
/// else's folder lies in it, or the system does not swap folders. When one fails, those before it are taken back.
/// </summary>
/// <param name="report">The report.</param>
/// <param name="waiting">The new pages.</param>
/// <param name="before">The files of the old report.</param>
/// <param name="files">The files of the new one, and whether each waits.</param>
internal sealed class PagesInPlace(
    FolderTree report,
    WaitingPages waiting,
    IReadOnlySet<string> before,
    IReadOnlyDictionary<string, bool> files
)
{
    /// <summary>Where old pages lie until the last new one is in place.</summary>
    private const string OldName = ".ohmstead-old";

    private readonly Stack<(string Path, bool HadOld)> done = [];

    /// <summary>Puts them in place.</summary>
    /// <exception cref="IOException">Something that is not ours is in the way, and nothing was done; or the system fails, and what was done
    /// is taken back.</exception>
    public void Write()
    {
        string[] coming = [ReportPlace.ListName, .. files.Where(file => file.Value).Select(file => file.Key).Order(StringComparer.Ordinal)];
        string[] going = [.. before.Where(path => !files.ContainsKey(path)).Order(StringComparer.Ordinal)];
        foreach (var path in coming.Concat(going))
        {
            Look(path);
        }

        try
        {
            waiting.Tree.Root.SyncAll();
            foreach (var path in coming)
            {
                SetAside(path);
                using var from = waiting.Tree.Find(path)!.Value;
                using var to = report.Make(path);
                from.Folder.Rename(from.Name, to.Folder, to.Name);
            }

            foreach (var path in going)
            {
                SetAside(path);
                using var gone = report.Find(path) ?? default;
                gone.Folder?.Delete(gone.Name);
            }

            report.Root.SyncAll();
        }
        catch (IOException)
        {
            TakeBack();
            throw;
        }
    }

    private void Look(string path)
    {
        using var place = report.Find(path) ?? default;
        var kind = place.Folder?.Look(place.Name).Kind ?? FileKind.Missing;
        if (kind is not (FileKind.Missing or FileKind.File))
        {
            throw DiskFault.Other(kind, FileKind.File, Path.Combine(place.Folder!.FullName, place.Name));
        }

        if (kind == FileKind.File && path != ReportPlace.ListName && !before.Contains(path))
        {
            throw new IOException(
                $"'{Path.Combine(place.Folder!.FullName, place.Name)}' is no page of ours, and one would be written there; move it "
                    + "away, or give another folder with --to"
            );
        }
    }

    // By a second name, so that the page is never missing.
    private void SetAside(string path)
    {
        using var place = report.Find(path) ?? default;
        var isThere = place.Folder?.Look(place.Name).Kind == FileKind.File;
        if (isThere)
        {
            using var aside = waiting.Tree.Make($"{OldName}/{path}");
            if (!place.Folder!.Link(place.Name, aside.Folder, aside.Name))
            {
                place.Folder.Rename(place.Name, aside.Folder, aside.Name);
            }
        }

        done.Push((path, isThere));
    }

    private void TakeBack()
    {
        while (done.TryPop(out var last))
        {
            using var place = report.Make(last.Path);
            if (!last.HadOld)
            {
                place.Folder.Delete(place.Name);
                continue;
            }

            using var aside = waiting.Tree.Make($"{OldName}/{last.Path}");
            aside.Folder.Rename(aside.Name, place.Folder, place.Name);
        }
    }
}
