using Ohmstead.Records.Nodes;

namespace Ohmstead.Records.Binding;

/// <summary>
/// Keeps what the items of lists were read as, for whoever reads two states of one record: an item that is the same node in both is read
/// once. Nothing is kept of a record in which something was found, so that each finding is told of each state.
/// </summary>
/// <remarks>An instance is used by one thread at a time, for records of boards alone: an item of a design knows its file.</remarks>
public sealed class ReadItems
{
    private readonly Dictionary<Node, object> known = new(ReferenceEqualityComparer.Instance);

    /// <summary>Forgets the record before.</summary>
    public void Begin() => known.Clear();

    /// <summary>What an item was read as; null where it was not, or as something else: there is one way to read each kind of
    /// item.</summary>
    internal T? Find<T>(Node node)
        where T : class => known.GetValueOrDefault(node) as T;

    /// <summary>Keeps what an item was read as.</summary>
    internal void Add(Node node, object item) => known[node] = item;
}
