using System.Collections.Frozen;

namespace Ohmstead.Records.Model;

/// <summary>Names that stand in a list of a file but whose entries could not be read. Reading has said why; nobody need be told again that
/// they are missing.</summary>
/// <param name="Names">The names, as written.</param>
/// <param name="HasNameless">True when an entry was left out whose name is not known: it can be any.</param>
public sealed record UnreadNames(IReadOnlyCollection<string> Names, bool HasNameless)
{
    // A list of which nothing could be read may be long, and is asked for each name that an entry uses.
    private readonly FrozenSet<string> all = Names.ToFrozenSet(StringComparer.Ordinal);

    /// <summary>Everything was read.</summary>
    public static UnreadNames None { get; } = new([], false);

    /// <summary>Nothing was read.</summary>
    public static UnreadNames All { get; } = new([], true);

    /// <summary>True when an entry was left out.</summary>
    public bool IsAny => HasNameless || Names.Count > 0;

    /// <summary>Whether a name may be that of an entry that was left out.</summary>
    public bool MayHold(string name) => HasNameless || all.Contains(name);
}
