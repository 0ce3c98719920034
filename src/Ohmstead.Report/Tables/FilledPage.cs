using Ohmstead.Report.Html;

namespace Ohmstead.Report.Tables;

/// <summary>A page that is written again, with what would fit each of its open places.</summary>
/// <param name="buffer">Where to.</param>
/// <param name="places">Its open places, in order.</param>
/// <param name="wanted">What fits out of the drawer.</param>
public sealed class FilledPage(PageBuffer buffer, IReadOnlyList<OpenPlace> places, WantedFolds wanted)
{
    private long at;
    private int next;

    /// <summary>Writes the next piece of the page.</summary>
    /// <param name="piece">The piece, as it was written at first.</param>
    public void Append(ReadOnlySpan<byte> piece)
    {
        var from = 0;
        for (; next < places.Count && places[next].At <= at + piece.Length; next++)
        {
            var to = (int)(places[next].At - at);
            buffer.Append(piece[from..to]);
            wanted.Write(buffer, places[next].Place);
            from = to;
        }

        buffer.Append(piece[from..]);
        at += piece.Length;
    }
}
