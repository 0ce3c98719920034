using Ohmstead.Records.Nodes;

namespace Ohmstead.Records.Editing.Layout;

/// <summary>Finds where a value ends that may run over several lines; its node knows only its first.</summary>
internal static class ScalarEnd
{
    /// <summary>The offset behind a plain or quoted value, or -1 where it is not found.</summary>
    internal static int Find(string text, int start, int limit, ScalarNode node) =>
        node.Style switch
        {
            ScalarWriting.SingleQuoted => Quoted(text, start, limit, '\''),
            ScalarWriting.DoubleQuoted => Quoted(text, start, limit, '"'),
            _ when text.AsSpan(start, limit - start).StartsWith(node.Text, StringComparison.Ordinal) => start + node.Text.Length,
            _ => Plain(text, start, limit, node.Text),
        };

    /// <summary>The lines of a block of text.</summary>
    /// <param name="text">The whole file.</param>
    /// <param name="start">The offset of its sign.</param>
    /// <param name="limit">The end of the front matter.</param>
    /// <param name="outside">How far in the lines around it stand.</param>
    /// <returns>The offset behind its last line, and how far in its lines stand; that is -1 where it has none or gives its own
    /// indentation.</returns>
    internal static (int End, int Column) Block(string text, int start, int limit, int outside)
    {
        var head = LineEnd(text, start, limit);
        var signs = Signs(text, start, head);
        var given = signs.IndexOfAnyInRange('1', '9') is >= 0 and var digit ? signs[digit] - '0' : 0;
        var (end, column) = (head, given > 0 ? outside + given : -1);
        for (var at = Behind(text, head, limit); at < limit; at = Behind(text, LineEnd(text, at, limit), limit))
        {
            var line = text.AsSpan(at, LineEnd(text, at, limit) - at);
            var stands = line.IndexOfAnyExcept(' ');
            if (stands < 0)
            {
                // Blanks beyond the indentation are text, and what a block of text keeps at its end are its own blank lines.
                end = signs.Contains('+') || (column >= 0 && line.Length > column) ? at + line.Length : end;
                continue;
            }

            column = column < 0 ? stands : column;
            if (stands < column || stands <= outside)
            {
                break;
            }

            end = at + line.Length;
        }

        return (end, end == head || given > 0 ? -1 : column);
    }

    /// <summary>Whether a block of text keeps the empty lines behind its last one.</summary>
    internal static bool KeepsItsEnd(string text, int start, int limit) => Signs(text, start, LineEnd(text, start, limit)).Contains('+');

    /// <summary>The offset of the line end at or behind an offset.</summary>
    internal static int LineEnd(string text, int at, int limit) =>
        text.AsSpan(at, limit - at).IndexOfAny('\r', '\n') is >= 0 and var length ? at + length : limit;

    /// <summary>The offset behind the line end at an offset.</summary>
    internal static int Behind(string text, int lineEnd, int limit) =>
        lineEnd >= limit ? limit
        : lineEnd + 1 < limit && text[lineEnd] == '\r' && text[lineEnd + 1] == '\n' ? lineEnd + 2
        : lineEnd + 1;

    private static ReadOnlySpan<char> Signs(string text, int start, int head)
    {
        var line = text.AsSpan(start, head - start);
        return line.IndexOfAny(" \t#") is >= 0 and var cut ? line[..cut] : line;
    }

    private static int Quoted(string text, int start, int limit, char quote)
    {
        for (var at = start + 1; at < limit; at++)
        {
            if (text[at] == '\\' && quote == '"')
            {
                at++;
            }
            else if (text[at] == quote && !(quote == '\'' && at + 1 < limit && text[at + 1] == quote))
            {
                return at + 1;
            }
            else if (text[at] == quote)
            {
                at++;
            }
        }

        return -1;
    }

    // A line end within a plain value is read as a space, each further one as a line end.
    private static int Plain(string text, int start, int limit, string value)
    {
        var at = start;
        var i = 0;
        while (i < value.Length)
        {
            if (at >= limit)
            {
                return -1;
            }

            var blanks = text.AsSpan(at, limit - at).IndexOfAnyExcept(" \t\r\n") is >= 0 and var length ? length : limit - at;
            var breaks = LineBreaks(text.AsSpan(at, blanks));
            if (breaks == 0)
            {
                if (text[at] != value[i])
                {
                    return -1;
                }

                (at, i) = (at + 1, i + 1);
                continue;
            }

            var read = breaks == 1 ? " " : new string('\n', breaks - 1);
            if (!value.AsSpan(i).StartsWith(read, StringComparison.Ordinal))
            {
                return -1;
            }

            (at, i) = (at + blanks, i + read.Length);
        }

        return at;
    }

    /// <summary>How many line ends a stretch of blanks holds.</summary>
    internal static int LineBreaks(ReadOnlySpan<char> blanks) => blanks.Count('\n') + blanks.Count('\r') - blanks.Count("\r\n");
}
