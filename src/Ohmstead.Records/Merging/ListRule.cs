using System.Collections.Frozen;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Records.Merging;

/// <summary>How the items of a list are known again, and what of an item is one fact.</summary>
/// <param name="List">The key of the list.</param>
/// <param name="What">What an item is called in a message.</param>
internal sealed record ListRule(string List, string What)
{
    // What a reading or a proof may be a reading of.
    private static readonly FrozenSet<string> Quantities = BenchShape
        .Reading.Keys.Concat(BenchShape.Proof.Keys)
        .Where(key =>
            key.Kind == ValueKind.Indication
            || key == BenchShape.Result
            || key == BenchShape.Hours
            || key == BenchShape.Frequency
            || key == BenchShape.Temperature
        )
        .Select(key => key.Name)
        .ToFrozenSet(StringComparer.Ordinal);

    /// <summary>The keys by which an item is known again, the strictest first; ? stands for the names of the quantities that were
    /// read.</summary>
    internal string[][] Known { get; init; } = [];

    /// <summary>Whether the first of them is a name, which no other item may have.</summary>
    internal bool IsName { get; init; }

    /// <summary>The key of the day on which it happened, by which items of two people are put in order; else null.</summary>
    internal string? Day { get; init; }

    /// <summary>The keys that stand beside the fact: two people may change two of them.</summary>
    internal string[] Beside { get; init; } = [];

    /// <summary>Whether each key stands for itself, but for those of <see cref="Fact"/>.</summary>
    internal bool Free { get; init; }

    /// <summary>The keys that are one fact together, where the others stand for themselves.</summary>
    internal string[] Fact { get; init; } = [];

    /// <summary>Whether a key is part of the one fact that an item tells: that is changed by one person or by nobody.</summary>
    internal bool IsFact(string key) => Free ? Fact.Contains(key) : !Beside.Contains(key);

    /// <summary>What an item is known by.</summary>
    /// <param name="item">The item.</param>
    /// <param name="keys">The keys.</param>
    internal static string NameOf(Piece item, string[] keys)
    {
        var said = keys.Select(key =>
            key != "?" ? item.TextAt(key)
            : item.Value is Nodes.MappingNode mapping
                ? string.Join('+', mapping.Entries.Select(entry => entry.Key).Where(Quantities.Contains).Order(StringComparer.Ordinal))
            : null
        );
        return string.Join('\u0001', said);
    }
}
