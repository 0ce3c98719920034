using Ohmstead.Records.Model;
using Ohmstead.Records.Text;

namespace Ohmstead.Assessment.Checks.Basis;

/// <summary>Names of one list that can be taken for each other by a reader, or by a system that does not tell capitals.</summary>
internal static class NameLooks
{
    /// <summary>Each name that looks like an earlier one of the list without being it, or differs from it by capitals alone, with that
    /// one.</summary>
    /// <param name="names">The list.</param>
    internal static IEnumerable<(Written<string> Name, Written<string> Other)> FindPairs(IEnumerable<Written<string>> names)
    {
        // Most lists have no letter that could be taken for another, and no small one.
        Written<string>[] all = [.. names];
        if (Array.TrueForAll(all, static name => LookOf(name.Value) == name.Value))
        {
            yield break;
        }

        var looks = Array.ConvertAll(all, static name => LookOf(name.Value));
        var first = new Dictionary<string, Written<string>>(all.Length, StringComparer.Ordinal);
        for (var at = 0; at < all.Length; at++)
        {
            if (!first.TryAdd(looks[at], all[at]) && first[looks[at]].Value != all[at].Value)
            {
                yield return (all[at], first[looks[at]]);
            }
        }
    }

    /// <summary>What is wrong, and what to do.</summary>
    internal static (string Message, string NextStep) Say(string name, string other) =>
        (
            name.Equals(other, StringComparison.OrdinalIgnoreCase)
                ? $"'{name}' differs from '{other}' by capitals alone"
                : $"'{name}' looks like '{other}' but has {Appearance.Difference(name, other)}",
            $"write {other} if it is the same, or a name that cannot be taken for it"
        );

    private static string LookOf(string name) => Appearance.Of(name).ToUpperInvariant();
}
