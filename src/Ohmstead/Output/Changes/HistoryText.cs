using Ohmstead.Assessment.Changes;
using Ohmstead.Electronics;
using Ohmstead.Running;

namespace Ohmstead.Output.Changes;

/// <summary>What a repository tells of a board, for people at a terminal: one line for each commit.</summary>
internal static class HistoryText
{
    // A longer name is shown whole; it only pushes its own line out.
    private const int WidestName = 24;

    /// <summary>Writes it.</summary>
    /// <param name="target">Where.</param>
    /// <param name="history">The history.</param>
    /// <param name="folder">The folder of the collection, for the command that tells more.</param>
    /// <param name="place">The part, point or place that is asked about; null for the whole board.</param>
    /// <param name="withEntries">Whether to tell who first wrote each entry, too.</param>
    public static void Write(TextWriter target, CommitHistory history, string folder, string? place, bool withEntries)
    {
        var steps = history
            .Steps.Select(step => (step.Commit, Told: HistoryLines.Told(step.Changes, place), HasEarlier: step.Changes.Was is not null))
            .Where(step => step.Told.Length > 0)
            .ToArray();
        var of = place is null ? history.Number : $"{history.Number} {place}";
        var committed = steps.Count(step => step.Commit is not null);
        target.WriteLine(
            Printable.Escape($"{of}: {committed} {(committed == 1 ? "commit" : "commits")} changed what is said or judged of it")
        );
        if (steps.Length > 0)
        {
            target.WriteLine();
        }

        var width = Math.Min(WidestName, steps.Select(step => step.Commit?.Who.Length ?? 0).DefaultIfEmpty().Max());
        foreach (var (commit, told, _) in steps)
        {
            var by = commit is null
                ? "not committed yet"
                : $"{IsoDate.Text(commit.Day)}  {commit.Short}  {commit.Who.PadRight(width)}{(commit.IsMerge ? "  merge:" : string.Empty)}";
            target.WriteLine(Printable.Escape($"{by}  {told}"));
        }

        if (history.Begins is { } begins)
        {
            target.WriteLine(
                Printable.Escape($"{IsoDate.Text(begins.Day)}  {begins.Short}  the history of this clone begins here; fetch more of it")
            );
        }

        var entries = history.Entries.Where(one => place is null || one.Entry.Of.Split(' ').Contains(place)).ToArray();
        if (withEntries && entries.Length > 0)
        {
            target.WriteLine();
            target.WriteLine("first written");
            foreach (var origin in entries)
            {
                target.WriteLine(Printable.Escape($"  {HistoryLines.Told(origin.Entry)}: {HistoryLines.Told(origin)}"));
            }
        }

        // The first commit of all has none before it.
        if (steps.FirstOrDefault(step => step.Commit is not null && step.HasEarlier).Commit is { } latest)
        {
            target.WriteLine();
            target.WriteLine(Printable.Escape($"all of one commit: ohmstead changes {latest.Short}~1 {latest.Short} --in {folder}"));
        }
    }
}
