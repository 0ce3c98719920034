using System.Collections.Immutable;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.History;

/// <summary>The parts and points of a board: the design's, with what the board itself says in their place.</summary>
public static class BoardWithDesign
{
    /// <summary>Parts by reference, in the order of the design, the board's own ones after them.</summary>
    public static IReadOnlyDictionary<string, Part> Merge(ImmutableArray<Part> own, ImmutableArray<Part> design) =>
        Merge(own, design, part => part.Ref.Value);

    /// <summary>Points by name, in the order of the design, the board's own ones after them.</summary>
    public static IReadOnlyDictionary<string, TestPoint> Merge(ImmutableArray<TestPoint> own, ImmutableArray<TestPoint> design) =>
        Merge(own, design, point => point.Name.Value);

    private static OrderedDictionary<string, T> Merge<T>(ImmutableArray<T> own, ImmutableArray<T> design, Func<T, string> name)
    {
        var merged = new OrderedDictionary<string, T>(own.Length + design.Length, StringComparer.Ordinal);
        foreach (var item in design)
        {
            merged.TryAdd(name(item), item);
        }

        // A place written twice on one board is reported by a check; the first one counts.
        var seen = new HashSet<string>(own.Length, StringComparer.Ordinal);
        foreach (var item in own)
        {
            if (seen.Add(name(item)))
            {
                merged[name(item)] = item;
            }
        }

        return merged;
    }
}
