using System.Buffers.Binary;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Unicode;
using Ohmstead.Assessment.Searching;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Search;

/// <summary>A page of the index as it waits: its text as the script reads it, which sentences hold which token, and the length of the
/// text.</summary>
internal static class KeptPage
{
    // A token of more sentences than this is said to be in any: which ones they are is seen when the page is read.
    private const int MostSentences = 4;

    private const int LettersADigit = 25;
    private const int LengthBytes = 4;

    private static readonly string OfPart = IdPrefix.Part.Name;

    internal static readonly JsonWriterOptions Layout = new() { Encoder = JavaScriptEncoder.Create(UnicodeRanges.All) };

    /// <summary>Writes a page.</summary>
    /// <param name="buffer">Where to; it is emptied first.</param>
    /// <param name="page">The page.</param>
    /// <param name="tokens">Numbers the tokens.</param>
    public static void Write(PageBuffer buffer, SearchPage page, SearchTokens tokens)
    {
        buffer.Clear();
        WriteText(buffer, page);
        Span<byte> length = stackalloc byte[LengthBytes];
        BinaryPrimitives.WriteInt32LittleEndian(length, buffer.Written.Length);
        foreach (var (token, sentences) in Held(page))
        {
            WriteNumber(buffer, tokens.Number(token));
            var letters = Letters(sentences);
            WriteNumber(buffer, letters.Length);
            foreach (var letter in letters)
            {
                buffer.GetSpan(1)[0] = (byte)letter;
                buffer.Advance(1);
            }
        }

        buffer.Append(length);
    }

    /// <summary>The text of a page that waits.</summary>
    public static ReadOnlySpan<byte> Text(ReadOnlySpan<byte> kept) => kept[..Length(kept)];

    /// <summary>Takes the next token of a page that waits.</summary>
    /// <param name="rest">What is left of it; the start is <see cref="Tokens"/>.</param>
    /// <param name="token">The number of the token.</param>
    /// <param name="letters">Which sentences hold it.</param>
    public static bool Next(ref ReadOnlySpan<byte> rest, out int token, out ReadOnlySpan<byte> letters)
    {
        token = 0;
        letters = default;
        if (rest.IsEmpty)
        {
            return false;
        }

        token = Number(ref rest);
        var length = Number(ref rest);
        letters = rest[..length];
        rest = rest[length..];
        return true;
    }

    /// <summary>Where the tokens of a page that waits begin.</summary>
    public static ReadOnlySpan<byte> Tokens(ReadOnlySpan<byte> kept) => kept[Length(kept)..^LengthBytes];

    private static int Length(ReadOnlySpan<byte> kept) => BinaryPrimitives.ReadInt32LittleEndian(kept[^LengthBytes..]);

    // Name, title, what is said beside it, address, the heads with the places on the page, and of each sentence the number of those and its
    // words.
    private static void WriteText(PageBuffer buffer, SearchPage page)
    {
        using var json = new Utf8JsonWriter(buffer, Layout);
        json.WriteStartArray();
        json.WriteStringValue(SentenceList.Short(page.Name));
        json.WriteStringValue(SentenceList.Short(page.Title));
        json.WriteStringValue(SentenceList.Short(page.About));
        json.WriteStringValue(page.Address.Encoded);
        var places = new Dictionary<(string Head, string Anchor), int>();
        foreach (var sentence in page.Sentences)
        {
            places.TryAdd((sentence.Head, Anchor(sentence)), places.Count);
        }

        json.WriteStartArray();
        foreach (var (head, anchor) in places.Keys)
        {
            json.WriteStringValue(VisibleText.Escape(head));
            json.WriteStringValue(anchor);
        }

        json.WriteEndArray();
        json.WriteStartArray();
        foreach (var sentence in page.Sentences)
        {
            json.WriteNumberValue(places[(sentence.Head, Anchor(sentence))]);
            json.WriteStringValue(sentence.Text);
        }

        json.WriteEndArray();
        json.WriteEndArray();
    }

    // Most sentences about a part begin with its name: their place on the page is told by a sign.
    private static string Anchor(SearchSentence sentence)
    {
        if (sentence.Anchor is not { } anchor)
        {
            return string.Empty;
        }

        var end = sentence.Text.AsSpan().IndexOfAny(' ', ',');
        var word = end < 0 ? sentence.Text : sentence.Text.AsSpan(0, end);
        return
            anchor.Value.Length == OfPart.Length + word.Length
            && anchor.Value.StartsWith(OfPart, StringComparison.Ordinal)
            && anchor.Value.AsSpan(OfPart.Length).SequenceEqual(word)
            ? "@"
            : anchor.Value;
    }

    private static Dictionary<string, List<int>> Held(SearchPage page)
    {
        var held = new Dictionary<string, List<int>>(StringComparer.Ordinal);
        var heads = new Dictionary<string, string[]>(StringComparer.Ordinal);
        for (var place = 0; place < page.Sentences.Count; place++)
        {
            var sentence = page.Sentences[place];
            if (!heads.TryGetValue(sentence.Head, out var head))
            {
                heads[sentence.Head] = head = [.. TokensOf(VisibleText.Escape(sentence.Head))];
            }

            foreach (var token in head.Concat(TokensOf(sentence.Text)))
            {
                if (!held.TryGetValue(token, out var places))
                {
                    held[token] = places = new(1);
                }

                if (places.Count == 0 || places[^1] != place)
                {
                    places.Add(place);
                }
            }
        }

        foreach (var name in page.AlsoCalled.Append(page.Name).Append(page.Title))
        {
            held.TryAdd(SearchText.Name(SentenceList.Short(name)), [0]);
        }

        return held;
    }

    private static IEnumerable<string> TokensOf(string text) =>
        SearchText.Read(text).SelectMany(item => item.Held).Where(token => !SearchText.IsStop(token));

    // Each sentence by how many lie between it and the one before: A for none, Z for twenty-five and more to come.
    private static string Letters(List<int> sentences)
    {
        if (sentences.Count > MostSentences)
        {
            return "*";
        }

        var letters = new System.Text.StringBuilder();
        var after = -1;
        foreach (var sentence in sentences)
        {
            var gap = sentence - after - 1;
            letters.Append('Z', gap / LettersADigit).Append((char)('A' + (gap % LettersADigit)));
            after = sentence;
        }

        return letters.ToString();
    }

    private static void WriteNumber(PageBuffer buffer, int number)
    {
        var span = buffer.GetSpan(5);
        var at = 0;
        var rest = (uint)number;
        for (; rest >= 0x80; rest >>= 7)
        {
            span[at++] = (byte)((rest & 0x7F) | 0x80);
        }

        span[at++] = (byte)rest;
        buffer.Advance(at);
    }

    private static int Number(ref ReadOnlySpan<byte> rest)
    {
        var (number, shift, at) = (0u, 0, 0);
        for (; rest[at] >= 0x80; shift += 7)
        {
            number |= (rest[at++] & 0x7Fu) << shift;
        }

        number |= (uint)rest[at++] << shift;
        rest = rest[at..];
        return (int)number;
    }
}
