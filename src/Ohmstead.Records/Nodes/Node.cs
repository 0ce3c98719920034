using System.Collections.Immutable;
using Ohmstead.Records.Text;

namespace Ohmstead.Records.Nodes;

/// <summary>A piece of a record's front matter with the place where it stands. Nothing is interpreted: every scalar is its text.</summary>
/// <param name="Spot">Where it starts.</param>
public abstract record Node(Spot Spot);

/// <summary>A single value, exactly as text: <c>0412</c>, <c>1E3</c> and <c>no</c> stay what they are.</summary>
/// <param name="Spot">Where it starts; for a quoted scalar the place of the opening quote.</param>
/// <param name="Text">The text, unquoted and unescaped.</param>
/// <param name="Style">How it was written.</param>
public sealed record ScalarNode(Spot Spot, string Text, ScalarWriting Style) : Node(Spot)
{
    /// <summary>True when nothing stands where a value is expected: an empty plain scalar, <c>~</c> or <c>null</c>.</summary>
    public bool IsNothing => Style == ScalarWriting.Plain && Text is "" or "~" or "null" or "Null" or "NULL";
}

/// <summary>A mapping: keys with values, in the order written. No key occurs twice.</summary>
/// <param name="Spot">Where it starts.</param>
/// <param name="Entries">The entries in order.</param>
/// <param name="IsFlow">True for <c>{ a: b }</c>, false for indented lines.</param>
public sealed record MappingNode(Spot Spot, ImmutableArray<MappingEntry> Entries, bool IsFlow) : Node(Spot)
{
    /// <summary>The value behind a key, or null when the key is not written.</summary>
    public Node? ValueOf(string key)
    {
        foreach (var entry in Entries)
        {
            if (entry.Key == key)
            {
                return entry.Value;
            }
        }

        return null;
    }
}

/// <summary>A list of nodes, in the order written.</summary>
/// <param name="Spot">Where it starts.</param>
/// <param name="Items">The items in order.</param>
/// <param name="IsFlow">True for <c>[a, b]</c>, false for dashes.</param>
public sealed record SequenceNode(Spot Spot, ImmutableArray<Node> Items, bool IsFlow) : Node(Spot);

/// <summary>One entry of a mapping. A value, since a record has hundreds of them.</summary>
/// <param name="KeySpot">Where the key stands.</param>
/// <param name="Key">The key's text.</param>
/// <param name="Value">The value.</param>
public readonly record struct MappingEntry(Spot KeySpot, string Key, Node Value);

/// <summary>How a scalar was written.</summary>
public enum ScalarWriting
{
    /// <summary>Without quotes.</summary>
    Plain,

    /// <summary>In single quotes.</summary>
    SingleQuoted,

    /// <summary>In double quotes.</summary>
    DoubleQuoted,

    /// <summary>As an indented block (<c>|</c> or <c>&gt;</c>).</summary>
    Block,
}
