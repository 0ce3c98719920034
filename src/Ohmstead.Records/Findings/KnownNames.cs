using Ohmstead.Records.Text;

namespace Ohmstead.Records.Findings;

/// <summary>
/// The names of one list, among which the one is looked for that was meant by each of many that are not in it. Eight thousand unknown names
/// among eight thousand known ones are one mistake that was made eight thousand times: the first of them are told with the name that is
/// nearest, and when
/// <see cref="MostSteps"/> of work were done, the rest are told without.
/// </summary>
/// <remarks>An instance is used by one thread at a time, for one list of one file: what it gives depends on what it was asked
/// before.</remarks>
public sealed class KnownNames
{
    /// <summary>How much is compared before no nearest name is told any more; a step compares two letters, and a record written by hand
    /// needs a thousandth.</summary>
    public const long MostSteps = 10_000_000;

    private readonly string[] names;
    private string[]? folded;
    private Dictionary<string, string>? looks;
    private HashSet<string>? all;

    /// <summary>Takes the names.</summary>
    /// <param name="names">The names; of two that are as near the earlier one is told.</param>
    public KnownNames(IEnumerable<string> names) => this.names = [.. names];

    /// <summary>How much was compared.</summary>
    public long Steps { get; private set; }

    /// <summary>Whether a name is one of them.</summary>
    public bool Holds(string name) => (all ??= names.ToHashSet(StringComparer.Ordinal)).Contains(name);

    /// <summary>The first of the names that looks like this one to a reader, or null.</summary>
    public string? LookingLike(string name)
    {
        if (looks is null)
        {
            looks = new(names.Length, StringComparer.Ordinal);
            foreach (var known in names)
            {
                looks.TryAdd(Appearance.Skeleton(known), known);
            }
        }

        return looks.GetValueOrDefault(Appearance.Skeleton(name));
    }

    /// <summary>The nearest of the names, as <see cref="Nearest.To"/> finds it; null when none is near, or when enough was
    /// compared.</summary>
    public string? NearestTo(string name)
    {
        if (Steps >= MostSteps)
        {
            return null;
        }

        string? best = null;
        var least = Nearest.Bound(name);
        var written = Nearest.Fold(name);
        folded ??= Array.ConvertAll(names, Nearest.Fold);
        for (var at = 0; at < names.Length; at++)
        {
            Steps++;
            if (Nearest.IsTooFar(written.Length, folded[at].Length, least))
            {
                continue;
            }

            Steps += written.Length * folded[at].Length;
            var distance = Nearest.Distance(written, folded[at], least);
            if (distance < least)
            {
                (best, least) = (names[at], distance);
            }
        }

        return best;
    }
}
