using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Limits;
using Ohmstead.Records.Model;

namespace Ohmstead.Report.Tables;

/// <summary>What most workings of a page have in common, and so is told once above them: their limit, and for each quantity the error that
/// the instrument may have. A working names its own where it is another.</summary>
internal sealed class UsualWorking
{
    // Fewer are read sooner one by one.
    private const int Fewest = 3;

    private readonly SortedDictionary<Measured, string> errors = [];

    private UsualWorking(LimitKey? limit) => Limit = limit;

    /// <summary>The limit that most of them have, or null.</summary>
    public LimitKey? Limit { get; }

    /// <summary>The errors by quantity, in order of the quantities.</summary>
    public IReadOnlyDictionary<Measured, string> Errors => errors;

    /// <summary>Looks at the verdicts that stand and at the proofs; they are told in full.</summary>
    public static UsualWorking Of(JudgedBoard board)
    {
        var limits = new Dictionary<LimitKey, int>();
        var counts = new Dictionary<(Measured, string), int>();
        foreach (var verdict in board.Places.SelectMany(place => place.Standing).Concat(board.Proofs.SelectMany(proof => proof.Verdicts)))
        {
            if (verdict.Limit is { } limit)
            {
                Count(limits, LimitKey.Of(limit));
            }

            if (UncertaintyWords.Of(verdict) is { } words)
            {
                Count(counts, (verdict.Measured, words.Error));
            }
        }

        var usual = new UsualWorking(Most(limits, out var most) ? most : null);
        foreach (var quantity in counts.GroupBy(pair => pair.Key.Item1))
        {
            if (Most(quantity, out var error))
            {
                usual.errors.Add(quantity.Key, error.Item2);
            }
        }

        return usual;
    }

    private static void Count<T>(Dictionary<T, int> counts, T one)
        where T : notnull => counts[one] = counts.GetValueOrDefault(one) + 1;

    // Of those that are as many, the first that was read.
    private static bool Most<T>(IEnumerable<KeyValuePair<T, int>> counts, out T most)
    {
        var best = 0;
        most = default!;
        foreach (var (one, count) in counts)
        {
            if (count > best)
            {
                (most, best) = (one, count);
            }
        }

        return best >= Fewest;
    }
}

/// <summary>What tells limits of a page apart.</summary>
/// <param name="Kind">Which kind of limit it is.</param>
/// <param name="Origin">What it is taken from.</param>
/// <param name="Source">The source in words.</param>
internal readonly record struct LimitKey(LimitKind Kind, string Origin, string Source)
{
    /// <summary>That of a limit.</summary>
    public static LimitKey Of(Limit limit) => new(limit.Kind, limit.Origin.Text, limit.Source.Text);
}
