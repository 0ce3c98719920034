using System.Collections.Immutable;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Records.Merging;

/// <summary>Merges what two people made of one record, entry by entry, out of the lines as they stand.</summary>
/// <param name="meetings">What is left to a person though neither changed what the other changed.</param>
/// <param name="above">A word for the first side, where an entry tells no day and nobody.</param>
/// <param name="below">One for the second.</param>
internal sealed partial class ThreeWay(Meetings meetings, string above, string below)
{
    // What says by whom, when and with what the readings of a visit were taken.
    private static readonly string[] HeadOfReadings = ["date", "by", "temperature", "instrument", "powered"];

    private static readonly string[] OfOneVisit = ["date", "by"];

    private static readonly string[] Read = ["readings", "proof"];

    private readonly List<string> reasons = [];

    /// <summary>Whether the record is laid out in a way that its lines cannot be put together.</summary>
    internal bool IsDoubted { get; private set; }

    /// <summary>Why something is left to a person, one reason for each cause.</summary>
    internal IReadOnlyList<string> Reasons => [.. reasons.Distinct(StringComparer.Ordinal)];

    /// <summary>Merges the keys of a mapping.</summary>
    /// <param name="shape">Its shape, for the order of keys that one side added.</param>
    /// <param name="before">The keys as they were; none where there was nothing.</param>
    /// <param name="one">Those of the first.</param>
    /// <param name="other">Those of the second.</param>
    /// <param name="at">Where they stand.</param>
    internal ImmutableArray<Piece> Keys(
        Shape? shape,
        ImmutableArray<Piece> before,
        ImmutableArray<Piece> one,
        ImmutableArray<Piece> other,
        Standing at
    )
    {
        var (old, first, second) = (ByKey(before), ByKey(one), ByKey(other));
        var keys = one.Select(piece => piece.Key!).ToList();
        foreach (var key in other.Select(piece => piece.Key!).Where(key => !first.ContainsKey(key)))
        {
            var place = shape?.PlaceOf(key) ?? -1;
            var behind = place < 0 ? -1 : keys.FindLastIndex(known => shape!.PlaceOf(known) is >= 0 and var stands && stands < place);
            keys.Insert(behind < 0 ? keys.Count : behind + 1, key);
        }

        var merged = ImmutableArray.CreateBuilder<Piece>(keys.Count);
        foreach (var key in keys)
        {
            var (b, o, t) = (old.GetValueOrDefault(key), first.GetValueOrDefault(key), second.GetValueOrDefault(key));
            merged.AddRange(Key((shape?.PlaceOf(key) is >= 0 and var place ? shape!.KeyAt(place).Inner : null, key), b, o, t, at));
        }

        return merged.ToImmutable();
    }

    // What of the head of a visit was changed by one side while the other read something under it; null where nothing was.
    private static string? HeadTakenAlong(Piece before, Piece one, Piece other) =>
        HeadOfReadings.FirstOrDefault(key =>
            before.At(key)?.Meaning is var b
            && one.At(key)?.Meaning is var o
            && other.At(key)?.Meaning is var t
            && o != t
            && ((o != b && ReadsAnew(before, other)) || (t != b && ReadsAnew(before, one)))
        );

    private static bool ReadsAnew(Piece before, Piece now) =>
        Read.Any(list => now.At(list) is { } read && read.Meaning != before.At(list)?.Meaning);

    private ImmutableArray<Piece> Key((Shape? Inner, string Name) key, Piece? before, Piece? one, Piece? other, Standing at)
    {
        if (one?.HoldsItems == true || other?.HoldsItems == true)
        {
            if (HoldsOnlyItems(before) && HoldsOnlyItems(one) && HoldsOnlyItems(other))
            {
                return List(key, before, one, other, at) is { } list ? [list] : [];
            }
        }

        return One(null, key.Inner, before, one, other, at);
    }

    private static bool HoldsOnlyItems(Piece? piece) =>
        piece is null or { HoldsItems: true } or { Value: SequenceNode { Items.Length: 0 } or ScalarNode { IsNothing: true } };

    // Two changes of one entry, or of none where one side has it alone.
    private ImmutableArray<Piece> One(ListRule? rule, Shape? shape, Piece? before, Piece? one, Piece? other, Standing at)
    {
        if (one is null || other is null)
        {
            var there = one ?? other;
            if (there is null || (before is not null && there.Meaning == before.Meaning && HasRemarksOf(there, before)))
            {
                return [];
            }

            if (before is null)
            {
                return [there];
            }

            reasons.Add($"{at.Of(MergeWords.NameOf(rule, there))} was taken out on one side and changed on the other");
            return [Opposing(one, other)];
        }

        return [Both(rule, shape, before, one, other, at)];
    }

    private Piece Both(ListRule? rule, Shape? shape, Piece? before, Piece one, Piece other, Standing at)
    {
        if (at.IsVisit && before is not null && HeadTakenAlong(before, one, other) is { } head)
        {
            reasons.Add(at.Of($"its '{head}' was changed on one side, and something was read under the old one on the other"));
            return Opposing(one, other);
        }

        var lead = Kept(before?.Lead, one.Lead, other.Lead);
        var taken =
            one.Body == other.Body || other.Body == before?.Body ? one
            : one.Body == before?.Body ? other
            : one.HoldsKeys && other.HoldsKeys && before is null or { HoldsKeys: true } ? Block(shape, before, one, other, at)
            : Alike(before, one, other) ?? (before is null ? null : FlowMerge.Merge(rule, shape, before, one, other));
        if (taken is not null)
        {
            return taken with { Lead = lead };
        }

        reasons.Add(at.Of(MergeWords.Differs(rule, before, one, other)));
        return Opposing(one, other);
    }

    private Piece Block(Shape? shape, Piece? before, Piece one, Piece other, Standing at)
    {
        var keys = Keys(shape, before?.Inside ?? [], one.Inside, other.Inside, at);
        // The first key shares its line with the dash: no other can stand in its place.
        IsDoubted |= keys.IsEmpty || keys[0].Key != one.Inside[0].Key || keys[0].Key != other.Inside[0].Key || keys[0].Opposed is not null;
        return new Piece(
            one.Lead,
            Line(before?.Own, one.Own, other.Own),
            one.Key,
            new MappingNode(
                default,
                [.. keys.Where(key => key.Key is not null).Select(key => new MappingEntry(default, key.Key!, key.Value))],
                IsFlow: false
            )
        )
        {
            Inside = keys,
            Tail = Kept(before?.Tail, one.Tail, other.Tail),
        };
    }

    // What differs in its layout alone: the change of the one that says something else, or either.
    private static Piece? Alike(Piece? before, Piece one, Piece other)
    {
        var (old, first, second) = (RemarksIn(before?.Body), RemarksIn(one.Body), RemarksIn(other.Body));
        return one.Meaning == before?.Meaning && first == old ? other
            : other.Meaning == before?.Meaning && second == old ? one
            : one.Meaning != other.Meaning ? null
            : first == second ? (string.CompareOrdinal(one.Body, other.Body) <= 0 ? one : other)
            : second.Length == 0 || second == old ? one
            : first.Length == 0 || first == old ? other
            : null;
    }

    private static bool HasRemarksOf(Piece piece, Piece before) =>
        RemarksIn(piece.Lead + piece.Body) == RemarksIn(before.Lead + before.Body);

    private static string RemarksIn(string? text) =>
        text?.Contains('#', StringComparison.Ordinal) != true
            ? string.Empty
            : string.Concat(
                Lines.Of(text).Select(line => line.IndexOf('#', StringComparison.Ordinal) is >= 0 and var at ? line[at..] : string.Empty)
            );

    // Remarks contradict nobody: where both changed them, all of them stay.
    internal static string Kept(string? before, string one, string other) =>
        one == other || other == (before ?? string.Empty) ? one
        : one == (before ?? string.Empty) ? other
        : one
            + string.Concat(Lines.Of(other).Except(Lines.Of(one), StringComparer.Ordinal).Where(line => !string.IsNullOrWhiteSpace(line)));

    // A line that holds a key and a remark, or a dash: changed by both it is left to a merge of lines.
    internal string Line(string? before, string one, string other)
    {
        if (one == other || other == before)
        {
            return one;
        }

        IsDoubted |= one != before;
        return other;
    }

    private Piece Opposing(Piece? one, Piece? other) => Opposing(one is null ? [] : [one], other is null ? [] : [other], above, below);

    private static Piece Opposing(ImmutableArray<Piece> one, ImmutableArray<Piece> other, string oneName, string otherName) =>
        Piece.Of(new Opposed(one, other, oneName, otherName));

    private static Dictionary<string, Piece> ByKey(ImmutableArray<Piece> keys) =>
        keys.ToDictionary(piece => piece.Key!, StringComparer.Ordinal);
}

/// <summary>Where something stands, for what is told of it.</summary>
/// <param name="Words">The visit, the lot, the instrument; empty at the top of a record.</param>
/// <param name="IsVisit">Whether it is a visit.</param>
internal sealed record Standing(string Words, bool IsVisit)
{
    /// <summary>The top of a record.</summary>
    internal static Standing Top { get; } = new(string.Empty, false);

    /// <summary>Something that stands there.</summary>
    internal string Of(string text) => Words.Length == 0 ? text : $"{Words}: {text}";
}
