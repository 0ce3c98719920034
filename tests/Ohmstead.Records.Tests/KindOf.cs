using Ohmstead.Records.Model;
using Ohmstead.Records.Text;

namespace Ohmstead.Records.Tests;

/// <summary>Kinds of part by their names.</summary>
internal static class KindOf
{
    /// <summary>The kind of a name.</summary>
    internal static PartKind Named(string name) =>
        PartKinds.All.Means(name, out var kind) ? kind : throw new ArgumentException($"There is no kind '{name}'.", nameof(name));

    /// <summary>The kind of a name as a record has it.</summary>
    internal static Written<PartKind> Written(string name, Spot spot) => new(Named(name), name, spot);
}
