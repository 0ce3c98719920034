using Ohmstead.Records.Editing.Edits;
using Ohmstead.Records.Editing.Layout;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Text;

namespace Ohmstead.Records.Editing;

/// <summary>The one change that sets a word of an entry.</summary>
internal static class EntrySplice
{
    /// <summary>The change, or null where it would touch more than the word.</summary>
    internal static TextEdit? Plan(SourceText source, LaidText parts, MappingNode entry, EntryWord word)
    {
        var there = IndexOf(entry, known => known.Key == word.Key);
        return (there, word.Word) switch
        {
            (-1, null) => new TextEdit(0, 0, string.Empty),
            (-1, { } text) => Added(source, parts, entry, word, $"{word.Key}: {FlowText.Scalar(text)}"),
            (_, { } text) => entry.Entries[there].Value is ScalarNode { IsNothing: false } value && source.OffsetOf(value.Spot) is var at
                ? new TextEdit(at, parts.EndOf(source.OffsetOf(entry.Entries[there].KeySpot)) - at, FlowText.Scalar(text))
                : null,
            _ => TakenOut(source, parts, entry, there),
        };
    }

    private static TextEdit Added(SourceText source, LaidText parts, MappingNode entry, EntryWord word, string text)
    {
        var place = word.Shape.PlaceOf(word.Key);
        var before = entry.Entries.LastOrDefault(
            known => word.Shape.PlaceOf(known.Key) is var rank && rank >= 0 && rank < place,
            entry.Entries[0]
        );
        var end = parts.EndOf(source.OffsetOf(before.KeySpot));
        if (entry.IsFlow)
        {
            return new TextEdit(end, 0, ", " + text);
        }

        // A remark stays on the line of its value.
        var line = source.LineAt(end);
        return new TextEdit(source.LineEnd(line), 0, parts.LineEnd + new string(' ', before.KeySpot.Column - 1) + text);
    }

    private static TextEdit? TakenOut(SourceText source, LaidText parts, MappingNode entry, int index)
    {
        var start = source.OffsetOf(entry.Entries[index].KeySpot);
        var end = parts.EndOf(start);
        if (index > 0 && entry.IsFlow)
        {
            var from = parts.EndOf(source.OffsetOf(entry.Entries[index - 1].KeySpot));
            return new TextEdit(from, end - from, string.Empty);
        }

        if (index == 0)
        {
            return null;
        }

        var line = source.LineStart(source.LineAt(start));
        return new TextEdit(
            line,
            ScalarEnd.Behind(source.Text, source.LineEnd(source.LineAt(end)), source.Text.Length) - line,
            string.Empty
        );
    }

    private static int IndexOf(MappingNode entry, Func<MappingEntry, bool> isMeant)
    {
        for (var i = 0; i < entry.Entries.Length; i++)
        {
            if (isMeant(entry.Entries[i]))
            {
                return i;
            }
        }

        return -1;
    }
}
