using System.Text;
using Ohmstead.Records.Editing.Edits;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Shapes;
using Ohmstead.Records.Text;

namespace Ohmstead.Records.Editing;

/// <summary>An item of a list that stands in braces, made into lines so that it can hold a list.</summary>
internal static class FlowItem
{
    /// <summary>The change that puts each key of an item on a line of its own, as it was written, and a new list in its place among
    /// them.</summary>
    /// <param name="source">The text.</param>
    /// <param name="lines">Its lines as blocks.</param>
    /// <param name="item">The item.</param>
    /// <param name="list">The shape of the item, the key of the list and its items, each as one line of YAML.</param>
    /// <returns>The change; null where a value runs over several lines or holds others, a remark stands between the braces, or the item
    /// stands behind no dash of its own.</returns>
    internal static TextEdit? Unfold(
        SourceText source,
        BlockLines lines,
        MappingNode item,
        (Shape Shape, string Key, IReadOnlyList<string> Items) list
    )
    {
        var dash = lines.DashBefore(item.Spot);
        var start = source.OffsetOf(item.Spot);
        if (dash < 0 || !source.Line(item.Spot.Line)[..(item.Spot.Column - 1)].Trim(' ').SequenceEqual("-"))
        {
            return null;
        }

        var written = new List<(string Key, string Text)>(item.Entries.Length);
        var at = start + 1;
        foreach (var entry in item.Entries)
        {
            var (from, until) = (source.OffsetOf(entry.KeySpot), source.EndOf(entry.Value.Spot));
            if (entry.Value is not ScalarNode || from < at || until < from || !IsBetween(source.Text.AsSpan(at, from - at)))
            {
                return null;
            }

            var text = source.Text[from..until];
            if (text.AsSpan().ContainsAny('\r', '\n'))
            {
                return null;
            }

            written.Add((entry.Key, text));
            at = until;
        }

        var brace = source.Text.IndexOf('}', at);
        if (brace < 0 || !IsBetween(source.Text.AsSpan(at, brace - at)))
        {
            return null;
        }

        // What stands behind the brace, such as a remark, stays behind the first line.
        var line = source.LineAt(brace);
        var behind = source.Text[(brace + 1)..source.LineEnd(line)];
        var end = lines.LineEndAt(line);
        var blanks = new string(' ', item.Spot.Column - 1);
        var place = list.Shape.PlaceOf(list.Key);
        var before = written.FindLastIndex(entry => list.Shape.PlaceOf(entry.Key) is var known && known >= 0 && known < place);
        var result = new StringBuilder();
        for (var i = 0; i < written.Count; i++)
        {
            result.Append(i == 0 ? string.Empty : end + blanks).Append(written[i].Text).Append(i == 0 ? behind : string.Empty);
            if (i == Math.Max(before, 0))
            {
                result.Append(end).Append(blanks).Append(list.Key).Append(':');
                foreach (var one in list.Items)
                {
                    result.Append(end).Append(blanks).Append("  - ").Append(one);
                }
            }
        }

        return new TextEdit(start, source.LineEnd(line) - start, result.ToString());
    }

    // Between two entries of braces stand a comma, blanks and line ends, and no remark.
    private static bool IsBetween(ReadOnlySpan<char> text) => text.IndexOfAnyExcept(", \r\n") < 0;
}
