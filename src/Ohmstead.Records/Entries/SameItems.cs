using System.Collections.Immutable;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Text;

namespace Ohmstead.Records.Entries;

/// <summary>
/// Two states of a file without the items that begin or end a list of theirs word for word alike: nearly all of a record is the same from
/// one day to the next, and what is the same need not be taken apart.
/// </summary>
/// <param name="Was">What is left of the earlier state.</param>
/// <param name="Now">What is left of the later one.</param>
/// <param name="Earlier">Where each mapping of what was left out of the later state stood in the earlier one.</param>
internal sealed record SameItems(MappingNode Was, MappingNode Now, Dictionary<Spot, Spot> Earlier)
{
    /// <summary>Leaves the same items out: of the lists of the file, and of those of a visit that differs in nothing else.</summary>
    /// <param name="was">The earlier state.</param>
    /// <param name="now">The later one.</param>
    public static SameItems LeaveOut(MappingNode was, MappingNode now)
    {
        var earlier = new Dictionary<Spot, Spot>();
        var (left, leftNow) = Without(was, now, RecordEntries.IsListed, 0, earlier);
        return new(left, leftNow, earlier);
    }

    private static (MappingNode Was, MappingNode Now) Without(
        MappingNode was,
        MappingNode now,
        Func<string, bool> isList,
        int kept,
        Dictionary<Spot, Spot> earlier
    )
    {
        var (left, leftNow) = (was.Entries.ToBuilder(), now.Entries.ToBuilder());
        for (var at = 0; at < left.Count; at++)
        {
            if (!isList(left[at].Key) || left[at].Value is not SequenceNode list)
            {
                continue;
            }

            for (var beside = 0; beside < leftNow.Count; beside++)
            {
                if (leftNow[beside].Key == left[at].Key && leftNow[beside].Value is SequenceNode second)
                {
                    var (rest, restNow) = Without(list.Items, second.Items, kept, earlier);
                    left[at] = left[at] with { Value = list with { Items = rest } };
                    leftNow[beside] = leftNow[beside] with { Value = second with { Items = restNow } };
                }
            }
        }

        return (was with { Entries = left.DrainToImmutable() }, now with { Entries = leftNow.DrainToImmutable() });
    }

    private static (ImmutableArray<Node> Was, ImmutableArray<Node> Now) Without(
        ImmutableArray<Node> was,
        ImmutableArray<Node> now,
        int kept,
        Dictionary<Spot, Spot> earlier
    )
    {
        var (first, last) = Ends(was, now);
        (first, last) = first > 0 ? (first - kept, last) : (first, Math.Max(last - kept, 0));
        Remember(earlier, was[..first], now[..first]);
        Remember(earlier, was[^last..], now[^last..]);
        (was, now) = (was[first..^last], now[first..^last]);
        if (was is [MappingNode visit] && now is [MappingNode same] && IsSameVisit(visit, same))
        {
            // Whether a visit has readings decides what it says by itself: no list of it is emptied.
            var (rest, restNow) = Without(visit, same, EntryShape.OfVisits.ContainsKey, 1, earlier);
            return ([rest], [restNow]);
        }

        return (was, now);
    }

    // Day, person, instrument and all else but what stands in its lists.
    private static bool IsSameVisit(MappingNode was, MappingNode now)
    {
        static MappingEntry[] Own(MappingNode visit) => [.. visit.Entries.Where(entry => !EntryShape.OfVisits.ContainsKey(entry.Key))];

        var (own, ownNow) = (Own(was), Own(now));
        return own.Length == ownNow.Length
            && own.Zip(ownNow).All(pair => pair.First.Key == pair.Second.Key && NodeWords.AreSame(pair.First.Value, pair.Second.Value));
    }

    private static (int First, int Last) Ends(ImmutableArray<Node> was, ImmutableArray<Node> now)
    {
        var most = Math.Min(was.Length, now.Length);
        var first = 0;
        while (first < most && NodeWords.AreSame(was[first], now[first]))
        {
            first++;
        }

        var last = 0;
        while (last < most - first && NodeWords.AreSame(was[^(last + 1)], now[^(last + 1)]))
        {
            last++;
        }

        return (first, last);
    }

    private static void Remember(Dictionary<Spot, Spot> earlier, ImmutableArray<Node> was, ImmutableArray<Node> now)
    {
        for (var at = 0; at < now.Length; at++)
        {
            Remember(earlier, was[at], now[at]);
        }
    }

    private static void Remember(Dictionary<Spot, Spot> earlier, Node was, Node now)
    {
        switch (was, now)
        {
            case (MappingNode old, MappingNode mapping):
                earlier.TryAdd(mapping.Spot, old.Spot);
                for (var at = 0; at < mapping.Entries.Length; at++)
                {
                    Remember(earlier, old.Entries[at].Value, mapping.Entries[at].Value);
                }

                break;
            case (SequenceNode old, SequenceNode list):
                Remember(earlier, old.Items, list.Items);
                break;
        }
    }
}
