using System.Collections.Immutable;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Basis;

/// <summary>Names that entries refer to others by.</summary>
internal static class NamesIn
{
    /// <summary>Adds the names in entries, in their order; those that name nothing are passed over.</summary>
    /// <param name="names">The names so far.</param>
    /// <param name="entries">The entries.</param>
    /// <param name="name">The name in an entry, or null.</param>
    /// <returns>The names.</returns>
    internal static List<Written<string>> And<T>(
        this List<Written<string>> names,
        ImmutableArray<T> entries,
        Func<T, Written<string>?> name
    )
        where T : class
    {
        foreach (var entry in entries)
        {
            if (name(entry) is { } named)
            {
                names.Add(named);
            }
        }

        return names;
    }
}
