namespace Ohmstead.Records.Findings;

/// <summary>Finds the known word nearest to one that is not known, so that a message can name what was probably meant.</summary>
public static class Nearest
{
    // A digit for the letter that looks like it is half a slip: PO-0B was meant as PO-08 and not as PO-01.
    private const int Edit = 2;
    private const int LookAlike = 1;

    /// <summary>The nearest known word by edit distance (case counts for nothing), or null when none is near enough to be meant.</summary>
    public static string? To(string word, IEnumerable<string> known)
    {
        string? best = null;
        var least = Edit * Math.Max(1, Math.Min(word.Length, 40) / 3) + 1;
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
    public static string Told(string missing, string? near, string otherwise = "") => near is null ? missing + otherwise : $"{missing}, '{near}' is the nearest";

    private static string Fold(string word) => (word.Length <= 60 ? word : word[..60]).ToUpperInvariant().Replace('-', '_').Replace(' ', '_');

    private static char LooksLike(char c) => c switch { 'O' or 'Q' => '0', 'I' or 'L' => '1', 'Z' => '2', 'S' => '5', 'B' => '8', _ => c };

    // Edit distance with transposition of neighbours (optimal string alignment); gives up at the bound.
    private static int Distance(string a, string b, int bound)
    {
        if (Edit * Math.Abs(a.Length - b.Length) >= bound)
        {
            return bound;
        }

        var older = new int[b.Length + 1];
        var previous = new int[b.Length + 1];
        var current = new int[b.Length + 1];
        for (var j = 0; j <= b.Length; j++)
        {
            previous[j] = Edit * j;
        }

        for (var i = 1; i <= a.Length; i++)
        {
            current[0] = Edit * i;
            for (var j = 1; j <= b.Length; j++)
            {
                var cost = a[i - 1] == b[j - 1] ? 0 : LooksLike(a[i - 1]) == LooksLike(b[j - 1]) ? LookAlike : Edit;
                current[j] = Math.Min(Math.Min(current[j - 1] + Edit, previous[j] + Edit), previous[j - 1] + cost);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                {
                    current[j] = Math.Min(current[j], older[j - 2] + Edit);
                }
            }

            (older, previous, current) = (previous, current, older);
        }

        return previous[b.Length];
    }
}
