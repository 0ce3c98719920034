using Ohmstead.Records.Model;

namespace Ohmstead.Tests.PartsLists;

/// <summary>Kinds of part by their names.</summary>
internal static class KindOf
{
    /// <summary>The kind of a name.</summary>
    internal static PartKind Named(string name) =>
        PartKinds.All.Means(name, out var kind) ? kind : throw new ArgumentException($"There is no kind '{name}'.", nameof(name));
}
