namespace Ohmstead.Yaml;

/// <summary>Finds what stands at the beginning of lines where YAML wants spaces or keys.</summary>
internal static class Indentation
{
    /// <summary>The offsets of the first tab in the indentation of each line that has one. Blank lines and comments do not count.</summary>
    internal static IndentationTabs Tabs(string text, int start, int end)
    {
        var tabs = new List<int>();
        var at = start;
        while (text.AsSpan(at, end - at).IndexOf('\t') is >= 0 and var found)
        {
            var line = text.AsSpan(at, found).LastIndexOfAny('\r', '\n') is >= 0 and var lineEnd
                ? text.AsSpan(at + lineEnd + 1, found - lineEnd - 1)
                : text.AsSpan(at, found);
            at += found;
            var rest = text.AsSpan(at, end - at);
            if (line.IndexOfAnyExcept(' ') < 0 && HasContent(rest))
            {
                tabs.Add(at);
            }

            // The first tab of a line tells all: a line of tabs is looked at once, and not once for each of them.
            at += rest.IndexOfAny('\r', '\n') is >= 0 and var length ? length : rest.Length;
        }

        return new IndentationTabs(tabs);
    }

    /// <summary>The offset of the first line that begins with a percent sign, as only a directive may, or -1.</summary>
    internal static int Directive(string text, int start, int end)
    {
        for (var at = start; text.AsSpan(at, end - at).IndexOf('%') is >= 0 and var found; at++)
        {
            at += found;
            if ((at == start || text[at - 1] is '\r' or '\n'))
            {
                return at;
            }
        }

        return -1;
    }

    private static bool HasContent(ReadOnlySpan<char> fromTab)
    {
        var rest = fromTab.TrimStart(" \t");
        return !rest.IsEmpty && rest[0] is not ('\r' or '\n' or '#');
    }
}
