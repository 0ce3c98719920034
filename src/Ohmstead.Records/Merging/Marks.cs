using System.Collections.Immutable;
using System.Text;

namespace Ohmstead.Records.Merging;

/// <summary>Writes a merged text, with the marks of a version control system around what is left to a person.</summary>
/// <param name="text">Where it goes.</param>
/// <param name="pick">What is written where two contradict each other.</param>
/// <param name="size">How many signs a mark has.</param>
/// <param name="lineEnd">How the line of a mark ends.</param>
internal sealed class Marks(StringBuilder text, Pick pick, int size, string lineEnd)
{
    /// <summary>Writes a piece.</summary>
    internal void Write(Piece piece)
    {
        if (piece.Opposed is { } opposed)
        {
            Write(() => Write(opposed.Above), () => Write(opposed.Below), (opposed.AboveName, opposed.BelowName));
            return;
        }

        text.Append(piece.Lead).Append(piece.Own);
        Write(piece.Inside);
        text.Append(piece.Tail);
    }

    /// <summary>Writes a stretch of a story.</summary>
    /// <param name="stretch">The stretch.</param>
    /// <param name="names">Words for the two sides.</param>
    internal void Write(Stretch stretch, (string Above, string Below) names)
    {
        if (stretch.Other is { } other)
        {
            Write(() => text.Append(stretch.Text), () => text.Append(other), names);
            return;
        }

        text.Append(stretch.Text);
    }

    private void Write(ImmutableArray<Piece> pieces)
    {
        foreach (var piece in pieces)
        {
            Write(piece);
        }
    }

    private void Write(Action above, Action below, (string Above, string Below) names)
    {
        if (pick != Pick.Marks)
        {
            (pick == Pick.Above ? above : below)();
            return;
        }

        Mark('<', names.Above);
        above();
        Mark('=', string.Empty);
        below();
        Mark('>', names.Below);
    }

    private void Mark(char sign, string name)
    {
        // The last line of a text may have no end of its own.
        if (text.Length > 0 && text[^1] is not ('\n' or '\r'))
        {
            text.Append(lineEnd);
        }

        text.Append(sign, size).Append(name.Length > 0 ? " " + name : name).Append(lineEnd);
    }
}
