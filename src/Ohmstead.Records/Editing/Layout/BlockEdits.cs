using Ohmstead.Records.Editing.Edits;

namespace Ohmstead.Records.Editing.Layout;

/// <summary>The changes inside a value that runs over several lines: only how far in its lines stand, never what they say.</summary>
/// <remarks>Line ends are written as LF here; whoever applies the changes puts those of the file in.</remarks>
internal static class BlockEdits
{
    /// <summary>Moves the lines of a block of text, all by the same width.</summary>
    /// <param name="text">The whole file.</param>
    /// <param name="start">The offset of its sign.</param>
    /// <param name="end">The offset behind its last line.</param>
    /// <param name="column">How far in its lines stand, or -1 where it says so itself.</param>
    /// <param name="by">How far they move to the right; negative to the left.</param>
    internal static IReadOnlyList<TextEdit> Indent(string text, int start, int end, int column, int by)
    {
        var edits = new List<TextEdit>();
        var head = ScalarEnd.LineEnd(text, start, end);
        var sign = text.AsSpan(start, head - start).TrimEnd(" \t").Length;
        var lineEnd = head;
        var from = start + sign;
        while (lineEnd < end)
        {
            var line = ScalarEnd.Behind(text, lineEnd, end);
            var next = ScalarEnd.LineEnd(text, line, end);
            var stands = text.AsSpan(line, next - line).IndexOfAnyExcept(' ') is >= 0 and var blanks ? blanks : next - line;
            // A line of blanks no longer than the indentation says nothing; what is longer is text.
            var isEmpty = stands == next - line && (column < 0 ? by < 0 && stands <= -by : stands <= column);
            var indent = isEmpty ? 0 : Math.Max(stands + by, 0);
            edits.Add(new TextEdit(from, line + stands - from, "\n" + new string(' ', indent)));
            (lineEnd, from) = (next, next);
        }

        return edits;
    }

    /// <summary>Moves the further lines of a plain or quoted value; the blanks around a line end in it say nothing.</summary>
    internal static IReadOnlyList<TextEdit> OfFolded(string text, int start, int end, int indent, bool hasEscapes)
    {
        var edits = new List<TextEdit>();
        var at = start;
        while (text.AsSpan(at, end - at).IndexOfAny('\r', '\n') is >= 0 and var length)
        {
            var line = at + length;
            var from = start + text.AsSpan(start, line - start).TrimEnd(" \t").Length;
            // A blank behind a backslash is written on purpose.
            if (hasEscapes && from < line && EndsInBackslash(text.AsSpan(start, from - start)))
            {
                from++;
            }

            var to = text.AsSpan(line, end - line).IndexOfAnyExcept(" \t\r\n") is >= 0 and var blanks ? line + blanks : end;
            edits.Add(
                new TextEdit(
                    from,
                    to - from,
                    new string('\n', ScalarEnd.LineBreaks(text.AsSpan(line, to - line))) + new string(' ', indent)
                )
            );
            at = to;
        }

        return edits;
    }

    private static bool EndsInBackslash(ReadOnlySpan<char> text) => (text.Length - text.TrimEnd('\\').Length) % 2 == 1;
}
