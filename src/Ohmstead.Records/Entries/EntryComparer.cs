using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Shapes;
using Ohmstead.Records.Text;

namespace Ohmstead.Records.Entries;

/// <summary>What differs between two states of a file, and which entries are the same.</summary>
/// <param name="Differences">What differs, in the order of the later state, what is gone first.</param>
/// <param name="Earlier">Where each entry of the later state stood in the earlier one, by where it stands now; those that are new are not
/// in it.</param>
public sealed record EntryComparison(ImmutableArray<EntryDifference> Differences, IReadOnlyDictionary<Spot, Spot> Earlier)
{
    /// <summary>Nothing differs.</summary>
    public static EntryComparison Same { get; } = new([], FrozenDictionary<Spot, Spot>.Empty);
}

/// <summary>Compares what two states of a file say.</summary>
public static class EntryComparer
{
    /// <summary>Compares two states of a file. What stands in both word for word is not taken apart.</summary>
    /// <param name="was">The earlier state; null when there was no file that could be read.</param>
    /// <param name="now">The later state; likewise.</param>
    /// <param name="shape">The shape of the file.</param>
    public static EntryComparison Compare(MappingNode? was, MappingNode? now, Shape shape)
    {
        if (was is null || now is null)
        {
            return Compare(was is null ? [] : RecordEntries.List(was, shape), now is null ? [] : RecordEntries.List(now, shape));
        }

        var left = SameItems.LeaveOut(was, now);
        var compared = Compare(RecordEntries.List(left.Was, shape), RecordEntries.List(left.Now, shape));
        foreach (var (spot, earlier) in compared.Earlier)
        {
            left.Earlier.TryAdd(spot, earlier);
        }

        return compared with
        {
            Earlier = left.Earlier,
        };
    }

    /// <summary>Compares the entries of two states of a file.</summary>
    /// <remarks>
    /// Entries are paired by what they are about, never by line or position: first those that say the same, then those of one name, then
    /// those that are still alike after somebody mended who, how or what.
    /// </remarks>
    /// <param name="was">The entries of the earlier state; empty when there was no file.</param>
    /// <param name="now">The entries of the later state; empty when there is no file.</param>
    public static EntryComparison Compare(ImmutableArray<RecordEntry> was, ImmutableArray<RecordEntry> now)
    {
        var before = new bool[was.Length];
        var partner = new int[now.Length];
        Array.Fill(partner, -1);
        // What says the same is paired once and asked no more: nearly all of a record is.
        Pair(was, now, before, partner, entry => entry.Said);
        var isSame = Array.ConvertAll(partner, at => at >= 0);
        var strictness = was.Concat(now).Select(entry => entry.Names.Length).DefaultIfEmpty().Max();
        for (var level = 0; level < strictness && Array.Exists(partner, at => at < 0); level++)
        {
            Pair(was, now, before, partner, entry => level < entry.Names.Length ? entry.Names[level] : null);
        }

        var differences = ImmutableArray.CreateBuilder<EntryDifference>();
        var earlier = new Dictionary<Spot, Spot>(now.Length);
        for (var at = 0; at < was.Length; at++)
        {
            if (!before[at])
            {
                differences.Add(new(was[at], null, []));
            }
        }

        for (var at = 0; at < now.Length; at++)
        {
            if (partner[at] < 0)
            {
                differences.Add(new(null, now[at], []));
                continue;
            }

            earlier.TryAdd(now[at].Spot, was[partner[at]].Spot);
            if (!isSame[at] && Facts(was[partner[at]], now[at]) is { Length: > 0 } facts)
            {
                differences.Add(new(was[partner[at]], now[at], facts));
            }
        }

        return new(differences.DrainToImmutable(), earlier);
    }

    // Each earlier entry has one partner at most; among twins the first takes the first.
    private static void Pair(
        ImmutableArray<RecordEntry> was,
        ImmutableArray<RecordEntry> now,
        bool[] before,
        int[] partner,
        Func<RecordEntry, string?> name
    )
    {
        var open = new Dictionary<string, Queue<int>>(StringComparer.Ordinal);
        for (var at = 0; at < was.Length; at++)
        {
            if (!before[at] && name(was[at]) is { } called)
            {
                ref var twins = ref CollectionsMarshal.GetValueRefOrAddDefault(open, called, out _);
                (twins ??= new()).Enqueue(at);
            }
        }

        for (var at = 0; at < now.Length; at++)
        {
            if (partner[at] < 0 && name(now[at]) is { } called && open.TryGetValue(called, out var twins) && twins.TryDequeue(out var twin))
            {
                partner[at] = twin;
                before[twin] = true;
            }
        }
    }

    private static ImmutableArray<FactDifference> Facts(RecordEntry was, RecordEntry now)
    {
        var facts = ImmutableArray.CreateBuilder<FactDifference>();
        if (was.By != now.By)
        {
            facts.Add(new("by", By(was), By(now)));
        }

        var old = was.Facts.ToDictionary(fact => fact.Key, StringComparer.Ordinal);
        foreach (var fact in now.Facts)
        {
            if (!old.Remove(fact.Key, out var before))
            {
                facts.Add(new(fact.Key, null, fact));
            }
            else if (before.Meaning != fact.Meaning)
            {
                facts.Add(new(fact.Key, before, fact));
            }
        }

        facts.AddRange(was.Facts.Where(fact => old.ContainsKey(fact.Key)).Select(fact => new FactDifference(fact.Key, fact, null)));
        return facts.DrainToImmutable();
    }

    private static EntryFact? By(RecordEntry entry) => entry.By is { } by ? new("by", by, by, entry.Spot) : null;
}
