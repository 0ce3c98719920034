using System.Collections.Immutable;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks;

/// <summary>Names that entries refer to others by.</summary>
internal static class NamesIn
{
    /// <summary>The names in entries, in their order; those that name nothing are passed over.</summary>
    /// <param name="entries">The entries.</param>
    /// <param name="name">The name in an entry, or null.</param>
    internal static IEnumerable<Written<string>> Of<T>(ImmutableArray<T> entries, Func<T, Written<string>?> name)
        where T : class
    {
        foreach (var entry in entries)
        {
            if (name(entry) is { } named)
            {
                yield return named;
            }
        }
    }
}
