using System.Collections.Frozen;

namespace Ohmstead.Records.Shapes;

/// <summary>What a mapping of a record may hold. The readers follow it and the JSON schemas in <c>schema/</c> are written from it, so they
/// cannot disagree.</summary>
public sealed class Shape
{
    private readonly FrozenDictionary<string, int> places;
    private readonly Key[] keys;
    private readonly int[] needed;

    /// <summary>Describes a mapping.</summary>
    /// <param name="name">What the mapping is called in a message: 'part', 'reading'.</param>
    /// <param name="description">One sentence for people and editors.</param>
    /// <param name="example">A whole mapping as a person would write it.</param>
    /// <param name="keys">The keys it may hold, in their canonical order.</param>
    public Shape(string name, string description, string example, IReadOnlyList<Key> keys)
    {
        Name = name;
        Description = description;
        Example = example;
        this.keys = [.. keys];
        needed = [.. Enumerable.Range(0, keys.Count).Where(place => keys[place].IsNeeded)];
        places = keys.Select((key, place) => (key.Name, place))
            .ToFrozenDictionary(pair => pair.Name, pair => pair.place, StringComparer.Ordinal);
    }

    /// <summary>What the mapping is called in a message.</summary>
    public string Name { get; }

    /// <summary>One sentence for people and editors.</summary>
    public string Description { get; }

    /// <summary>A whole mapping as a person would write it.</summary>
    public string Example { get; }

    /// <summary>The keys it may hold, in their canonical order.</summary>
    public IReadOnlyList<Key> Keys => keys;

    /// <summary>The place of a key in <see cref="Keys"/>, or -1 when the mapping may not hold it.</summary>
    public int PlaceOf(string name) => places.TryGetValue(name, out var place) ? place : -1;

    /// <summary>The key at a place.</summary>
    internal Key KeyAt(int place) => keys[place];

    /// <summary>Whether a key stands at a place, which may lie behind the last.</summary>
    internal bool IsAt(int place, string name) => place < keys.Length && keys[place].Name == name;

    /// <summary>The places of the keys that must be written.</summary>
    internal ReadOnlySpan<int> Needed => needed;
}
