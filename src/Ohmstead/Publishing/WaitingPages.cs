using Ohmstead.Disk;

namespace Ohmstead.Publishing;

/// <summary>
/// Where the pages of one run wait until all are there: a folder of its own beside the report, or inside it where nothing may be made
/// beside it.
/// </summary>
/// <remarks>
/// Only one run has it. As long as pages come in it carries a mark, and all in it is ours; a folder without the mark and with a list of
/// pages is a whole report, the new one just before the switch or the old one just after it. Anything else of that name is somebody else's
/// and refused.
/// </remarks>
internal sealed class WaitingPages : IDisposable
{
    private const string MarkName = ".ohmstead-building";
    private const string HeldName = ".ohmstead-held";

    private readonly Folder home;
    private HeldPieces held;

    private WaitingPages(Folder home, string name, Folder folder, bool isInside)
    {
        (this.home, Name, IsInside) = (home, name, isInside);
        Tree = new(folder);
        held = new(folder, HeldName);
    }

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>Whether it lies inside the report.</summary>
    public bool IsInside { get; }

    /// <summary>The pages.</summary>
    public FolderTree Tree { get; }

    /// <summary>Pieces of what is not finished.</summary>
    public HeldPieces Held => held;

    /// <summary>Takes the folder for one run, and clears away what a run that was killed left in it.</summary>
    /// <param name="home">The folder that it lies in.</param>
    /// <param name="name">Its name.</param>
    /// <param name="report">The report as it is, or null when there is none.</param>
    /// <param name="told">The report in words.</param>
    /// <param name="isInside">Whether it lies inside the report.</param>
    /// <exception cref="IOException">Another run has it, it is a link or somebody else's, or it cannot be made.</exception>
    public static WaitingPages Open(Folder home, string name, Folder? report, string told, bool isInside)
    {
        while (true)
        {
            home.TryMake(name);
            if (home.Find(name) is not { } folder)
            {
                continue;
            }

            var isTaken = false;
            try
            {
                if (!folder.TryLock())
                {
                    throw AnotherRun(told);
                }

                // The run that had it may have taken it away, or made it the report, before the lock came free.
                if (home.Look(name).Identity != folder.Facts.Identity)
                {
                    continue;
                }

                Clear(folder, report, isInside);
                folder.Create(MarkName).Dispose();
                isTaken = true;
                return new(home, name, folder, isInside);
            }
            finally
            {
                if (!isTaken)
                {
                    folder.Dispose();
                }
            }
        }
    }

    /// <summary>Why a run cannot begin while another one writes the same pages.</summary>
    public static IOException AnotherRun(string told) =>
        new($"another run is writing pages into '{told}'; wait for it, or give another folder with --to");

    /// <summary>Takes away all pages that came in so far.</summary>
    public void Restart()
    {
        held.Dispose();
        Tree.Forget();
        foreach (var name in Tree.Root.Names().Where(name => name != MarkName))
        {
            Tree.Root.DeleteTree(name);
        }

        held = new(Tree.Root, HeldName);
    }

    /// <summary>Takes away what belongs to the run alone: what is left is a whole report.</summary>
    public void Complete()
    {
        held.Dispose();
        Tree.Root.Delete(HeldName);
        Tree.Root.Delete(MarkName);
    }

    /// <summary>Says once more that all in it is ours, after <see cref="Complete"/>.</summary>
    public void Reopen() => Tree.Root.Create(MarkName).Dispose();

    /// <summary>Takes the folder away with all that is in it, unless it has become the report.</summary>
    public void Discard()
    {
        held.Dispose();
        if (home.Look(Name) is { Kind: FileKind.Folder } there && there.Identity == Tree.Root.Facts.Identity)
        {
            Tree.Forget();
            Empty(Tree.Root);
            Tree.Dispose();
            home.DeleteFolder(Name);
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        held.Dispose();
        Tree.Dispose();
    }

    // What says that the rest is ours goes last: should this be cut short, the next run goes on with it.
    private static void Empty(Folder folder)
    {
        foreach (var name in folder.Names().OrderBy(name => name is MarkName or ReportPlace.ListName))
        {
            folder.DeleteTree(name);
        }
    }

    private static void Clear(Folder folder, Folder? report, bool isInside)
    {
        if (isInside || folder.Look(MarkName).Kind == FileKind.File)
        {
            Empty(folder);
        }
        else if (folder.Look(ReportPlace.ListName).Kind == FileKind.File)
        {
            OldPages.TakeAway(folder, report, ReportList.Read(folder));
        }
        else if (folder.Names().Count > 0)
        {
            throw new IOException(
                $"'{folder.FullName}' has files that are not ours, and pages would wait there; move them away, or give another folder "
                    + "with --to"
            );
        }
    }
}
