using Ohmstead.Records.Decoding;
using Ohmstead.Records.Editing.Edits;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Text;

namespace Ohmstead.Records.Editing.Layout;

/// <summary>A text taken apart: its tokens, what stands between them, and the changes that bring it into layout.</summary>
internal sealed class LaidText
{
    private readonly SourceText source;
    private readonly FileForm form;
    private readonly FrontMatter front;
    private readonly IReadOnlyList<Token> tokens;
    private readonly Gap[] gaps;

    private LaidText(SourceText source, FileForm form, FrontMatter front, IReadOnlyList<Token> tokens, Gap[] gaps)
    {
        this.source = source;
        this.form = form;
        this.front = front;
        this.tokens = tokens;
        this.gaps = gaps;
        LineEnd = EndsInTwo(source.Text.AsSpan(front.BodyStart)) || EndsInTwo(source.Text) ? "\r\n" : "\n";
    }

    /// <summary>All remarks in order, with those that stand behind the sign of a block of text.</summary>
    internal IEnumerable<string> Remarks =>
        tokens.SelectMany((token, i) => gaps[i].Remarks.Concat(token.Kind == TokenKind.Block ? [FirstLine(token)] : []));

    /// <summary>How its lines end.</summary>
    internal string LineEnd { get; }

    /// <summary>Takes a text apart that was read before.</summary>
    /// <returns>Its parts, or null with the offset of something that has no place in a record.</returns>
    internal static LaidText? Read(string path, string text, FileForm form, MappingNode root, out Spot lost)
    {
        var whole = new SourceText(path, text);
        var yaml = form == FileForm.Yaml ? new FrontMatter(0, text.Length, text.Length) : FrontMatter.Find(whole).FrontMatter!.Value;
        var words = TokenWalk.Read(whole, yaml.Start, yaml.End, root, out var lostAt);
        var between = new Gap[words.Count];
        for (var i = 0; i < between.Length && lostAt < 0; i++)
        {
            between[i] = Gap.Between(
                text,
                i == 0 ? yaml.Start : words[i - 1].End,
                words[i].Start,
                i == 0 ? null : words[i - 1],
                words[i],
                out lostAt
            );
        }

        lost = whole.SpotAt(Math.Max(lostAt, 0));
        return lostAt < 0 ? new LaidText(whole, form, yaml, words, between) : null;
    }

    /// <summary>The changes that bring the text into layout, in order; none where it is laid out already.</summary>
    internal IReadOnlyList<TextEdit> Edits()
    {
        var edits = new List<TextEdit>();
        Fences(edits);

        // Where nothing is written there is nothing to lay out.
        if (tokens.Count == 1)
        {
            return edits;
        }

        var wanted = Placement.Compute(source.Text, tokens, gaps, LineEnd);
        for (var i = 0; i < tokens.Count; i++)
        {
            Change(edits, i == 0 ? front.Start : tokens[i - 1].End, tokens[i].Start, wanted[i]);
            foreach (var inside in tokens[i].Inside ?? [])
            {
                Change(edits, inside.Offset, inside.Offset + inside.Length, inside.Text.Replace("\n", LineEnd, StringComparison.Ordinal));
            }
        }

        return edits;
    }

    /// <summary>The offset behind the value of the entry whose key stands at an offset; behind the key where there is none.</summary>
    internal int EndOf(int keyOffset)
    {
        var key = IndexOfKey(keyOffset);
        var last = key;
        while (!EndsEntry(tokens[key], tokens[last + 1]))
        {
            last++;
        }

        return last > key ? tokens[last].End : tokens[key].End + gaps[key + 1].ColonWidth;
    }

    private static bool EndsEntry(Token key, Token token) =>
        key.Depth > 0
            ? token.Depth == key.Depth && token.Kind is (TokenKind.Key or TokenKind.Close)
            : token.Kind == TokenKind.End
                || !token.Level.IsWithin(key.Level)
                || (token.Kind == TokenKind.Key && token.Depth == 0 && ReferenceEquals(token.Level, key.Level));

    private int IndexOfKey(int offset)
    {
        var (low, high) = (0, tokens.Count - 1);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = tokens[middle].Start < offset ? (middle + 1, high) : (low, middle);
        }

        return low;
    }

    private void Fences(List<TextEdit> edits)
    {
        if (form == FileForm.Yaml)
        {
            return;
        }

        Change(edits, 3, front.Start, LineEnd);
        Change(edits, front.End + 3, front.BodyStart, LineEnd);
    }

    private void Change(List<TextEdit> edits, int from, int to, string wanted)
    {
        if (!source.Text.AsSpan(from, to - from).SequenceEqual(wanted))
        {
            edits.Add(new TextEdit(from, to - from, wanted));
        }
    }

    private string FirstLine(Token token) =>
        source.Text[token.Start..ScalarEnd.LineEnd(source.Text, token.Start, token.End)].TrimEnd(' ', '\t');

    // The text below is never touched: where all its lines end with CRLF, so do those above it.
    private static bool EndsInTwo(ReadOnlySpan<char> text)
    {
        var twos = text.Count("\r\n");
        return twos > 0 && twos == text.Count('\n') && twos == text.Count('\r');
    }
}
