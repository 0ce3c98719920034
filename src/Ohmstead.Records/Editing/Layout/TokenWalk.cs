using Ohmstead.Records.Editing.Edits;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Text;

namespace Ohmstead.Records.Editing.Layout;

/// <summary>Walks the nodes of a front matter and lists its tokens in the order written, each with how it shall follow the one before
/// it.</summary>
internal sealed class TokenWalk
{
    private const int Step = 2;

    private readonly SourceText source;
    private readonly string text;
    private readonly int end;
    private readonly List<Token> tokens = [];
    private int at;

    private TokenWalk(SourceText source, int start, int end)
    {
        this.source = source;
        text = source.Text;
        this.end = end;
        at = start;
    }

    /// <summary>Where the walk lost its way, or -1.</summary>
    internal int LostAt { get; private set; } = -1;

    private bool IsLost => LostAt >= 0;

    /// <summary>The tokens, the end of the front matter last.</summary>
    /// <param name="source">The whole file.</param>
    /// <param name="start">The offset at which the front matter begins.</param>
    /// <param name="end">The offset behind it.</param>
    /// <param name="root">What was read from it.</param>
    /// <param name="lostAt">The offset of something that has no place in a record, or -1.</param>
    internal static IReadOnlyList<Token> Read(SourceText source, int start, int end, MappingNode root, out int lostAt)
    {
        var walk = new TokenWalk(source, start, end);
        var bottom = new Level(0, 0, null);
        walk.StartMark(bottom);
        if (root.IsFlow)
        {
            walk.Braces(root, Join.Line, bottom, 0, Step, 1);
        }
        else if (root.Entries.Length > 0)
        {
            walk.Lines(root, Join.Line, null, 0);
        }

        walk.Add(end, end, TokenKind.End, Join.Line, bottom, 0, 0);
        lostAt = walk.LostAt;
        return walk.tokens;
    }

    // Plain YAML may begin with a line of three dashes.
    private void StartMark(Level bottom)
    {
        var first = Ahead();
        if (first + 3 < end && text.AsSpan(first, 3) is "---" && text[first + 3] is ' ' or '\t' or '\r' or '\n')
        {
            Add(first, first + 3, TokenKind.Value, Join.Line, bottom, 0, 0);
        }
    }

    private void Lines(MappingNode mapping, Join first, Level? above, int indent)
    {
        var level = new Level(mapping.Entries[0].KeySpot.Column - 1, indent, above);
        foreach (var entry in mapping.Entries)
        {
            if (IsLost)
            {
                return;
            }

            Key(entry, entry.KeySpot == mapping.Entries[0].KeySpot ? first : Join.Line, level, indent, 0);
            Value(entry.Value, level, level.Column, indent);
        }
    }

    private void Dashes(SequenceNode list, Join first, Level above, int indent)
    {
        Level? level = null;
        foreach (var item in list.Items)
        {
            var dash = Ahead();
            if (IsLost || dash >= end || text[dash] != '-')
            {
                Lose(dash);
                return;
            }

            level ??= new Level(dash - source.LineStart(source.LineAt(dash)), indent, above);
            Add(dash, dash + 1, TokenKind.Dash, ReferenceEquals(item, list.Items[0]) ? first : Join.Line, level, indent, 0);
            switch (item)
            {
                case MappingNode { IsFlow: false, Entries.Length: > 0 } mapping:
                    Lines(mapping, Join.Space, level, indent + Step);
                    break;
                case SequenceNode { IsFlow: false, Items.Length: > 0 } inner:
                    Dashes(inner, Join.Space, level, indent + Step);
                    break;
                default:
                    // What stands behind a dash continues further in than its first line.
                    Single(item, Join.Space, level, indent + Step, indent + Step + (item is ScalarNode ? 0 : Step), level.Column, 1);
                    break;
            }
        }
    }

    private void Value(Node value, Level level, int column, int indent)
    {
        switch (value)
        {
            case MappingNode { IsFlow: false, Entries.Length: > 0 } mapping:
                Lines(mapping, Join.Line, level, indent + Step);
                break;
            case SequenceNode { IsFlow: false, Items.Length: > 0 } list:
                Dashes(list, Join.Line, level, indent + Step);
                break;
            default:
                Single(value, Join.Space, level, indent + Step, indent + Step, column, 1);
                break;
        }
    }

    private void Single(Node node, Join join, Level level, int indent, int within, int outside, int depth)
    {
        switch (node)
        {
            case ScalarNode scalar:
                Scalar(scalar, join, level, indent, outside, depth - 1);
                break;
            case MappingNode mapping:
                Braces(mapping, join, level, indent, within, depth);
                break;
            case SequenceNode list:
                Brackets(list, join, level, indent, within, depth);
                break;
        }
    }

    private void Braces(MappingNode mapping, Join join, Level level, int indent, int within, int depth)
    {
        // A pair in brackets, [a: b], has no braces of its own.
        var open = source.OffsetOf(mapping.Spot);
        var hasBraces = !IsLost && open < end && text[open] == '{';
        if (hasBraces)
        {
            Add(open, open + 1, TokenKind.Open, join, level, indent, depth - 1);
        }

        var first = hasBraces ? Join.Space : join;
        var inner = hasBraces ? depth : depth - 1;
        foreach (var entry in mapping.Entries)
        {
            if (IsLost)
            {
                return;
            }

            Key(entry, entry.KeySpot == mapping.Entries[0].KeySpot ? first : Join.Entry, level, within, inner);
            Single(entry.Value, Join.Space, level, within, within, level.Column, inner + 1);
        }

        if (hasBraces)
        {
            Close('}', mapping.Entries.Length > 0 ? Join.Space : Join.Tight, level, within, depth);
        }
    }

    private void Brackets(SequenceNode list, Join join, Level level, int indent, int within, int depth)
    {
        var open = source.OffsetOf(list.Spot);
        Add(open, open + 1, TokenKind.Open, join, level, indent, depth - 1);
        foreach (var item in list.Items)
        {
            if (IsLost)
            {
                return;
            }

            Single(item, ReferenceEquals(item, list.Items[0]) ? Join.Tight : Join.Entry, level, within, within, level.Column, depth + 1);
        }

        Close(']', Join.Tight, level, within, depth);
    }

    private void Close(char sign, Join join, Level level, int indent, int depth)
    {
        var close = Ahead();
        if (close >= end || text[close] != sign)
        {
            Lose(close);
            return;
        }

        Add(close, close + 1, TokenKind.Close, join, level, indent, depth);
    }

    private void Key(MappingEntry entry, Join join, Level level, int indent, int depth)
    {
        var (start, behind) = (source.OffsetOf(entry.KeySpot), source.EndOf(entry.KeySpot));
        if (text[start] is not ('"' or '\'') && !IsPlainKey(start, behind, entry.Key, depth))
        {
            Lose(start);
        }

        Add(start, behind, TokenKind.Key, join, level, indent, depth);
    }

    // Beside a colon that stands alone the library reads keys that are not written there. A colon before a closing bracket is a part of the
    // key only as long as no blank stands between, and so is a question mark.
    private bool IsPlainKey(int start, int behind, string key, int depth) =>
        !char.IsWhiteSpace(text[start])
        && text.AsSpan(start, behind - start).SequenceEqual(key)
        && (depth == 0 || (key != "?" && (text[behind - 1] != ':' || text[behind] == ':')));

    private void Scalar(ScalarNode scalar, Join join, Level level, int indent, int outside, int depth)
    {
        // Where nothing is written there is no token.
        if (scalar is { Style: ScalarWriting.Plain, Text: "" })
        {
            return;
        }

        var start = source.OffsetOf(scalar.Spot);
        if (scalar.Style == ScalarWriting.Block)
        {
            var (last, column) = ScalarEnd.Block(text, start, end, outside);
            Add(
                start,
                last,
                TokenKind.Block,
                join,
                level,
                indent,
                depth,
                last > ScalarEnd.LineEnd(text, start, end)
                    ? BlockEdits.Indent(text, start, last, column, column < 0 ? level.Indent - level.Column : indent - column)
                    : null
            );
            return;
        }

        // In brackets a colon at the end of a value is one only as long as no blank stands behind it; so is a question mark.
        var behind = ScalarEnd.Find(text, start, end, scalar);
        if (behind < 0 || (depth > 0 && scalar.Style == ScalarWriting.Plain && (text[behind - 1] == ':' || scalar.Text == "?")))
        {
            Lose(start);
            return;
        }

        Add(
            start,
            behind,
            TokenKind.Value,
            join,
            level,
            indent,
            depth,
            text.AsSpan(start, behind - start).ContainsAny('\r', '\n')
                ? BlockEdits.OfFolded(text, start, behind, indent, scalar.Style == ScalarWriting.DoubleQuoted)
                : null
        );
    }

    // The next thing that is not between tokens. A remark ends with its line; one sign of each kind may stand before.
    private int Ahead()
    {
        var (hasColon, hasComma) = (false, false);
        var next = at;
        while (next < end)
        {
            switch (text[next])
            {
                case ' ' or '\t' or '\r' or '\n' or '\uFEFF':
                    next++;
                    break;
                case '#':
                    next = ScalarEnd.LineEnd(text, next, end);
                    break;
                case ':' when !hasColon:
                    (hasColon, next) = (true, next + 1);
                    break;
                case ',' when !hasComma:
                    (hasComma, next) = (true, next + 1);
                    break;
                default:
                    return next;
            }
        }

        return end;
    }

    private void Add(
        int start,
        int behind,
        TokenKind kind,
        Join join,
        Level level,
        int indent,
        int depth,
        IReadOnlyList<TextEdit>? inside = null
    )
    {
        if (IsLost)
        {
            return;
        }

        if (start < at || behind > end)
        {
            Lose(start);
            return;
        }

        tokens.Add(
            new Token(start, behind, kind, join, level)
            {
                Indent = indent,
                Depth = depth,
                Inside = inside,
            }
        );
        at = behind;
    }

    private void Lose(int offset)
    {
        if (!IsLost)
        {
            LostAt = Math.Min(offset, end);
        }
    }
}
