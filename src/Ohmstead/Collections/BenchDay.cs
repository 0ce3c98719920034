using Ohmstead.Electronics;
using Ohmstead.Records.Binding;
using Ohmstead.Records.Model;
using Ohmstead.Records.Nodes;
using Ohmstead.Yaml;

namespace Ohmstead.Collections;

/// <summary>Which day it is at the bench: that of the collection's time zone, else that of the machine.</summary>
/// <param name="Day">The day.</param>
/// <param name="Told">What is told of it; null when it is the day that it is in UTC as well.</param>
/// <param name="IsKnown">False where the collection names a zone that this machine does not know: then it is the day in UTC, and nothing is
/// to be written under it.</param>
internal sealed record BenchDay(DateOnly Day, string? Told, bool IsKnown)
{
    /// <summary>The day of a moment.</summary>
    /// <param name="moment">The moment.</param>
    /// <param name="said">The zone that the collection names, or null.</param>
    /// <param name="otherwise">The zone where it names none.</param>
    public static BenchDay At(DateTimeOffset moment, string? said, TimeZoneInfo otherwise)
    {
        var utc = DateOnly.FromDateTime(moment.UtcDateTime);
        if ((said is null ? otherwise : TimeZones.Named(said)) is not { } zone)
        {
            var why = TimeZones.WhyNot(said!) ?? $"this machine has no time zones, and the collection names '{said}'";
            return new(utc, $"{why}; in UTC it is {IsoDate.Text(utc)}", IsKnown: false);
        }

        var day = DateOnly.FromDateTime(TimeZoneInfo.ConvertTime(moment, zone).DateTime);
        var place = said ?? "on this machine's clock";
        return new(day, day == utc ? null : $"today is {IsoDate.Text(day)} ({place}); in UTC it is {IsoDate.Text(utc)}", IsKnown: true);
    }

    /// <summary>What the collection in a folder says about itself; null where it says nothing, or nothing that can be read.</summary>
    public static CollectionFile? CollectionIn(string folder)
    {
        const string file = "collection.yaml";
        if (!Directory.Exists(folder))
        {
            return null;
        }

        var files = new CollectionFolder(Path.GetFullPath(folder), [], []);
        if (files.Named(file) is null)
        {
            return null;
        }

        // What cannot be read is told by the run that follows.
        var options = new RunOptions(DateOnly.MinValue, IsThorough: false, Workers: 1, ReadingLimits.Usual);
        var read = new FileReader(files, NodeReaders.ForWorker(0), options).Read(file, FileForm.Yaml);
        return FileBinding.Collection(file, read).File;
    }
}
