namespace Ohmstead.Yaml;

/// <summary>Finds what stands at the beginning of lines where YAML wants spaces or keys.</summary>
internal static class Indentation
{
    /// <summary>The offsets of the first tab in the indentation of each line that has one. Blank lines and comments do not count.</summary>
    internal static IndentationTabs Tabs(string text, int start, int end)
    {
        var tabs = new List<int>();
        for (var at = start; text.AsSpan(at, end - at).IndexOf('\t') is >= 0 and var found; at++)
        {
            at += found;
            var before = text.AsSpan(start, at - start);
            var isFirst = before.IsEmpty || before[^1] is ' ' or '\r' or '\n';
            if (isFirst && before[(before.LastIndexOfAny('\r', '\n') + 1)..].IndexOfAnyExcept(' ') < 0 && HasContent(text.AsSpan(at, end - at)))
            {
                tabs.Add(at);
            }
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
