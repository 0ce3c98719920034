using System.Collections.Immutable;
using System.Text;
using Ohmstead.Records.Nodes;

namespace Ohmstead.Records.Merging;

/// <summary>A merged record, with what is left to a person still in it twice.</summary>
/// <param name="Record">Its pieces; its story is in the stretches.</param>
/// <param name="Story">The story.</param>
/// <param name="Names">Words for the two sides.</param>
internal sealed record MergedRecord(Pieces Record, ImmutableArray<Stretch> Story, (string Above, string Below) Names)
{
    /// <summary>How many places are left to a person.</summary>
    internal int Conflicts => Count(Record.Entries) + Story.Count(stretch => stretch.Other is not null);

    /// <summary>The text.</summary>
    /// <param name="pick">What is written where two contradict each other.</param>
    /// <param name="size">How many signs a mark has.</param>
    /// <param name="lineEnd">How the line of a mark ends.</param>
    internal string Text(Pick pick, int size, string lineEnd)
    {
        var text = new StringBuilder(Record.Head);
        var marks = new Marks(text, pick, size, lineEnd);
        foreach (var piece in Record.Entries)
        {
            marks.Write(piece);
        }

        text.Append(Record.Tail).Append(Record.Fence);
        foreach (var stretch in Story)
        {
            marks.Write(stretch, Names);
        }

        return text.ToString();
    }

    /// <summary>What the text must say when it is read.</summary>
    internal MappingNode Said(Pick pick) => new(default, [.. Keys(Record.Entries, pick)], IsFlow: false);

    private static IEnumerable<MappingEntry> Keys(ImmutableArray<Piece> keys, Pick pick) =>
        Picked(keys, pick).Select(key => new MappingEntry(default, key.Key!, Said(key, pick)));

    private static Node Said(Piece piece, Pick pick) =>
        piece.HoldsKeys ? new MappingNode(default, [.. Keys(piece.Inside, pick)], IsFlow: false)
        : !piece.HoldsItems ? piece.Value
        : Picked(piece.Inside, pick).ToArray() is { Length: > 0 } items
            ? new SequenceNode(default, [.. items.Select(item => Said(item, pick))], IsFlow: false)
        : new ScalarNode(default, string.Empty, ScalarWriting.Plain);

    private static IEnumerable<Piece> Picked(ImmutableArray<Piece> pieces, Pick pick) =>
        pieces.SelectMany(piece =>
            piece.Opposed is not { } opposed ? [piece]
            : pick == Pick.Above ? opposed.Above
            : opposed.Below
        );

    private static int Count(ImmutableArray<Piece> pieces) => pieces.Sum(piece => piece.Opposed is null ? Count(piece.Inside) : 1);
}
