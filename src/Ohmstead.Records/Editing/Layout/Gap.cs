namespace Ohmstead.Records.Editing.Layout;

/// <summary>What stands between two tokens: blanks, line ends, remarks, and the colon and the comma that belong to the tokens.</summary>
internal sealed class Gap
{
    private Gap() { }

    /// <summary>Whether a colon ends a key here.</summary>
    internal bool HasColon { get; private set; }

    /// <summary>How far behind the token before the colon ends; 0 where there is none.</summary>
    internal int ColonWidth { get; private set; }

    /// <summary>Whether a comma ends an entry here.</summary>
    internal bool HasComma { get; private set; }

    /// <summary>Whether what follows begins a line of its own.</summary>
    internal bool Breaks { get; private set; }

    /// <summary>The remark on the line of the token before, with the blanks before it; or null.</summary>
    internal Remark? Beside { get; private set; }

    /// <summary>The whole lines between the tokens, in order: a remark, or null for a line with nothing on it.</summary>
    internal List<Remark?> Lines { get; } = [];

    /// <summary>Whether anything here must keep its place on a line.</summary>
    internal bool HasRemarks => Beside is not null || Lines.Exists(line => line is not null);

    /// <summary>All remarks in order.</summary>
    internal IEnumerable<string> Remarks => Lines.Prepend(Beside).OfType<Remark>().Select(remark => remark.Text);

    /// <summary>Takes a gap apart.</summary>
    /// <param name="text">The whole file.</param>
    /// <param name="from">Behind the token before.</param>
    /// <param name="to">Where the next token begins, or the front matter ends.</param>
    /// <param name="before">The token before; null at the start of the front matter.</param>
    /// <param name="after">The token behind.</param>
    /// <param name="stranger">The offset of what is none of these, or -1.</param>
    internal static Gap Between(string text, int from, int to, Token? before, Token after, out int stranger)
    {
        var gap = new Gap();
        var (at, line, isFirst) = (from, from, before is not null);
        stranger = -1;
        while (at < to && stranger < 0)
        {
            switch (text[at])
            {
                case ' ' or '\t' or '\uFEFF':
                    at++;
                    break;
                case '\r' or '\n':
                    gap.EndLine(isFirst, text.AsSpan(line, at - line).Contains('#'));
                    at += text[at] == '\r' && at + 1 < to && text[at + 1] == '\n' ? 2 : 1;
                    (line, isFirst) = (at, false);
                    break;
                case '#':
                    var end = text.AsSpan(at, to - at).IndexOfAny('\r', '\n') is >= 0 and var length ? at + length : to;
                    var blanks = text.AsSpan(line, at - line);
                    gap.Add(new Remark(text[at..end].TrimEnd(' ', '\t'), at - line, Before(blanks)), isFirst);
                    at = end;
                    break;
                case ':' when before is { Kind: TokenKind.Key } && !gap.HasColon && !gap.HasComma:
                    gap.HasColon = true;
                    gap.ColonWidth = at + 1 - from;
                    (at, line) = (at + 1, isFirst ? at + 1 : line);
                    break;
                case ','
                    when before is not { Kind: TokenKind.Open }
                        && (after.Join == Join.Entry || after.Kind == TokenKind.Close)
                        && !gap.HasComma:
                    gap.HasComma = true;
                    (at, line) = (at + 1, isFirst ? at + 1 : line);
                    break;
                default:
                    stranger = at;
                    break;
            }
        }

        // The library reads on where the colon is missing behind a quoted key that runs over several lines.
        if (
            stranger < 0
            && before is { Kind: TokenKind.Key }
            && after.Kind is (TokenKind.Value or TokenKind.Block or TokenKind.Open)
            && !gap.HasColon
        )
        {
            stranger = to;
        }

        return gap;
    }

    private static string Before(ReadOnlySpan<char> blanks) =>
        blanks.IsEmpty ? " "
        : blanks.Contains('\t') ? "  "
        : blanks.Trim(' ').IsEmpty ? blanks.ToString()
        : " ";

    private void Add(Remark remark, bool isFirst)
    {
        if (isFirst)
        {
            Beside = remark;
        }
        else
        {
            Lines.Add(remark);
        }
    }

    private void EndLine(bool isFirst, bool hasRemark)
    {
        Breaks = true;
        if (!isFirst && !hasRemark)
        {
            Lines.Add(null);
        }
    }
}

/// <summary>A remark: the rest of a line behind a number sign.</summary>
/// <param name="Text">The text with its sign, without blanks at the end.</param>
/// <param name="Column">How far from the left the sign stands.</param>
/// <param name="Blanks">What stands between it and the token before it on its line.</param>
internal sealed record Remark(string Text, int Column, string Blanks);
