using Ohmstead.Disk;

namespace Ohmstead.Publishing;

/// <summary>Takes away a report that another one has replaced. What in it is not ours goes over into the other.</summary>
internal static class OldPages
{
    /// <summary>Takes away the pages in a folder.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="report">The report that stays, or null when there is none.</param>
    /// <param name="files">The pages of the folder.</param>
    /// <exception cref="IOException">Something that is not ours could not go over, and was left.</exception>
    public static void TakeAway(Folder folder, Folder? report, IReadOnlySet<string> files)
    {
        var folders = ReportList.FoldersOf(files);
        Below(folder, report, string.Empty);
        folder.Delete(ReportPlace.ListName);

        void Below(Folder from, Folder? to, string prefix)
        {
            foreach (var name in from.Names())
            {
                var path = prefix + name;
                var entry = from.Look(name);
                if (path == ReportPlace.ListName || entry.Kind == FileKind.Missing)
                {
                    // The list last: by it the rest is known as ours.
                }
                else if (entry.Kind == FileKind.Folder && path == ReportPlace.WaitingInside)
                {
                    from.DeleteTree(name);
                }
                else if (entry.Kind == FileKind.Folder && folders.Contains(path))
                {
                    using (var inside = from.Find(name))
                    {
                        using var beside = to?.Look(name).Kind == FileKind.Folder ? to.Find(name) : null;
                        Below(inside!, beside, path + "/");
                    }

                    from.DeleteFolder(name);
                }
                else if (
                    files.Contains(path)
                    || (to is not null && to.Look(name) is { Kind: not FileKind.Missing } other && other.Identity == entry.Identity)
                )
                {
                    // A page, or a second name of what lies in the report as well.
                    from.Delete(name);
                }
                else if (to is null || !from.RenameToNew(name, to, name))
                {
                    throw new IOException($"'{Path.Combine(from.FullName, name)}' is no page of ours, so it was left there; move it away");
                }
            }
        }
    }
}
