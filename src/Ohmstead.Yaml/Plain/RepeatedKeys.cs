using System.Runtime.InteropServices;
using Ohmstead.Records.Nodes;

namespace Ohmstead.Yaml.Plain;

/// <summary>Finds a key that stands twice in one mapping, in linear time however many keys there are.</summary>
/// <param name="entries">All open entries.</param>
/// <param name="first">The index of the mapping's first entry among them.</param>
internal ref struct RepeatedKeys(List<MappingEntry> entries, int first)
{
    // Up to here a look at each key costs less than a table.
    private const int Few = 16;

    private Dictionary<string, MappingEntry>? table;

    /// <summary>The earlier entry with this key, or null.</summary>
    internal readonly MappingEntry? Find(string key)
    {
        if (table is not null)
        {
            return table.TryGetValue(key, out var known) ? known : null;
        }

        foreach (var entry in CollectionsMarshal.AsSpan(entries)[first..])
        {
            if (string.Equals(entry.Key, key, StringComparison.Ordinal))
            {
                return entry;
            }
        }

        return null;
    }

    /// <summary>Takes note of the entry that was just added to the list.</summary>
    internal void Added()
    {
        if (table is not null)
        {
            table.Add(entries[^1].Key, entries[^1]);
        }
        else if (entries.Count - first > Few)
        {
            table = new Dictionary<string, MappingEntry>(StringComparer.Ordinal);
            foreach (var entry in CollectionsMarshal.AsSpan(entries)[first..])
            {
                table.Add(entry.Key, entry);
            }
        }
    }
}
