using System.Collections.Concurrent;

namespace Ohmstead.Report.Search;

/// <summary>The tokens of an index by number, in whatever order workers meet them. Called from several threads.</summary>
internal sealed class SearchTokens
{
    private readonly ConcurrentDictionary<string, int> numbers = new(StringComparer.Ordinal);
    private int next = -1;

    /// <summary>How many numbers were given.</summary>
    public int Count => next + 1;

    /// <summary>The number of a token.</summary>
    public int Number(string token)
    {
        if (numbers.TryGetValue(token, out var known))
        {
            return known;
        }

        // Two workers at one moment leave a number without a token, which costs nothing.
        return numbers.GetOrAdd(token, _ => Interlocked.Increment(ref next));
    }

    /// <summary>The tokens with their numbers, in order of the tokens.</summary>
    public KeyValuePair<string, int>[] InOrder()
    {
        var all = numbers.ToArray();
        Array.Sort(all, static (left, right) => string.CompareOrdinal(left.Key, right.Key));
        return all;
    }
}
