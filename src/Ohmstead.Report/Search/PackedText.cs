using System.Text;

namespace Ohmstead.Report.Search;

/// <summary>A text in which what comes again and again is written once: a list of pieces, and a sign of two characters wherever one
/// stood.</summary>
/// <remarks>
/// Pages of a collection say the same of most parts and readings. The signs begin with characters that the escapes of the text never leave
/// in it. The same text makes the same list; a general way of packing would change with the library that packs.
/// </remarks>
internal sealed class PackedText
{
    /// <summary>The characters that begin a sign; JSON as it is written here has neither.</summary>
    public const string Starts = "+&";

    /// <summary>The characters that end one.</summary>
    public const string Ends = "!#$%()*,-./0123456789:;=?@ABCDEFGHIJKLMNOPQRSTUVWXYZ[]^_abcdefghijklmnopqrstuvwxyz{|}~";

    private const int LongestPiece = 60;
    private const int ShortestPiece = 4;
    private const int MostWords = 4;

    private PackedText(IReadOnlyList<string> pieces, string text) => (Pieces, Text) = (pieces, text);

    /// <summary>What the signs stand for, in order.</summary>
    public IReadOnlyList<string> Pieces { get; }

    /// <summary>The text with signs.</summary>
    public string Text { get; }

    /// <summary>Packs a text that has none of <see cref="Starts"/>.</summary>
    public static PackedText Of(string text)
    {
        var ends = WordEnds(text);
        var pieces = Chosen(Counts(text, ends));
        var places = pieces.Index().ToDictionary(pair => pair.Item, pair => pair.Index, StringComparer.Ordinal);
        var signs = places.GetAlternateLookup<ReadOnlySpan<char>>();
        var packed = new StringBuilder(text.Length);
        var word = 0;
        while (word < ends.Count)
        {
            var start = word == 0 ? 0 : ends[word - 1];
            var taken = 0;
            for (var words = Math.Min(MostWords, ends.Count - word); words > 0 && taken == 0; words--)
            {
                if (signs.TryGetValue(text.AsSpan(start, ends[word + words - 1] - start), out var place))
                {
                    packed.Append(Starts[place / Ends.Length]).Append(Ends[place % Ends.Length]);
                    taken = words;
                }
            }

            if (taken == 0)
            {
                packed.Append(text, start, ends[word] - start);
                taken = 1;
            }

            word += taken;
        }

        return new(pieces, packed.ToString());
    }

    /// <summary>A text that stays as it is.</summary>
    public static PackedText AsIs(string text) => new([], text);

    private static List<int> WordEnds(string text)
    {
        var ends = new List<int>(text.Length / 5);
        for (var at = 0; at < text.Length; at++)
        {
            if (text[at] is ' ' or ',' or '"' || at == text.Length - 1)
            {
                ends.Add(at + 1);
            }
        }

        return ends;
    }

    private static Dictionary<string, int> Counts(string text, List<int> ends)
    {
        var counts = new Dictionary<string, int>(StringComparer.Ordinal);
        var seen = counts.GetAlternateLookup<ReadOnlySpan<char>>();
        for (var word = 0; word < ends.Count; word++)
        {
            var start = word == 0 ? 0 : ends[word - 1];
            for (var words = 0; words < MostWords && word + words < ends.Count; words++)
            {
                var length = ends[word + words] - start;
                if (length > LongestPiece)
                {
                    break;
                }

                if (length >= ShortestPiece)
                {
                    var piece = text.AsSpan(start, length);
                    seen[piece] = seen.TryGetValue(piece, out var count) ? count + 1 : 1;
                }
            }
        }

        return counts;
    }

    // Those that spare most; not one that stands nearly always within another.
    private static List<string> Chosen(Dictionary<string, int> counts)
    {
        var chosen = new List<(string Piece, int Count)>(Starts.Length * Ends.Length);
        foreach (
            var (piece, count) in counts
                .Where(pair => pair.Value > 2)
                .OrderByDescending(pair => (pair.Value - 1) * (pair.Key.Length - 2))
                .ThenBy(pair => pair.Key, StringComparer.Ordinal)
        )
        {
            if (chosen.Count == Starts.Length * Ends.Length)
            {
                break;
            }

            if (!chosen.Exists(other => other.Count * 4 > count * 3 && other.Piece.Contains(piece, StringComparison.Ordinal)))
            {
                chosen.Add((piece, count));
            }
        }

        return [.. chosen.Select(one => one.Piece)];
    }
}
