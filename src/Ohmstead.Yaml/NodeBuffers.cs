using Ohmstead.Records.Nodes;

namespace Ohmstead.Yaml;

/// <summary>What one reader keeps from file to file so that it is not allocated again.</summary>
internal sealed class NodeBuffers
{
    private const int MostNames = 4096;
    private const int LongestName = 64;

    private readonly Dictionary<string, string> names = new(StringComparer.Ordinal);

    /// <summary>The entries of all mappings that are open at the moment, the innermost last.</summary>
    internal List<MappingEntry> Entries { get; } = [];

    /// <summary>The items of all lists that are open at the moment, the innermost last.</summary>
    internal List<Node> Items { get; } = [];

    /// <summary>One string for all equal keys: a collection has a few dozen keys and millions of uses of them.</summary>
    internal string Intern(string name)
    {
        if (names.TryGetValue(name, out var known))
        {
            return known;
        }

        if (names.Count < MostNames && name.Length <= LongestName)
        {
            names.Add(name, name);
        }

        return name;
    }

    internal void Clear()
    {
        Entries.Clear();
        Items.Clear();
    }
}
