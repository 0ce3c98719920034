using System.Collections.Immutable;
using Ohmstead.Records.Decoding;
using Ohmstead.Records.Editing;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Text;

namespace Ohmstead.Records.Merging;

/// <summary>A record taken apart into its pieces. Put together again they are the record, byte for byte.</summary>
/// <param name="Head">What stands before the first key that is no remark: the line that opens the front matter.</param>
/// <param name="Entries">The keys at the top.</param>
/// <param name="Tail">The remarks below the last.</param>
/// <param name="Fence">The line that ends the front matter; empty for plain YAML.</param>
/// <param name="Story">What stands below it.</param>
internal sealed record Pieces(string Head, ImmutableArray<Piece> Entries, string Tail, string Fence, string Story)
{
    /// <summary>A record in which nothing stands.</summary>
    internal static Pieces None { get; } = new(string.Empty, [], string.Empty, string.Empty, string.Empty);

    /// <summary>The piece behind a key at the top, or null.</summary>
    internal Piece? At(string key) => Entries.FirstOrDefault(piece => piece.Key == key);

    /// <summary>Takes a text apart that was read.</summary>
    /// <returns>Its pieces, or null where it is laid out in a way that keys and items do not stand on lines of their own.</returns>
    internal static Pieces? Of(SourceText source, FileForm form, MappingNode root)
    {
        var front =
            form == FileForm.Markdown
                ? FrontMatter.Find(source).FrontMatter!.Value
                : new FrontMatter(0, source.Text.Length, source.Text.Length);
        var text = source.Text;
        var (fence, story) = (text[front.End..front.BodyStart], text[front.BodyStart..]);
        if (root.Entries.Length == 0)
        {
            return new(text[..front.End], [], string.Empty, fence, story);
        }

        if (root.IsFlow)
        {
            return null;
        }

        var afterLast = form == FileForm.Markdown ? source.LineAt(front.End) : source.LineCount + 1;
        var cut = new Cut(source, new BlockLines(source, afterLast));
        // A line that ends the remarks above the first key, such as three dashes, is no remark.
        var (first, head) = (source.LineAt(front.Start), front.Start);
        for (var line = first; line < root.Entries[0].KeySpot.Line; line++)
        {
            head = cut.IsRemark(line) ? head : cut.Behind(line);
        }

        return
            cut.Keys(root, source.LineAt(head), afterLast - 1) is var (entries, tail)
            && text[..head] + string.Concat(entries.Select(entry => entry.Whole)) + tail + fence + story == text
            ? new(text[..head], entries, tail, fence, story)
            : null;
    }

    private sealed class Cut(SourceText source, BlockLines lines)
    {
        internal bool IsRemark(int line) => source.Line(line).TrimStart(' ') is [] or ['#', ..];

        internal int Behind(int line) => lines.Behind(line);

        /// <summary>The entries of a mapping whose lines are given, with the remarks above the first and below the last.</summary>
        internal (ImmutableArray<Piece> Entries, string Tail)? Keys(MappingNode mapping, int from, int last)
        {
            var entries = ImmutableArray.CreateBuilder<Piece>(mapping.Entries.Length);
            for (var i = 0; i < mapping.Entries.Length; i++)
            {
                var entry = mapping.Entries[i];
                var (line, stands) = (entry.KeySpot.Line, entry.KeySpot.Column - 1);
                var sharesDash = i == 0 && line == from && !source.Line(line)[..stands].IsWhiteSpace();
                if (line < from || (!sharesDash && source.Line(line)[..stands].ContainsAnyExcept(' ')))
                {
                    return null;
                }

                var end = Math.Min(lines.LastOf(line, stands, listMayHang: true), last);
                var begins = sharesDash ? source.OffsetOf(entry.KeySpot) : source.LineStart(line);
                if (
                    (i + 1 < mapping.Entries.Length && mapping.Entries[i + 1].KeySpot.Line <= end)
                    || Remarks(from, line) is not { } lead
                    || Value(entry.Key, entry.Value, lead, begins, (line, end)) is not { } piece
                )
                {
                    return null;
                }

                entries.Add(piece);
                from = end + 1;
            }

            return Remarks(from, last + 1) is { } tail ? (entries.MoveToImmutable(), tail) : null;
        }

        private (ImmutableArray<Piece> Items, string Tail)? Items(SequenceNode list, int from, int last)
        {
            var items = ImmutableArray.CreateBuilder<Piece>(list.Items.Length);
            foreach (var item in list.Items)
            {
                var (line, dash) = (item.Spot.Line, lines.DashBefore(item.Spot));
                while (dash < 0 && line > from)
                {
                    line--;
                    dash = source.Line(line).TrimEnd(' ') is [.., '-'] only ? only.Length - 1 : -1;
                }

                if (line < from || dash < 0 || source.Line(line)[..dash].ContainsAnyExcept(' ') || Remarks(from, line) is not { } lead)
                {
                    return null;
                }

                var end = Math.Min(lines.LastOf(line, dash, listMayHang: false), last);
                var start = source.LineStart(line);
                if (item is MappingNode { IsFlow: false, Entries: [var first, ..] } mapping)
                {
                    var isBeside = first.KeySpot.Line == line;
                    var own = isBeside ? source.Text[start..source.OffsetOf(first.KeySpot)] : source.Text[start..Behind(line)];
                    if (Keys(mapping, isBeside ? line : line + 1, end) is not var (entries, tail))
                    {
                        return null;
                    }

                    items.Add(new Piece(lead, own, null, item) { Inside = entries, Tail = tail });
                }
                else
                {
                    items.Add(new Piece(lead, source.Text[start..Behind(end)], null, item));
                }

                from = end + 1;
            }

            return Remarks(from, last + 1) is { } rest ? (items.MoveToImmutable(), rest) : null;
        }

        private Piece? Value(string key, Node value, string lead, int begins, (int First, int Last) at)
        {
            var head = source.Text[begins..Behind(at.First)];
            switch (value)
            {
                case MappingNode { IsFlow: false, Entries.Length: > 0 } mapping:
                    return Keys(mapping, at.First + 1, at.Last) is var (entries, below)
                        ? new Piece(lead, head, key, value) { Inside = entries, Tail = below }
                        : null;
                case SequenceNode { IsFlow: false, Items.Length: > 0 } list:
                    return Items(list, at.First + 1, at.Last) is var (items, tail)
                        ? new Piece(lead, head, key, value) { Inside = items, Tail = tail }
                        : null;
                default:
                    return new Piece(lead, source.Text[begins..Behind(at.Last)], key, value);
            }
        }

        // The lines before a line, where they are remarks or empty; else null.
        private string? Remarks(int from, int line)
        {
            for (var at = from; at < line; at++)
            {
                if (at <= source.LineCount && !IsRemark(at))
                {
                    return null;
                }
            }

            return from >= line || from > source.LineCount
                ? string.Empty
                : source.Text[source.LineStart(from)..(line > source.LineCount ? source.Text.Length : source.LineStart(line))];
        }
    }
}
