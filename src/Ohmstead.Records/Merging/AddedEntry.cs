using System.Collections.Immutable;
using Ohmstead.Records.Editing;
using Ohmstead.Records.Nodes;

namespace Ohmstead.Records.Merging;

/// <summary>An entry of a visit that one of two people added.</summary>
/// <param name="Visit">The visit that it stands in.</param>
/// <param name="List">The list of the visit.</param>
/// <param name="Entry">The entry.</param>
/// <param name="IsOfOwnVisit">Whether the visit itself is new.</param>
internal sealed record AddedEntry(Piece Visit, string List, Piece Entry, bool IsOfOwnVisit)
{
    /// <summary>The places that it is about.</summary>
    internal IReadOnlySet<string> Places { get; } = Entry.Value is MappingNode said ? DayOrder.PlacesOf(said) : new HashSet<string>();

    /// <summary>The day of the visit.</summary>
    internal string Day => Visit.TextAt("date") ?? string.Empty;

    /// <summary>The initials of the visit.</summary>
    internal string By => Visit.TextAt("by") ?? string.Empty;

    /// <summary>What a message calls it: what it is, the place, and who.</summary>
    internal string Words => $"{ListRules.For(List).What}{(Places.Count > 0 ? " of " + string.Join(" and ", Places) : string.Empty)}";

    /// <summary>All that one person added to the visits of a record.</summary>
    internal static IEnumerable<AddedEntry> All(ImmutableArray<Piece> before, ImmutableArray<Piece> now)
    {
        var visits = Alignment.Of(ListRules.For("bench"), before, now);
        for (var at = 0; at < now.Length; at++)
        {
            var old = visits.Before[at] is >= 0 and var there ? before[there] : null;
            if (old?.Body == now[at].Body)
            {
                continue;
            }

            foreach (var list in now[at].Inside.Where(piece => piece.HoldsItems))
            {
                var known = old?.At(list.Key!) is { HoldsItems: true } held ? held.Inside : [];
                foreach (var place in Alignment.Of(ListRules.For(list.Key!), known, list.Inside).New)
                {
                    yield return new(now[at], list.Key!, list.Inside[place], old is null);
                }
            }
        }
    }
}
