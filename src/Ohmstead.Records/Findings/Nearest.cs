namespace Ohmstead.Records.Findings;

/// <summary>Finds the known word nearest to one that is not known, so that a message can name what was probably meant.</summary>
public static class Nearest
{
    // A digit for the letter that looks like it is half a slip: PO-0B was meant as PO-08 and not as PO-01.
    private const int Edit = 2;
    private const int LookAlike = 1;

    // Names are no longer.
    private const int Longest = 60;

    /// <summary>The nearest known word by edit distance (case counts for nothing), or null when none is near enough to be meant.</summary>
    public static string? To(string word, IEnumerable<string> known)
    {
        string? best = null;
        var least = Bound(word);
        var folded = Fold(word);
        foreach (var candidate in known)
        {
            var distance = Distance(folded, Fold(candidate), least);
            if (distance < least)
            {
                (best, least) = (candidate, distance);
            }
        }

        return best;
    }

    /// <summary>Says what is not known, and which known word is nearest to it.</summary>
    /// <param name="missing">What is not known: "there is no lot 'L-O31'".</param>
    /// <param name="near">The nearest known word, or null.</param>
    /// <param name="otherwise">What follows when none is near.</param>
    public static string Told(string missing, string? near, string otherwise = "") =>
        near is null ? missing + otherwise : $"{missing}, '{near}' is the nearest";

    /// <summary>The least distance that is too far for a known word to be meant by this one.</summary>
    internal static int Bound(string word) => Edit * Math.Max(1, Math.Min(word.Length, 40) / 3) + 1;

    /// <summary>Whether words of two lengths are too far apart whatever they say.</summary>
    internal static bool IsTooFar(int length, int other, int bound) => Edit * Math.Abs(length - other) >= bound;

    /// <summary>A word as words are compared: without capitals, hyphens and spaces, and no longer than a name can be.</summary>
    internal static string Fold(string word) =>
        (word.Length <= Longest ? word : word[..Longest]).ToUpperInvariant().Replace('-', '_').Replace(' ', '_');

    private static char LooksLike(char c) =>
        c switch
        {
            'O' or 'Q' => '0',
            'I' or 'L' => '1',
            'Z' => '2',
            'S' => '5',
            'B' => '8',
            _ => c,
        };

    /// <summary>Edit distance of two folded words, with transposition of neighbours (optimal string alignment); gives up at the
    /// bound.</summary>
    internal static int Distance(string a, string b, int bound)
    {
        if (IsTooFar(a.Length, b.Length, bound))
        {
            return bound;
        }

        // Folded words are short, and thousands may be compared: their rows take no memory.
        Span<int> older = stackalloc int[Longest + 1],
            previous = stackalloc int[Longest + 1],
            current = stackalloc int[Longest + 1];
        for (var j = 0; j <= b.Length; j++)
        {
            previous[j] = Edit * j;
        }

        for (var i = 1; i <= a.Length; i++)
        {
            current[0] = Edit * i;
            for (var j = 1; j <= b.Length; j++)
            {
                var cost =
                    a[i - 1] == b[j - 1] ? 0
                    : LooksLike(a[i - 1]) == LooksLike(b[j - 1]) ? LookAlike
                    : Edit;
                current[j] = Math.Min(Math.Min(current[j - 1] + Edit, previous[j] + Edit), previous[j - 1] + cost);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                {
                    current[j] = Math.Min(current[j], older[j - 2] + Edit);
                }
            }

            var oldest = older;
            older = previous;
            previous = current;
            current = oldest;
        }

        return previous[b.Length];
    }
}
