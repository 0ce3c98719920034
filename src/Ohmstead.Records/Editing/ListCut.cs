using System.Collections.Immutable;
using System.Globalization;
using Ohmstead.Records.Editing.Edits;
using Ohmstead.Records.Nodes;

namespace Ohmstead.Records.Editing;

/// <summary>A list at the top of a record, cut into its key and its items: each piece is the lines as they stand, remarks
/// included.</summary>
internal sealed class ListCut
{
    private readonly RecordEditor editor;
    private readonly IReadOnlyList<(int First, int Last)> spans;

    private ListCut(RecordEditor editor, MappingEntry entry, ImmutableArray<MappingNode> items, IReadOnlyList<(int First, int Last)> spans)
    {
        this.editor = editor;
        this.spans = spans;
        Entry = entry;
        Items = items;
    }

    /// <summary>The list with its key.</summary>
    internal MappingEntry Entry { get; }

    /// <summary>Its items.</summary>
    internal ImmutableArray<MappingNode> Items { get; }

    /// <summary>The line of the key.</summary>
    internal string KeyText => TextOf(Entry.KeySpot.Line, Entry.KeySpot.Line);

    /// <summary>Cuts a list. A record without it, or with an empty one, has nothing to cut: both are null.</summary>
    internal static (ListCut? Cut, EditRefusal? Refusal) Plan(RecordEditor editor, string key)
    {
        if (editor.Root.Entries.FirstOrDefault(entry => entry.Key == key) is not { Value: SequenceNode { Items.Length: > 0 } list } found)
        {
            return (null, null);
        }

        var line = found.KeySpot.Line.ToString(CultureInfo.InvariantCulture);
        if (list.IsFlow || list.Items.Any(item => item is not MappingNode))
        {
            return (
                null,
                new EditRefusal($"the list '{key}' on line {line} stands in brackets", "write it as lines that begin with a dash")
            );
        }

        var lines = new List<(int First, int Last)>();
        var first = found.KeySpot.Line + 1;
        foreach (var item in list.Items)
        {
            var dash = editor.Lines.DashBefore(item.Spot);
            if (item.Spot.Line < first || dash < 0 || editor.Source.Line(item.Spot.Line)[..dash].ContainsAnyExcept(' '))
            {
                return (
                    null,
                    new EditRefusal(
                        $"an item of '{key}' on line {item.Spot.Line.ToString(CultureInfo.InvariantCulture)} does not begin a line of "
                            + "its own",
                        "write each item as lines that begin with a dash"
                    )
                );
            }

            var last = editor.Lines.LastOf(item.Spot.Line, dash, listMayHang: false);
            lines.Add((first, last));
            first = last + 1;
        }

        // Remarks below the last item that still stand in the list go with it.
        lines[^1] = (
            lines[^1].First,
            Math.Max(lines[^1].Last, editor.Lines.LastOf(found.KeySpot.Line, found.KeySpot.Column - 1, listMayHang: true))
        );
        return (new ListCut(editor, found, [.. list.Items.Cast<MappingNode>()], lines), null);
    }

    /// <summary>The lines of an item, with the remarks above it.</summary>
    internal string ItemText(int index) => TextOf(spans[index].First, spans[index].Last);

    /// <summary>The lines of an item without one of its values; a value on a line of its own takes its line along.</summary>
    internal string ItemTextWithout(int index, string key)
    {
        var entries = Items[index].Entries;
        var at = Enumerable.Range(0, entries.Length).First(i => entries[i].Key == key);
        var source = editor.Source;
        var (from, to) = Items[index].IsFlow
            ? at > 0
                ? (source.EndOf(entries[at - 1].Value.Spot), source.EndOf(entries[at].Value.Spot))
                : (source.OffsetOf(entries[at].KeySpot), source.OffsetOf(entries[at + 1].KeySpot))
            : (source.LineStart(entries[at].KeySpot.Line), editor.Lines.Behind(entries[at].KeySpot.Line));
        var start = source.LineStart(spans[index].First);
        return ItemText(index).Remove(from - start, to - from);
    }

    /// <summary>The change that takes items out, and the key with the last of them.</summary>
    internal IEnumerable<TextEdit> Without(IReadOnlyList<int> gone)
    {
        if (gone.Count == Items.Length)
        {
            var start = editor.Source.LineStart(Entry.KeySpot.Line);
            return [new TextEdit(start, editor.Lines.Behind(spans[^1].Last) - start, string.Empty)];
        }

        return gone.Select(index => new TextEdit(editor.Source.LineStart(spans[index].First), ItemText(index).Length, string.Empty));
    }

    private string TextOf(int first, int last)
    {
        var start = editor.Source.LineStart(first);
        return editor.Source.Text[start..editor.Lines.Behind(last)];
    }
}
