using Ohmstead.Records.Editing.Edits;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Shapes;
using Ohmstead.Records.Text;

namespace Ohmstead.Records.Merging;

/// <summary>Merges two changes of an item in braces key by key, where they are of different facts.</summary>
internal static class FlowMerge
{
    /// <summary>Merges.</summary>
    /// <param name="rule">What of the item is one fact; null where each key is one of its own.</param>
    /// <param name="shape">The order of its keys, or null.</param>
    /// <param name="before">As it was.</param>
    /// <param name="one">As the first has it; its layout is kept.</param>
    /// <param name="other">As the second has it.</param>
    /// <returns>The merged item, or null where both changed one fact in different ways, or it cannot be spliced.</returns>
    internal static Piece? Merge(ListRule? rule, Shape? shape, Piece before, Piece one, Piece other)
    {
        if (
            before.Value is not MappingNode { IsFlow: true } old
            || one.Value is not MappingNode { IsFlow: true } first
            || other.Value is not MappingNode { IsFlow: true } second
        )
        {
            return null;
        }

        var (oldFact, firstFact, secondFact) = (FactOf(rule, old), FactOf(rule, first), FactOf(rule, second));
        if (firstFact != oldFact && secondFact != oldFact && firstFact != secondFact)
        {
            return null;
        }

        var takesFact = secondFact != oldFact;
        var taken = new List<string>();
        foreach (
            var key in old.Entries.Concat(first.Entries).Concat(second.Entries).Select(entry => entry.Key).Distinct(StringComparer.Ordinal)
        )
        {
            var (b, o, t) = (Said(old, key), Said(first, key), Said(second, key));
            if (o == t || t == b)
            {
                continue;
            }

            if (o != b && !(rule?.IsFact(key) == true && takesFact))
            {
                return null;
            }

            taken.Add(key);
        }

        return Splice(shape, (one, first), (other, second), taken);
    }

    private static Piece? Splice(
        Shape? shape,
        (Piece Piece, MappingNode Said) one,
        (Piece Piece, MappingNode Said) other,
        List<string> taken
    )
    {
        if (Spans.Of(one.Piece, one.Said) is not { } into || Spans.Of(other.Piece, other.Said) is not { } from)
        {
            return null;
        }

        var entries = one.Said.Entries.ToList();
        var texts = entries.ToDictionary(entry => entry.Key, entry => into.TextOf(entry.Key), StringComparer.Ordinal);
        var edits = new List<TextEdit>();
        foreach (var key in taken)
        {
            var at = entries.FindIndex(entry => entry.Key == key);
            if (other.Said.ValueOf(key) is not { } value)
            {
                return null;
            }

            var entry = new MappingEntry(default, key, value);
            var text = from.TextOf(key);
            if (at >= 0)
            {
                entries[at] = entry;
                edits.Add(into.Instead(key, text));
                continue;
            }

            var place = shape?.PlaceOf(key) ?? -1;
            var behind = entries.FindLastIndex(known =>
                texts.ContainsKey(known.Key) && shape is not null && shape.PlaceOf(known.Key) < place
            );
            if (behind < 0)
            {
                return null;
            }

            // Behind those that were put in there before it.
            var to = behind + 1 + entries.Skip(behind + 1).TakeWhile(known => !texts.ContainsKey(known.Key)).Count();
            edits.Add(into.Behind(entries[behind].Key, ", " + text));
            entries.Insert(to, entry);
        }

        var own = TextEdit.Apply(
            one.Piece.Own,
            edits
                .GroupBy(edit => (edit.Offset, edit.Length))
                .Select(group => new TextEdit(group.Key.Offset, group.Key.Length, string.Concat(group.Select(edit => edit.Text))))
        );
        return new Piece(one.Piece.Lead, own, one.Piece.Key, new MappingNode(default, [.. entries], IsFlow: true));
    }

    private static string FactOf(ListRule? rule, MappingNode item) =>
        rule is null ? string.Empty : Piece.MeaningOf(item with { Entries = [.. item.Entries.Where(entry => rule.IsFact(entry.Key))] });

    private static string? Said(MappingNode item, string key) => item.ValueOf(key) is { } value ? Piece.MeaningOf(value) : null;

    // Where the keys of an item in braces stand in its lines, each with its value.
    private sealed class Spans(string text, Dictionary<string, (int Start, int End)> places)
    {
        internal string TextOf(string key) => text[places[key].Start..places[key].End];

        internal TextEdit Instead(string key, string put) => new(places[key].Start, places[key].End - places[key].Start, put);

        internal TextEdit Behind(string key, string put) => new(places[key].End, 0, put);

        internal static Spans? Of(Piece piece, MappingNode said)
        {
            // A remark between the keys belongs to one of them, and nobody says to which.
            var text = piece.Own;
            var close = text.AsSpan().TrimEnd().Length - 1;
            if (close < 0 || text[close] != '}' || text.Contains(" #", StringComparison.Ordinal) || said.Entries.IsEmpty)
            {
                return null;
            }

            // The places of its nodes are those of the file: the lines are counted from the first.
            var lines = new SourceText(string.Empty, text);
            var first = said.Spot.Line;
            var begins = text.IndexOf('{', StringComparison.Ordinal);
            if (begins < 0)
            {
                return null;
            }

            var starts = said.Entries.Select(entry => OffsetOf(lines, entry.KeySpot, first)).ToArray();
            var places = new Dictionary<string, (int Start, int End)>(StringComparer.Ordinal);
            for (var i = 0; i < starts.Length; i++)
            {
                var until = i + 1 < starts.Length ? starts[i + 1] : close;
                if (starts[i] < begins || starts[i] >= until || until > text.Length)
                {
                    return null;
                }

                var end = starts[i] + text.AsSpan(starts[i], until - starts[i]).TrimEnd().Length;
                if (i + 1 < starts.Length)
                {
                    if (text[end - 1] != ',')
                    {
                        return null;
                    }

                    end = starts[i] + text.AsSpan(starts[i], end - 1 - starts[i]).TrimEnd().Length;
                }

                places[said.Entries[i].Key] = (starts[i], end);
            }

            return new(text, places);
        }

        private static int OffsetOf(SourceText lines, Spot spot, int first) =>
            spot.Line - first + 1 is >= 1 and var line && line <= lines.LineCount ? lines.OffsetOf(spot with { Line = line }) : -1;
    }
}
