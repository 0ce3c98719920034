using Ohmstead.Records.Nodes;

namespace Ohmstead.Records.Editing.Layout;

/// <summary>Whether two readings say the same in the same way: kinds, values, quotes, keys and order. Places do not count.</summary>
internal static class NodeEquality
{
    /// <summary>Whether two nodes say the same.</summary>
    internal static bool Same(Node one, Node other) =>
        (one, other) switch
        {
            (ScalarNode a, ScalarNode b) => a.Text == b.Text && a.Style == b.Style,
            (SequenceNode a, SequenceNode b) => a.IsFlow == b.IsFlow
                && a.Items.Length == b.Items.Length
                && a.Items.Zip(b.Items).All(pair => Same(pair.First, pair.Second)),
            (MappingNode a, MappingNode b) => a.IsFlow == b.IsFlow
                && a.Entries.Length == b.Entries.Length
                && a.Entries.Zip(b.Entries).All(pair => pair.First.Key == pair.Second.Key && Same(pair.First.Value, pair.Second.Value)),
            _ => false,
        };
}
