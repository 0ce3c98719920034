namespace Ohmstead.Records.Merging;

/// <summary>Which lines of two texts are the same: lines that stand once in each are held fast, and what lies between is looked at
/// again.</summary>
internal static class Lines
{
    /// <summary>A text as its lines, each with its end.</summary>
    internal static string[] Of(string text)
    {
        var lines = new List<string>();
        var at = 0;
        while (at < text.Length)
        {
            var end = text.AsSpan(at).IndexOfAny('\r', '\n') is >= 0 and var found ? at + found + 1 : text.Length;
            end += end < text.Length && text[end - 1] == '\r' && text[end] == '\n' ? 1 : 0;
            lines.Add(text[at..end]);
            at = end;
        }

        return [.. lines];
    }

    /// <summary>For each line of the first text the line of the second that it is, or -1; in order in both.</summary>
    internal static int[] Match(string[] one, string[] other)
    {
        var matches = new int[one.Length];
        Array.Fill(matches, -1);
        var open = new Stack<(int From, int To, int OtherFrom, int OtherTo)>();
        open.Push((0, one.Length, 0, other.Length));
        while (open.TryPop(out var range))
        {
            var (from, to, otherFrom, otherTo) = range;
            while (from < to && otherFrom < otherTo && one[from] == other[otherFrom])
            {
                matches[from++] = otherFrom++;
            }

            while (from < to && otherFrom < otherTo && one[to - 1] == other[otherTo - 1])
            {
                matches[--to] = --otherTo;
            }

            var fast = Fast(one.AsSpan(from, to - from), other.AsSpan(otherFrom, otherTo - otherFrom));
            var (last, otherLast) = (from, otherFrom);
            foreach (var (line, otherLine) in fast)
            {
                matches[from + line] = otherFrom + otherLine;
                open.Push((last, from + line, otherLast, otherFrom + otherLine));
                (last, otherLast) = (from + line + 1, otherFrom + otherLine + 1);
            }

            if (fast.Count > 0)
            {
                open.Push((last, to, otherLast, otherTo));
            }
        }

        return matches;
    }

    // The longest run, in order in both, of lines that stand once in each.
    private static List<(int Line, int Other)> Fast(ReadOnlySpan<string> one, ReadOnlySpan<string> other)
    {
        var (first, second) = (Once(one), Once(other));
        var pairs = new List<(int Line, int Other)>();
        for (var line = 0; line < one.Length; line++)
        {
            if (first[one[line]] >= 0 && second.TryGetValue(one[line], out var there) && there >= 0)
            {
                pairs.Add((line, there));
            }
        }

        var ends = new List<int>();
        var before = new int[pairs.Count];
        for (var at = 0; at < pairs.Count; at++)
        {
            var (low, high) = (0, ends.Count);
            while (low < high)
            {
                var middle = (low + high) / 2;
                (low, high) = pairs[ends[middle]].Other < pairs[at].Other ? (middle + 1, high) : (low, middle);
            }

            before[at] = low > 0 ? ends[low - 1] : -1;
            if (low == ends.Count)
            {
                ends.Add(at);
            }
            else
            {
                ends[low] = at;
            }
        }

        var run = new List<(int Line, int Other)>();
        for (var at = ends.Count > 0 ? ends[^1] : -1; at >= 0; at = before[at])
        {
            run.Add(pairs[at]);
        }

        run.Reverse();
        return run;
    }

    // Where a line stands that stands once; -1 for one that stands more often.
    private static Dictionary<string, int> Once(ReadOnlySpan<string> lines)
    {
        var places = new Dictionary<string, int>(lines.Length, StringComparer.Ordinal);
        for (var at = 0; at < lines.Length; at++)
        {
            if (!places.TryAdd(lines[at], at))
            {
                places[lines[at]] = -1;
            }
        }

        return places;
    }
}
