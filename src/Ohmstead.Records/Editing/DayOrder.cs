using Ohmstead.Records.Model;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Records.Editing;

/// <summary>
/// Whether an entry may join a visit without saying that it happened earlier than it did. A visit tells what happened in the order found,
/// readings, work, decided, proof; an entry that comes after something of a later list, about the same place, begins a second visit of the
/// day.
/// </summary>
internal static class DayOrder
{
    /// <summary>Whether it may.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="list">The list of the visit that the entry belongs to.</param>
    /// <param name="entry">The entry.</param>
    internal static bool MayJoin(MappingNode visit, string list, MappingNode entry)
    {
        var places = PlacesOf(entry);
        return list switch
        {
            // What is seen after the work there was not mended by it.
            "found" => !Any(visit, "work", other => IsAbout(other, places)) && !Any(visit, "decided", other => IsAbout(other, places)),
            "readings" => IsAsLeft(entry)
                ? !Any(visit, "decided", other => IsAbout(other, places)) && !Any(visit, "proof", other => IsAbout(other, places))
                : !Any(visit, "work", other => IsAbout(other, places))
                    && !Any(visit, "decided", other => IsAbout(other, places))
                    && !Any(visit, "proof", other => IsAbout(other, places)),
            // A proof is of the board as it was before; so is what was read as left, and a decision about the part that went.
            "work" => !Any(visit, "proof", _ => true)
                && !Any(visit, "decided", other => IsAbout(other, places))
                && !Any(visit, "readings", other => IsAsLeft(other) && IsAbout(other, places)),
            _ => true,
        };
    }

    /// <summary>When in the part's life an entry says that it was taken, or null.</summary>
    internal static string? StateOf(MappingNode entry) => TextOf(entry, BenchShape.State.Name);

    private static bool IsAsLeft(MappingNode reading) =>
        StateOf(reading) is { } word && Vocabulary.ReadingStates.Means(word, out var state) && state == ReadingState.AsLeft;

    /// <summary>The places that an entry is about.</summary>
    internal static HashSet<string> PlacesOf(MappingNode entry)
    {
        var places = new HashSet<string>(StringComparer.Ordinal);
        foreach (var key in new[] { "part", "at", "point", "clears" })
        {
            if (TextOf(entry, key) is { } place)
            {
                places.Add(place);
            }
        }

        return places;
    }

    private static bool IsAbout(MappingNode entry, HashSet<string> places) => PlacesOf(entry).Overlaps(places);

    private static bool Any(MappingNode visit, string list, Func<MappingNode, bool> isSo) =>
        visit.ValueOf(list) is SequenceNode items && items.Items.OfType<MappingNode>().Any(isSo);

    private static string? TextOf(MappingNode entry, string key) => (entry.ValueOf(key) as ScalarNode)?.Text;
}
