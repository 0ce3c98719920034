using System.Collections.Immutable;

namespace Ohmstead.Assessment.History;

/// <summary>The first item of each name in a list. A few are looked for one by one; whoever asks for more gets a table, made
/// once.</summary>
/// <typeparam name="T">What is looked for.</typeparam>
/// <param name="items">All of them.</param>
/// <param name="nameOf">The name of one.</param>
internal sealed class FirstByName<T>(ImmutableArray<T> items, Func<T, string> nameOf)
    where T : class
{
    // Up to here a look at each costs less than a table.
    private const int Few = 16;

    private int asked;
    private Dictionary<string, T>? table;

    /// <summary>The first item of a name, or null.</summary>
    internal T? Find(string name)
    {
        if (++asked > Few)
        {
            return (table ??= Table()).GetValueOrDefault(name);
        }

        foreach (var item in items)
        {
            if (nameOf(item) == name)
            {
                return item;
            }
        }

        return null;
    }

    private Dictionary<string, T> Table()
    {
        var all = new Dictionary<string, T>(items.Length, StringComparer.Ordinal);
        foreach (var item in items)
        {
            all.TryAdd(nameOf(item), item);
        }

        return all;
    }
}
