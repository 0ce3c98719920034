using Ohmstead.Records.Model;
using Ohmstead.Records.Text;

namespace Ohmstead.Assessment.Checks;

/// <summary>Names of one list that can be taken for each other.</summary>
internal static class NameLooks
{
    /// <summary>Each name that looks like an earlier one of the list without being it, with that one.</summary>
    /// <param name="names">The list.</param>
    internal static IEnumerable<(Written<string> Name, Written<string> Other)> Alike(IEnumerable<Written<string>> names)
    {
        // Most lists have no letter that could be taken for another.
        Written<string>[] all = [.. names];
        if (!Array.Exists(all, static name => Appearance.Of(name.Value) != name.Value))
        {
            yield break;
        }

        var first = new Dictionary<string, Written<string>>(all.Length, StringComparer.Ordinal);
        foreach (var name in all)
        {
            var look = Appearance.Of(name.Value);
            if (!first.TryAdd(look, name) && first[look].Value != name.Value)
            {
                yield return (name, first[look]);
            }
        }
    }

    /// <summary>What is wrong, and what to do.</summary>
    internal static (string Message, string NextStep) Say(string name, string other) =>
        ($"'{name}' looks like '{other}' but has {Appearance.Difference(name, other)}", $"write {other} if it is the same, or a name that cannot be taken for it");
}
