namespace Ohmstead.Yaml;

/// <summary>What surrounds an offset in YAML that cannot be read: the brackets and the quote that are open there.</summary>
/// <remarks>
/// The library tells where it gave up, not what was meant. This rough reading of the text before that place, brackets, quotes,
/// comments and blocks of text only, is what a person does to find the cause. It runs after an error and never before one.
/// </remarks>
internal sealed class YamlContext
{
    private readonly string text;
    private readonly int end;
    private readonly List<int> brackets = [];
    private int at;

    private YamlContext(string text, int start, int end)
    {
        this.text = text;
        this.end = end;
        at = start;
    }

    /// <summary>The offsets of the brackets and braces that are open, the innermost last.</summary>
    internal IReadOnlyList<int> Brackets => brackets;

    /// <summary>The offset of the quote that is open, or -1.</summary>
    internal int OpenQuote { get; private set; } = -1;

    /// <summary>The last quoted value that ran over a line end: the offset of its opening quote, or -1.</summary>
    internal int LongQuote { get; private set; } = -1;

    /// <summary>The offset of the closing quote of that value.</summary>
    internal int LongQuoteEnd { get; private set; } = -1;

    /// <summary>The offset at which the last block of text ended, or -1.</summary>
    internal int BlockEnd { get; private set; } = -1;

    /// <summary>Reads from the start of the YAML up to an offset.</summary>
    internal static YamlContext At(string text, int start, int offset)
    {
        var context = new YamlContext(text, start, offset);
        context.Read();
        return context;
    }

    private void Read()
    {
        var mayBegin = true;
        while (at < end)
        {
            var letter = text[at];
            switch (letter)
            {
                case '\n' or '\r':
                    mayBegin = true;
                    at++;
                    break;
                case ' ' or '\t':
                    at++;
                    break;
                case '#' when at == 0 || char.IsWhiteSpace(text[at - 1]) || text[at - 1] is '"' or '\'' or '[' or ']' or '{' or '}' or ',':
                    ToLineEnd();
                    break;
                case '"' or '\'' when mayBegin:
                    Quote(letter);
                    mayBegin = false;
                    break;
                case '[' or '{' when mayBegin || brackets.Count > 0:
                    brackets.Add(at++);
                    mayBegin = true;
                    break;
                case ']' or '}' when brackets.Count > 0:
                    CloseBracket(letter);
                    mayBegin = false;
                    break;
                case ',' when brackets.Count > 0:
                    mayBegin = true;
                    at++;
                    break;
                case '-' or '?' when mayBegin && IsSpaceBehind():
                case ':' when IsSpaceBehind():
                    mayBegin = true;
                    at++;
                    break;
                case '|' or '>' when mayBegin && brackets.Count == 0:
                    Block();
                    mayBegin = true;
                    break;
                default:
                    mayBegin = false;
                    at++;
                    break;
            }
        }
    }

    private bool IsSpaceBehind() => at + 1 >= text.Length || char.IsWhiteSpace(text[at + 1]);

    private void ToLineEnd()
    {
        var length = text.AsSpan(at, end - at).IndexOfAny('\r', '\n');
        at = length < 0 ? end : at + length;
    }

    private void CloseBracket(char letter)
    {
        // One that does not match closes nothing: it is the fault that is looked for.
        if (text[brackets[^1]] == (letter == ']' ? '[' : '{'))
        {
            brackets.RemoveAt(brackets.Count - 1);
        }

        at++;
    }

    private void Quote(char quote)
    {
        var opening = at++;
        while (at < end)
        {
            var isDoubled = quote == '\'' && at + 1 < end && text[at] == quote && text[at + 1] == quote;
            if (text[at] == quote && !isDoubled)
            {
                break;
            }

            at += isDoubled || (quote == '"' && text[at] == '\\') ? 2 : 1;
        }

        if (at >= end)
        {
            OpenQuote = opening;
            at = end;
            return;
        }

        if (text.AsSpan(opening, at - opening).ContainsAny('\r', '\n'))
        {
            LongQuote = opening;
            LongQuoteEnd = at;
        }

        at++;
    }

    private void Block()
    {
        // The first line of the text sets how far its lines stand to the right.
        var least = IndentationOfLineAt(at) + 1;
        var isFirst = true;
        ToLineEnd();
        while (at < end)
        {
            var line = at;
            while (line < end && text[line] is '\r' or '\n')
            {
                line++;
            }

            var content = text.AsSpan(line, end - line).IndexOfAnyExcept(' ');
            if (content < 0 || content < least)
            {
                break;
            }

            if (isFirst)
            {
                least = content;
                isFirst = false;
            }

            at = line;
            ToLineEnd();
            BlockEnd = at;
        }
    }

    // The dashes of list items count as indentation: what belongs to the item stands behind them.
    private int IndentationOfLineAt(int offset)
    {
        var start = text.AsSpan(0, offset).LastIndexOfAny('\r', '\n') + 1;
        var line = text.AsSpan(start, offset - start);
        var first = line.IndexOfAnyExcept(" -");
        return first < 0 ? Math.Max(line.LastIndexOf('-'), 0) : first;
    }
}
