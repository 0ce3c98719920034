using System.Collections.Immutable;
using System.Text;
using Ohmstead.Records.Editing;
using Ohmstead.Records.Entries;
using Ohmstead.Records.Nodes;

namespace Ohmstead.Records.Merging;

/// <summary>
/// A part of a record with the whole lines that it stands on: an entry of a mapping, an item of a list, or two that contradict each other.
/// What is taken over into a merged record is such lines as they stand.
/// </summary>
/// <param name="Lead">The remarks and empty lines above it.</param>
/// <param name="Own">Its lines; of what holds others, those before the first of them.</param>
/// <param name="Key">Its key, or null for an item of a list.</param>
/// <param name="Value">What it says.</param>
internal sealed record Piece(string Lead, string Own, string? Key, Node Value)
{
    private readonly Lazy<string> meaning = new(() => MeaningOf(Value));

    /// <summary>What it holds, where that stands on lines of its own.</summary>
    internal ImmutableArray<Piece> Inside { get; init; } = [];

    /// <summary>The remarks below the last that it holds.</summary>
    internal string Tail { get; init; } = string.Empty;

    /// <summary>Two that contradict each other, in place of one; then nothing else is said here.</summary>
    internal Opposed? Opposed { get; init; }

    /// <summary>Whether what it holds stands on lines of its own.</summary>
    internal bool IsBlock => !Inside.IsEmpty;

    /// <summary>Whether it holds keys, each on lines of its own.</summary>
    internal bool HoldsKeys => IsBlock && Value is MappingNode;

    /// <summary>Whether it holds items, each on lines of its own.</summary>
    internal bool HoldsItems => IsBlock && Value is SequenceNode;

    /// <summary>What it says, as a text to compare: the order of keys does not count, nor how it is laid out.</summary>
    internal string Meaning => meaning.Value;

    /// <summary>Its lines without what stands above it.</summary>
    internal string Body => Text(withLead: false, this);

    /// <summary>All of its lines.</summary>
    internal string Whole => Text(withLead: true, this);

    /// <summary>The piece behind a key, or null.</summary>
    internal Piece? At(string key) => Inside.FirstOrDefault(piece => piece.Key == key);

    /// <summary>The text of a single value behind a key of what it says, or null.</summary>
    internal string? TextAt(string key) => ((Value as MappingNode)?.ValueOf(key) as ScalarNode)?.Text;

    /// <summary>What it is called by some keys, as a text to compare.</summary>
    internal string NameBy(string[] keys) => KnownBy.NameOf(Value as MappingNode, keys);

    /// <summary>Two that contradict each other.</summary>
    internal static Piece Of(Opposed opposed) =>
        new(string.Empty, string.Empty, null, new ScalarNode(default, string.Empty, default)) { Opposed = opposed };

    /// <summary>What a node says, as a text to compare.</summary>
    internal static string MeaningOf(Node node)
    {
        var said = NodeTrail
            .Walk(new MappingNode(default, [new MappingEntry(default, string.Empty, node)], IsFlow: false))
            .OrderBy(one => one.Path, StringComparer.Ordinal);
        var text = new StringBuilder();
        foreach (var (path, value) in said)
        {
            text.Append(path).Append('\u0001').Append(value).Append('\u0002');
        }

        return text.ToString();
    }

    private static string Text(bool withLead, Piece piece)
    {
        if (!piece.IsBlock)
        {
            return withLead ? piece.Lead + piece.Own : piece.Own;
        }

        var text = new StringBuilder(withLead ? piece.Lead : string.Empty).Append(piece.Own);
        foreach (var inner in piece.Inside)
        {
            text.Append(inner.Whole);
        }

        return text.Append(piece.Tail).ToString();
    }

    /// <inheritdoc/>
    public bool Equals(Piece? other) => ReferenceEquals(this, other);

    /// <inheritdoc/>
    public override int GetHashCode() => System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(this);
}

/// <summary>Two that contradict each other: of each side what it says there, which may be nothing.</summary>
/// <param name="Above">What the first side says.</param>
/// <param name="Below">What the second says.</param>
/// <param name="AboveName">The day and the initials of the first, or another word for it.</param>
/// <param name="BelowName">Those of the second.</param>
internal sealed record Opposed(ImmutableArray<Piece> Above, ImmutableArray<Piece> Below, string AboveName, string BelowName);
