using System.Text;
using Ohmstead.Collections;
using Ohmstead.Electronics;
using Ohmstead.Records.Editing;
using Ohmstead.Records.Nodes;
using Ohmstead.Yaml;

namespace Ohmstead.Writing;

/// <summary>What the day's last entry at any board of the collection says about the bench, so that it need not be said again at the next
/// board.</summary>
internal static class DayMemory
{
    /// <summary>The instrument of the last visit of the day, out of the record that was written last; null where that says none.</summary>
    /// <param name="collection">All boards.</param>
    /// <param name="today">The day.</param>
    /// <param name="by">Who works now; what somebody else uses says nothing.</param>
    public static string? Instrument(CollectionFolder collection, DateOnly today, string? by)
    {
        // Only the newest file is read: a collection may have thousands.
        var newest = collection
            .Boards.Select(path => (Path: path, Written: File.GetLastWriteTimeUtc(collection.Full(path))))
            .DefaultIfEmpty()
            .MaxBy(file => file.Written)
            .Path;
        if (
            newest is null
            || RecordEditor
                .Open(newest, File.ReadAllText(collection.Full(newest), Encoding.UTF8), FileForm.Markdown, NodeReaders.ForWorker(0), out _)
                ?.LastVisit
                is not { } visit
        )
        {
            return null;
        }

        var isOfToday =
            visit.GetValueOrDefault("date") == IsoDate.Text(today)
            && (by is null || visit.GetValueOrDefault("by") is null || visit["by"] == by);
        return isOfToday ? visit.GetValueOrDefault("instrument") : null;
    }
}
