using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Families.Statistics;

namespace Ohmstead.Assessment.Families;

/// <summary>The families of parts of a whole collection.</summary>
public static class CollectionFamilies
{
    /// <summary>Every family of which something was measured, the largest share failed first, then by name; those with too few parts for a
    /// share last.</summary>
    public static IReadOnlyList<FamilyStatistics> Count(IEnumerable<BoardSummary> boards)
    {
        var counts = new OrderedDictionary<FamilyName, FamilyCount>();
        var levels = new Dictionary<FamilyName, FamilyCount[]>();
        foreach (var board in boards)
        {
            foreach (var family in board.Families)
            {
                if (!levels.TryGetValue(family.Name, out var each))
                {
                    levels.Add(family.Name, each = [.. family.Name.Levels().Select(level => At(counts, level))]);
                }

                Add(each, board, family);
            }
        }

        return
        [
            .. counts
                .Where(pair => pair.Value.HasSomething)
                .Select(pair => pair.Value.Statistics(pair.Key))
                .OrderByDescending(family => family.Share?.Share ?? -1)
                .ThenBy(family => family.Name.Text, StringComparer.Ordinal),
        ];
    }

    private static void Add(FamilyCount[] levels, BoardSummary board, FamilyOnBoard family)
    {
        foreach (var level in levels)
        {
            level.Add(family.Originals, family.FailedInCircuit);
        }

        for (var at = 0; at < family.Lives.Count; at++)
        {
            // What one life says is worked out once for all the families that it counts in.
            var life = family.Lives[at];
            var known = life.Observation();
            var firstLook = life.IsOriginal ? life.AgeAtFirstLook : null;
            foreach (var level in levels)
            {
                level.Add(board, life, known, firstLook);
            }
        }
    }

    private static FamilyCount At(OrderedDictionary<FamilyName, FamilyCount> counts, FamilyName name)
    {
        if (!counts.TryGetValue(name, out var count))
        {
            counts.Add(name, count = new());
        }

        return count;
    }
}
