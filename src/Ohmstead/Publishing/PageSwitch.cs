using Ohmstead.Disk;

namespace Ohmstead.Publishing;

/// <summary>Puts a whole new report in the place of the old one, in one step of the system: nobody ever sees some pages of the one and some
/// of the other.</summary>
/// <param name="parent">The folder that the report lies in.</param>
/// <param name="name">Its name there.</param>
/// <param name="old">The report as it is.</param>
/// <param name="waiting">The new pages.</param>
/// <param name="before">The files of the old one.</param>
/// <param name="files">The files of the new one, and whether each waits; the others are those of the old one.</param>
internal sealed class PageSwitch(
    Folder parent,
    string name,
    Folder old,
    WaitingPages waiting,
    IReadOnlySet<string> before,
    IReadOnlyDictionary<string, bool> files
)
{
    private readonly HashSet<string> folders = ReportList.FoldersOf(before.Concat(files.Keys));
    private int kept;

    /// <summary>Switches.</summary>
    /// <returns>False where that cannot be done in one step here, and nothing was.</returns>
    /// <exception cref="IOException">Something that is not ours is in the way, or the system fails: the old report stands, or the new one
    /// does.</exception>
    public bool Try()
    {
        if (waiting.IsInside || !Fill(old, string.Empty))
        {
            return false;
        }

        if (kept != files.Values.Count(isWaiting => !isWaiting))
        {
            throw new IOException($"pages were taken out of '{old.FullName}' during the run; give the command again");
        }

        waiting.Complete();
        waiting.Tree.Root.TakeOver(old.Facts);
        waiting.Tree.Root.SyncAll();
        if (parent.Look(name).Identity != old.Facts.Identity)
        {
            throw Moved();
        }

        if (!parent.Swap(waiting.Name, name))
        {
            waiting.Reopen();
            return false;
        }

        if (parent.Look(waiting.Name).Identity != old.Facts.Identity)
        {
            // Something else had its name in just that moment: that goes back to where it was.
            parent.Swap(waiting.Name, name);
            throw Moved();
        }

        parent.Sync();
        // By its new name, under which its names are listed.
        using (var replaced = parent.Find(waiting.Name) ?? throw Moved())
        {
            OldPages.TakeAway(replaced, waiting.Tree.Root, before);
        }

        parent.DeleteFolder(waiting.Name);
        return true;
    }

    // What is the same in both gets a second name; so does what is not ours: nothing of it is ever in one place alone that is to be taken
    // away.
    private bool Fill(Folder from, string prefix)
    {
        foreach (var inside in from.Names())
        {
            var path = prefix + inside;
            var kind = path is ReportPlace.ListName or ReportPlace.WaitingInside ? FileKind.Missing : from.Look(inside).Kind;
            if (
                kind == FileKind.Missing
                || (kind == FileKind.File && before.Contains(path) && files.GetValueOrDefault(path, defaultValue: true))
            )
            {
                continue;
            }

            if (kind == FileKind.Folder && folders.Contains(path))
            {
                using var below = from.Find(inside);
                if (below is not null && !Fill(below, path + "/"))
                {
                    return false;
                }

                continue;
            }

            if (InTheWay(kind, path, Path.Combine(from.FullName, inside)) is { } fault)
            {
                throw fault;
            }

            // A folder has one name. One that is not ours is not moved about either.
            if (kind == FileKind.Folder || !Again(from, inside, path))
            {
                return false;
            }

            kept += before.Contains(path) ? 1 : 0;
        }

        return true;
    }

    private IOException? InTheWay(FileKind kind, string path, string full)
    {
        var isPage = files.ContainsKey(path) || folders.Contains(path) || before.Contains(path);
        return isPage && kind == FileKind.Link ? DiskFault.Link(full)
            : isPage && !(kind == FileKind.File && before.Contains(path))
                ? new($"'{full}' is no page of ours, and one would be written there; move it away, or give another folder with --to")
            : null;
    }

    private bool Again(Folder from, string inside, string path)
    {
        using var place = waiting.Tree.Make(path);
        return from.Link(inside, place.Folder, place.Name);
    }

    private IOException Moved() => new($"'{old.FullName}' was put elsewhere during the run; give the command again");
}
