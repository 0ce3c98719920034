using System.Text;

namespace Ohmstead.Records.Editing.Layout;

/// <summary>Says for each gap between tokens what shall stand there: the layout itself.</summary>
/// <remarks>
/// A block stands two further in than what it belongs to. What stands in brackets is one line where that has no more than
/// <see cref="Width"/>
/// characters; else its folds stay where a person put them, behind commas, and one is added before each entry of the outermost brackets
/// that would go beyond. Remarks stay on their lines, one blank line stays where one or more stood.
/// </remarks>
internal sealed class Placement
{
    /// <summary>The longest line that is not folded, in characters.</summary>
    internal const int Width = 140;

    private readonly string text;
    private readonly IReadOnlyList<Token> tokens;
    private readonly Gap[] gaps;
    private readonly string[] wanted;
    private readonly string lineEnd;
    private int column;

    private Placement(string text, IReadOnlyList<Token> tokens, Gap[] gaps, string lineEnd)
    {
        this.text = text;
        this.tokens = tokens;
        this.gaps = gaps;
        this.lineEnd = lineEnd;
        wanted = new string[tokens.Count];
    }

    /// <summary>What shall stand before each token.</summary>
    internal static IReadOnlyList<string> Compute(string text, IReadOnlyList<Token> tokens, Gap[] gaps, string lineEnd)
    {
        var placement = new Placement(text, tokens, gaps, lineEnd);
        for (var i = 0; i < tokens.Count; i++)
        {
            i = tokens[i] is { Kind: TokenKind.Open, Depth: 0 } ? placement.Brackets(i) : placement.Plain(i);
        }

        return placement.wanted;
    }

    private int Plain(int i)
    {
        var token = tokens[i];
        Put(i, token.Join == Join.Line || gaps[i].HasRemarks);
        return i;
    }

    private int Brackets(int open)
    {
        Plain(open);
        var close = open + 1;
        while (tokens[close] is not { Kind: TokenKind.Close, Depth: 1 })
        {
            close++;
        }

        var fits =
            Enumerable.Range(open + 1, close - open).All(i => !gaps[i].HasRemarks && tokens[i].Inside is null)
            && column + Measure(open + 1, close + 1) <= Width;
        for (var i = open + 1; i <= close; i++)
        {
            var folds =
                !fits && tokens[i].Join == Join.Entry && (gaps[i].Breaks || (tokens[i].Depth == 1 && column + Reach(i, close) > Width));
            Put(i, folds || gaps[i].HasRemarks);
        }

        return close;
    }

    // How far the line goes when an entry with all that belongs to it is put on it.
    private int Reach(int entry, int close)
    {
        var next = entry + 1;
        while (next < close && !(tokens[next] is { Join: Join.Entry, Depth: 1 }))
        {
            if (gaps[next].HasRemarks || tokens[next].Inside is not null || (tokens[next].Join == Join.Entry && gaps[next].Breaks))
            {
                return Measure(entry, next) + Sign(next).Length;
            }

            next++;
        }

        return Measure(entry, next) + (next == close && !gaps[close].HasRemarks ? Measure(close, close + 1) : Sign(next).Length);
    }

    private int Measure(int from, int to)
    {
        var width = 0;
        for (var i = from; i < to; i++)
        {
            width += Sign(i).Length + (tokens[i].Join == Join.Tight ? 0 : 1) + WidthOf(tokens[i]).First;
        }

        return width;
    }

    private void Put(int i, bool onNewLine)
    {
        var (token, gap) = (tokens[i], gaps[i]);
        var first = new StringBuilder(Sign(i));
        if (onNewLine)
        {
            // The end of the line is the blank that a colon needs behind it; one more would be laid out again and again.
            first.Length = Sign(i).TrimEnd().Length;
            Lines(first, i);
            column = token.Indent;
        }
        else
        {
            first.Append(token.Join == Join.Tight ? string.Empty : " ");
            column += first.Length;
        }

        wanted[i] = first.ToString();
        var (width, last) = WidthOf(token);
        column = last ?? column + width;
    }

    private void Lines(StringBuilder put, int i)
    {
        var (token, gap) = (tokens[i], gaps[i]);
        if (gap.Beside is { } beside)
        {
            put.Append(beside.Blanks).Append(beside.Text);
        }

        // At the start there is no line to end; at the end the last line is ended, where it may be.
        put.Append(i == 0 || (token.Kind == TokenKind.End && EndsOpen(i)) ? string.Empty : lineEnd);
        // An empty line right behind a text that keeps its end would be one more line of it.
        var wasBlank = i == 0 || (tokens[i - 1] is { Kind: TokenKind.Block } block && ScalarEnd.KeepsItsEnd(text, block.Start, block.End));
        var keepsBlanks = token.Depth == 0;
        for (var line = 0; line < gap.Lines.Count; line++)
        {
            if (gap.Lines[line] is { } remark)
            {
                put.Append(' ', IndentOf(remark, i)).Append(remark.Text).Append(lineEnd);
                wasBlank = false;
            }
            else if (!wasBlank && keepsBlanks && (token.Kind != TokenKind.End || gap.Lines[line..].Exists(later => later is not null)))
            {
                put.Append(lineEnd);
                wasBlank = true;
            }
        }

        put.Append(' ', token.Indent);
    }

    // A block of text at the end of a file says something else once its last line is ended.
    private bool EndsOpen(int i) => i > 0 && tokens[i - 1].Kind == TokenKind.Block && !gaps[i].Breaks;

    // A remark stands as far in as what it stands above, or as the block that it ends.
    private int IndentOf(Remark remark, int i)
    {
        var token = tokens[i];
        // Below a key no block has ended yet.
        if (
            token.Join != Join.Line
            || i == 0
            || (!ReferenceEquals(token.Level, tokens[i - 1].Level) && token.Level.IsWithin(tokens[i - 1].Level))
        )
        {
            return token.Indent;
        }

        var stands = token.Kind == TokenKind.End ? 0 : ColumnOf(token);
        if (remark.Column <= stands)
        {
            return token.Indent;
        }

        for (Level? level = tokens[i - 1].Level; level is not null; level = level.Above)
        {
            if (level.Column <= remark.Column)
            {
                return level.Indent;
            }
        }

        return token.Indent;
    }

    private int ColumnOf(Token token) => token.Start - (text.AsSpan(0, token.Start).LastIndexOfAny('\r', '\n') + 1);

    // In brackets the colon of a key without a value is one only before a blank.
    private string Sign(int i) =>
        (gaps[i].HasColon, gaps[i].HasComma && tokens[i].Kind != TokenKind.Close) switch
        {
            (true, true) => ": ,",
            (true, false) when tokens[i] is { Kind: TokenKind.Close, Join: Join.Tight } => ": ",
            (true, false) => ":",
            (false, true) => ",",
            _ => string.Empty,
        };

    // The width of a token, of its first line where it has several; and then where its last line ends.
    private (int First, int? Last) WidthOf(Token token)
    {
        var span = text.AsSpan(token.Start, token.End - token.Start);
        if (token.Inside is not { Count: > 0 } inside)
        {
            return (Characters(span), null);
        }

        var last = inside[^1];
        return (
            Characters(span[..(inside[0].Offset - token.Start)]),
            last.Text.Length
                - last.Text.LastIndexOf('\n')
                - 1
                + Characters(text.AsSpan(last.Offset + last.Length, token.End - last.Offset - last.Length))
        );
    }

    private static int Characters(ReadOnlySpan<char> span)
    {
        var count = 0;
        foreach (var letter in span)
        {
            count += char.IsLowSurrogate(letter) ? 0 : 1;
        }

        return count;
    }
}
