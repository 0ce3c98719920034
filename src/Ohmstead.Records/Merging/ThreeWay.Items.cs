using System.Collections.Immutable;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Records.Merging;

/// <content>Lists: what one side added stays, in the order in which it happened.</content>
internal sealed partial class ThreeWay
{
    // A list of which nothing is left goes with its key.
    private Piece? List((Shape? Inner, string Name) key, Piece? before, Piece? one, Piece? other, Standing at)
    {
        if (one is not null && other is not null && (one.Body == other.Body || other.Body == before?.Body || one.Body == before?.Body))
        {
            return (
                other.Body == before?.Body ? one
                : one.Body == before?.Body ? other
                : one
            ) with
            {
                Lead = Kept(before?.Lead, one.Lead, other.Lead),
            };
        }

        if (before is null && (one is null || other is null))
        {
            return one ?? other;
        }

        var items = Items((ListRules.For(key.Name), key.Inner), before?.Inside ?? [], one?.Inside ?? [], other?.Inside ?? [], at);
        if (items.IsEmpty && before is not null && (one ?? other) is { } left && !HasRemarksOf(WithoutItems(left), WithoutItems(before)))
        {
            reasons.Add(at.Of($"'{key.Name}' was taken out on one side, and a remark was written there on the other"));
            return Opposing(one, other);
        }

        if (items.IsEmpty)
        {
            return one is { IsBlock: false } ? one
                : other is { IsBlock: false } ? other
                : null;
        }

        var (first, second) = (one is { IsBlock: true } ? one : other!, other is { IsBlock: true } ? other : one!);
        return new Piece(
            Kept(before?.Lead, first.Lead, second.Lead),
            Line(before is { IsBlock: true } ? before.Own : null, first.Own, second.Own),
            key.Name,
            new SequenceNode(default, [.. items.Select(item => item.Value)], IsFlow: false)
        )
        {
            Inside = items,
            Tail = Kept(before?.Tail, first.Tail, second.Tail),
        };
    }

    private static Piece WithoutItems(Piece list) => new(list.Lead, list.Own + list.Tail, list.Key, list.Value);

    private ImmutableArray<Piece> Items(
        (ListRule Rule, Shape? Shape) of,
        ImmutableArray<Piece> before,
        ImmutableArray<Piece> one,
        ImmutableArray<Piece> other,
        Standing at
    )
    {
        IsDoubted |= one.Concat(other).Select(Indentation).Distinct().Count() > 1;
        var (first, second) = (Alignment.Of(of.Rule, before, one), Alignment.Of(of.Rule, before, other));
        if (OrderOf(first, second) is not { } order)
        {
            reasons.Add(at.Of($"the {of.Rule.What}s were put in two different orders"));
            return [Opposing(one, other, above, below)];
        }

        var added = new Added(of.Rule, (one, [.. first.New]), (other, [.. second.New]));
        Pair(of, added, first.New, second.New, at);
        var (ofFirst, ofSecond) = (ByAnchor(first, _ => true), ByAnchor(second, at => !added.IsTaken(at)));
        var merged = ImmutableArray.CreateBuilder<Piece>();
        foreach (var anchor in order.Prepend(-1))
        {
            if (anchor >= 0)
            {
                var (o, t) = (Find(one, first.Now[anchor]), Find(other, second.Now[anchor]));
                merged.AddRange(One(of.Rule, of.Shape, before[anchor], o, t, Within(of.Rule, before[anchor], at)));
            }

            foreach (var item in added.InOrder([.. ofFirst[anchor]], [.. ofSecond[anchor]]))
            {
                merged.AddRange(Put(added, item));
            }
        }

        return merged.ToImmutable();
    }

    // What both added: the same is one, and of two with one name a person keeps one.
    private void Pair((ListRule Rule, Shape? Shape) of, Added added, IEnumerable<int> first, IEnumerable<int> second, Standing at)
    {
        var open = second.ToList();
        foreach (var mine in first)
        {
            var piece = added.One[mine];
            var found = open.FindIndex(there => added.Other[there].Meaning == piece.Meaning);
            found = found >= 0 ? found : open.FindIndex(there => IsOneVisit(of.Rule, piece, added.Other[there]));
            found =
                found >= 0 || of.Rule.Name is not { } name
                    ? found
                    : open.FindIndex(there => added.Other[there].NameBy(name) == piece.NameBy(name));
            if (found >= 0)
            {
                added.Pair(mine, open[found], Both(of.Rule, of.Shape, null, piece, added.Other[open[found]], Within(of.Rule, piece, at)));
                open.RemoveAt(found);
            }
        }
    }

    // Two visits of one person on one day are one where nothing that is read would be said to have been read otherwise.
    private bool IsOneVisit(ListRule rule, Piece one, Piece other) =>
        rule.List == "bench"
        && one.TextAt("by") is not null
        && one.HoldsKeys
        && other.HoldsKeys
        && OfOneVisit.All(key => one.TextAt(key) == other.TextAt(key))
        && meetings.OfDay(one.TextAt("date")) is null
        && one.Inside.Concat(other.Inside)
            .Where(key => !key.HoldsItems)
            .Select(key => key.Key!)
            .Distinct(StringComparer.Ordinal)
            .All(key =>
                one.TextAt(key) is var mine
                && other.TextAt(key) is var theirs
                && (mine == theirs || (mine is null && !Reads(one)) || (theirs is null && !Reads(other)))
            );

    private static bool Reads(Piece visit) => visit.At("readings") is not null || visit.At("proof") is not null;

    private IEnumerable<Piece> Put(Added added, NewItem item)
    {
        if (item.IsOfBoth || added.Rule.List != "bench" || item.Piece.TextAt("date") is not { } day || meetings.OfDay(day) is not { } order)
        {
            yield return item.Piece;
        }
        else if (!added.IsTold(day))
        {
            // All new visits of the day at once, where the first of them stands.
            reasons.Add(order);
            var (first, second) = (added.OfDay(day, isOther: false), added.OfDay(day, isOther: true));
            yield return Opposing(first, second, MergeWords.OfVisit(first[0]), MergeWords.OfVisit(second[0]));
        }
    }

    /// <summary>Leaves to a person what was put in though nobody told what it says together with something else.</summary>
    internal ImmutableArray<Piece> WithMeetings(ImmutableArray<Piece> merged)
    {
        if (!meetings.HasEntries)
        {
            return merged;
        }

        var marked = ImmutableArray.CreateBuilder<Piece>(merged.Length);
        foreach (var piece in merged)
        {
            if (meetings.Of(piece) is var (reason, isOther))
            {
                reasons.Add(reason);
                marked.Add(isOther ? Opposing(null, piece) : Opposing(piece, null));
            }
            else
            {
                marked.Add(piece.IsBlock ? piece with { Inside = WithMeetings(piece.Inside) } : piece);
            }
        }

        return marked.MoveToImmutable();
    }

    private static Standing Within(ListRule rule, Piece item, Standing at) =>
        rule.List == "bench" ? new(MergeWords.OfVisit(item), IsVisit: true)
        : item.HoldsKeys ? new(at.Of(MergeWords.NameOf(rule, item)), IsVisit: false)
        : at;

    private static Piece? Find(ImmutableArray<Piece> items, int at) => at < 0 ? null : items[at];

    private static int Indentation(Piece item) => item.Own.AsSpan().IndexOfAnyExcept(' ');

    // The order of the items that were there: of the side that put them in another one, else as it was; null where both did.
    private static IEnumerable<int>? OrderOf(Alignment first, Alignment second)
    {
        if (first.IsReordered && second.IsReordered && !Kept(first).SequenceEqual(Kept(second)))
        {
            return null;
        }

        return first.IsReordered ? Kept(first)
            : second.IsReordered ? Kept(second)
            : Enumerable.Range(0, first.Now.Length);
    }

    private static IEnumerable<int> Kept(Alignment of) =>
        of.Before.Where(at => at >= 0).Concat(Enumerable.Range(0, of.Now.Length).Where(at => of.Now[at] < 0));

    // The new items by the one of before behind which they stand.
    private static ILookup<int, int> ByAnchor(Alignment of, Func<int, bool> isLeft)
    {
        var (anchor, places) = (-1, new List<(int Anchor, int At)>());
        for (var at = 0; at < of.Before.Length; at++)
        {
            if (of.Before[at] >= 0)
            {
                anchor = of.Before[at];
            }
            else if (isLeft(at))
            {
                places.Add((anchor, at));
            }
        }

        return places.ToLookup(place => place.Anchor, place => place.At);
    }
}
