using System.Text.Json;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Search;

/// <summary>What the search of the pages looks through, in pieces of which a query loads a few.</summary>
/// <remarks>
/// <c>search/index.js</c> says what each piece begins with. <c>search/w*.js</c> hold the tokens in order, each with the pages and sentences
/// that have it; <c>search/p*.js</c> the pages, what presses most first; <c>search/s*.js</c> the words by length, for slips of typing.
/// Pages are meant by their place. Nothing in the texts can end a script or hide in one.
/// </remarks>
internal sealed class SearchIndex(IReportFiles files, ISearchStore store, IReadOnlyList<IndexedPage> pages)
{
    /// <summary>The file that names the others, from the root of the report.</summary>
    public const string FileName = "search/index.js";

    private const int BytesOfTokens = 96 << 10;
    private const int BytesOfPages = 128 << 10;
    private const int ShortestSlipped = 4;

    private readonly List<int> firstPages = [];
    private readonly List<string> firstTokens = [];
    private readonly List<int> firstLengths = [];

    /// <summary>Writes all files.</summary>
    /// <param name="tokens">The tokens with their numbers, in order.</param>
    /// <param name="numbers">How many numbers there are.</param>
    public void Write(KeyValuePair<string, int>[] tokens, int numbers)
    {
        var (places, held) = Pages(numbers);
        if (places.Length < numbers)
        {
            return;
        }

        Tokens(tokens, places, held);
        Spellings([.. tokens.Select(token => token.Key).Where(IsWord)]);
        using var buffer = new PageBuffer();
        IndexPiece.Start(buffer, "index");
        using (var json = new Utf8JsonWriter(buffer, KeptPage.Layout))
        {
            json.WriteStartObject();
            Groups(json);
            Designs(json);
            List(json, "words", firstTokens, static (json, token) => json.WriteStringValue(token));
            List(json, "pages", firstPages, static (json, page) => json.WriteNumberValue(page));
            List(json, "spellings", firstLengths, static (json, length) => json.WriteNumberValue(length));
            json.WriteString("starts", PackedText.Starts);
            json.WriteString("ends", PackedText.Ends);
            SearchTables.Write(json);
            json.WriteEndObject();
        }

        buffer.Append(";\n"u8);
        files.Put(FileName, buffer.Written);
    }

    // The pages go out in order. Which of them hold a token is counted first, so that one room can take it all.
    private (int[] Ends, byte[] Held) Pages(int numbers)
    {
        using var kept = new PageBuffer();
        var last = new int[numbers];
        var ends = new int[numbers];
        using (var piece = new IndexPiece(files, "p", ",", BytesOfPages) { IsPacked = true })
        {
            for (var page = 0; page < pages.Count; page++)
            {
                store.Take(pages[page].Kept, kept);
                if (piece.Begin())
                {
                    firstPages.Add(page);
                }

                // A run that was taken back keeps nothing more.
                if (kept.Written.IsEmpty)
                {
                    return ([], []);
                }

                piece.Buffer.Append(KeptPage.Text(kept.Written));
                var rest = KeptPage.Tokens(kept.Written);
                while (KeptPage.Next(ref rest, out var token, out var letters))
                {
                    ends[token] += Base36(page + 1 - last[token], []) + letters.Length;
                    last[token] = page + 1;
                }
            }

            piece.Finish();
        }

        var total = 0;
        for (var token = 0; token < numbers; token++)
        {
            (ends[token], total) = (total, checked(total + ends[token]));
        }

        var held = new byte[total];
        Array.Clear(last);
        for (var page = 0; page < pages.Count; page++)
        {
            store.Take(pages[page].Kept, kept);
            var rest = KeptPage.Tokens(kept.Written);
            while (KeptPage.Next(ref rest, out var token, out var letters))
            {
                ends[token] += Base36(page + 1 - last[token], held.AsSpan(ends[token]));
                letters.CopyTo(held.AsSpan(ends[token]));
                ends[token] += letters.Length;
                last[token] = page + 1;
            }
        }

        return (ends, held);
    }

    private void Tokens(KeyValuePair<string, int>[] tokens, int[] ends, byte[] held)
    {
        using var piece = new IndexPiece(files, "w", " ", BytesOfTokens);
        foreach (var (token, number) in tokens)
        {
            if (piece.Begin())
            {
                firstTokens.Add(token);
            }

            Escaped(piece.Buffer, token);
            piece.Buffer.Append(" "u8);
            var start = number == 0 ? 0 : ends[number - 1];
            piece.Buffer.Append(held.AsSpan(start, ends[number] - start));
        }

        piece.Finish();
    }

    private void Spellings(string[] words)
    {
        using var piece = new IndexPiece(files, "s", " ", BytesOfTokens);
        foreach (var word in words.OrderBy(word => word.Length).ThenBy(word => word, StringComparer.Ordinal))
        {
            if (piece.Begin())
            {
                firstLengths.Add(word.Length);
            }

            Escaped(piece.Buffer, word);
        }

        piece.Finish();
    }

    private static void Escaped(PageBuffer buffer, string token) => buffer.AppendUtf16(KeptPage.Layout.Encoder!.Encode(token));

    private static bool IsWord(string token) => token.Length >= ShortestSlipped && token.All(char.IsLetter);

    private void Groups(Utf8JsonWriter json)
    {
        json.WriteStartArray("groups");
        for (var page = 0; page < pages.Count; page++)
        {
            if (page == 0 || pages[page].Group != pages[page - 1].Group)
            {
                json.WriteStartArray();
                json.WriteStringValue(pages[page].Group.ToString());
                json.WriteNumberValue(page);
                json.WriteEndArray();
            }
        }

        json.WriteEndArray();
        json.WriteNumber("count", pages.Count);
    }

    // A part that stands in a design is on each of its boards.
    private void Designs(Utf8JsonWriter json)
    {
        var boards = pages
            .Index()
            .Where(page => page.Item.Design is not null)
            .ToLookup(page => page.Item.Design!, page => page.Index, StringComparer.Ordinal);
        json.WriteStartArray("designs");
        foreach (
            var (place, page) in pages.Index().Where(page => page.Item.Group == SearchGroup.Designs && boards.Contains(page.Item.Name))
        )
        {
            json.WriteStartArray();
            json.WriteNumberValue(place);
            var last = 0;
            foreach (var board in boards[page.Name])
            {
                json.WriteNumberValue(board - last);
                last = board;
            }

            json.WriteEndArray();
        }

        json.WriteEndArray();
    }

    private static void List<T>(Utf8JsonWriter json, string name, IEnumerable<T> items, Action<Utf8JsonWriter, T> write)
    {
        json.WriteStartArray(name);
        foreach (var item in items)
        {
            write(json, item);
        }

        json.WriteEndArray();
    }

    /// <summary>Writes a number in digits and small letters, and says how many they are; into no room, it only counts.</summary>
    private static int Base36(int number, Span<byte> room)
    {
        var length = 1;
        for (var rest = number / 36; rest > 0; rest /= 36)
        {
            length++;
        }

        if (!room.IsEmpty)
        {
            for (var place = length - 1; place >= 0; place--, number /= 36)
            {
                room[place] = "0123456789abcdefghijklmnopqrstuvwxyz"u8[number % 36];
            }
        }

        return length;
    }
}
