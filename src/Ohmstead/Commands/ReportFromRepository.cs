using Ohmstead.Collections;
using Ohmstead.Comparing;
using Ohmstead.Electronics;
using Ohmstead.Git;
using Ohmstead.Publishing;

namespace Ohmstead.Commands;

/// <summary>Asks the repository of a collection for what a report is to tell of it.</summary>
internal static class ReportFromRepository
{
    /// <summary>The wishes with what was asked for, or why it cannot be had.</summary>
    /// <param name="wishes">What else a report is to tell.</param>
    /// <param name="collection">The collection's folder, as said and as opened.</param>
    /// <param name="options">How records are read and judged.</param>
    /// <param name="isKnown">Whether the records are those of an earlier commit.</param>
    /// <param name="asked">Whether the histories of boards are wanted, and since which state what changed; null for neither.</param>
    public static Outcome<ReportWishes> Add(
        ReportWishes wishes,
        (string Folder, CollectionFolder Files) collection,
        RunOptions options,
        bool isKnown,
        (bool History, string? Since) asked
    )
    {
        if (!asked.History && asked.Since is null)
        {
            return Outcome<ReportWishes>.From(wishes);
        }

        if (isKnown || options.UpTo is not null)
        {
            return Outcome<ReportWishes>.Refused("--history and --since tell of the files as they lie; leave --on and --known out");
        }

        if (asked.Since is { } since)
        {
            if (!new SideOpener(collection.Folder).Open(since, null).Is(out var sides, out var why))
            {
                return Outcome<ReportWishes>.Refused(why);
            }

            using (sides.Was)
            using (sides.Now)
            {
                wishes = wishes with { Since = new(since, new ChangesRun(sides.Was, sides.Now, options, options.Today).Run()) };
            }
        }

        return asked.History ? WithHistories(wishes, collection, options) : Outcome<ReportWishes>.From(wishes);
    }

    private static Outcome<ReportWishes> WithHistories(
        ReportWishes wishes,
        (string Folder, CollectionFolder Files) collection,
        RunOptions options
    )
    {
        if (!GitRepository.Open(collection.Folder).Is(out var git, out var why) || !git.Objects().Is(out var objects, out why))
        {
            return Outcome<ReportWishes>.Refused(why);
        }

        using (objects)
        {
            using var lying = new ComparedSide(collection.Folder, collection.Files, null);
            var run = new HistoryRun(git, objects, lying, options);
            return run.Run(collection.Files.Boards, isAll: true).Is(out var histories, out why)
                ? Outcome<ReportWishes>.From(wishes with { Histories = histories })
                : Outcome<ReportWishes>.Refused(why);
        }
    }
}
