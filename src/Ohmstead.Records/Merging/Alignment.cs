using System.Collections.Immutable;
using Ohmstead.Records.Entries;

namespace Ohmstead.Records.Merging;

/// <summary>Which item of a list is which item of the list as it was before, whatever lines it stands on.</summary>
/// <param name="Now">For each item as it was: its place now, or -1 where it is gone.</param>
/// <param name="Before">For each item as it is: its place before, or -1 where it is new.</param>
internal sealed record Alignment(int[] Now, int[] Before)
{
    /// <summary>Finds the items of one list in another: those that say the same first, then those that are known by the same.</summary>
    internal static Alignment Of(ListRule rule, ImmutableArray<Piece> before, ImmutableArray<Piece> now)
    {
        var found = new Alignment(new int[before.Length], new int[now.Length]);
        Array.Fill(found.Now, -1);
        Array.Fill(found.Before, -1);
        found.Match(before, now, piece => piece.Meaning);
        foreach (var keys in KnownBy.Of(rule.List))
        {
            found.Match(before, now, piece => piece.NameBy(keys));
        }

        return found;
    }

    /// <summary>The places of the new items.</summary>
    internal IEnumerable<int> New => Enumerable.Range(0, Before.Length).Where(at => Before[at] < 0);

    /// <summary>Whether the items that were there before stand in another order now.</summary>
    internal bool IsReordered
    {
        get
        {
            int[] kept = [.. Now.Where(at => at >= 0)];
            return kept.Zip(kept.Skip(1)).Any(pair => pair.First > pair.Second);
        }
    }

    private void Match(ImmutableArray<Piece> before, ImmutableArray<Piece> now, Func<Piece, string> name)
    {
        var open = new Dictionary<string, Queue<int>>(StringComparer.Ordinal);
        for (var at = 0; at < now.Length; at++)
        {
            if (Before[at] < 0)
            {
                var called = name(now[at]);
                if (!open.TryGetValue(called, out var queue))
                {
                    open[called] = queue = new();
                }

                queue.Enqueue(at);
            }
        }

        for (var at = 0; at < before.Length && open.Count > 0; at++)
        {
            if (Now[at] < 0 && open.TryGetValue(name(before[at]), out var queue) && queue.TryDequeue(out var there))
            {
                (Now[at], Before[there]) = (there, at);
            }
        }
    }
}
