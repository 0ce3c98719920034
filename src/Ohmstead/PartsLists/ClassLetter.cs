using System.Collections.Frozen;
using System.Collections.Immutable;
using Ohmstead.Records.Model;

namespace Ohmstead.PartsLists;

/// <summary>What the class letters of a reference designator say about the kind of a part, as far as they are certain. The table of kinds
/// has the letters.</summary>
internal static class ClassLetter
{
    private static readonly FrozenDictionary<string, ImmutableArray<PartKind>> ByLetters = Group(_ => true);
    private static readonly FrozenDictionary<string, ImmutableArray<PartKind>> Certain = Group(letters => letters.IsCertain);

    /// <summary>The one kind that the letters mean, or null.</summary>
    public static PartKind? Kind(string letters) => Certain.TryGetValue(letters, out var kinds) ? kinds[0] : null;

    /// <summary>The kinds that the letters can mean; all kinds where nothing is known of them.</summary>
    public static IReadOnlyList<PartKind> Candidates(string letters) =>
        Known(letters) is { Count: > 0 } known ? known : PartKinds.All.Values;

    /// <summary>The kinds that the letters can mean, the likeliest first; none where nothing is known of them.</summary>
    public static IReadOnlyList<PartKind> Known(string letters) => ByLetters.TryGetValue(letters, out var kinds) ? kinds : [];

    private static FrozenDictionary<string, ImmutableArray<PartKind>> Group(Func<Designation, bool> counts) =>
        PartKinds
            .All.Values.SelectMany(kind => kind.Letters.Where(counts).Select(letters => (Kind: kind, letters.Letters, letters.Rank)))
            .GroupBy(row => row.Letters, StringComparer.Ordinal)
            .ToFrozenDictionary(
                group => group.Key,
                group => group.OrderBy(row => row.Rank).Select(row => row.Kind).ToImmutableArray(),
                StringComparer.Ordinal
            );
}
