namespace Ohmstead.Records.Model;

/// <summary>Names that stand in a list of a file but whose entries could not be read. Reading has said why; nobody need be told again that they are missing.</summary>
/// <param name="Names">The names, as written.</param>
/// <param name="HasNameless">True when an entry was left out whose name is not known: it can be any.</param>
public sealed record UnreadNames(IReadOnlyList<string> Names, bool HasNameless)
{
    /// <summary>Everything was read.</summary>
    public static UnreadNames None { get; } = new([], false);

    /// <summary>Nothing was read.</summary>
    public static UnreadNames All { get; } = new([], true);

    /// <summary>Whether a name may be that of an entry that was left out.</summary>
    public bool MayHold(string name) => HasNameless || Names.Contains(name, StringComparer.Ordinal);
}
