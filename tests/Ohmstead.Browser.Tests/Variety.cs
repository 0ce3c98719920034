using System.Text.RegularExpressions;

namespace Ohmstead.Browser.Tests;

/// <summary>Chooses among pages that are made alike, so that a browser need not open each of them.</summary>
internal static partial class Variety
{
    /// <summary>The longest and the shortest page, and others until each element, class and attribute that is on any of them is on a chosen
    /// one.</summary>
    public static IReadOnlyList<ReportPage> Choose(IEnumerable<ReportPage> alike)
    {
        ReportPage[] sorted = [.. alike.OrderByDescending(page => page.Length).ThenBy(page => page.Name, StringComparer.Ordinal)];
        var features = sorted.ToDictionary(page => page, page => Features(page.Text));
        var missing = features.Values.SelectMany(feature => feature).ToHashSet(StringComparer.Ordinal);
        var chosen = new List<ReportPage>();
        for (var next = sorted[0]; ; next = chosen.Count == 1 ? sorted[^1] : sorted.MaxBy(page => features[page].Count(missing.Contains))!)
        {
            if (!chosen.Contains(next))
            {
                chosen.Add(next);
            }

            missing.ExceptWith(features[next]);
            if (missing.Count == 0 && chosen.Contains(sorted[^1]))
            {
                return chosen;
            }
        }
    }

    private static HashSet<string> Features(string html)
    {
        var features = new HashSet<string>(StringComparer.Ordinal);
        foreach (Match element in Element().Matches(html))
        {
            var name = element.Groups["name"].Value;
            features.Add(name);
            foreach (Match attribute in Attribute().Matches(element.Groups["attributes"].Value))
            {
                features.Add($"{name} {attribute.Groups["name"].Value}");
                features.UnionWith(
                    attribute.Groups["name"].Value == "class"
                        ? attribute.Groups["value"].Value.Split(' ').Select(word => $"{name}.{word}")
                        : []
                );
            }
        }

        return features;
    }

    [GeneratedRegex("""<(?<name>[a-z][a-z0-9]*)(?<attributes>(\s+[a-z-]+(="[^"]*")?)*)\s*/?>""", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Element();

    [GeneratedRegex("""(?<name>[a-z-]+)(="(?<value>[^"]*)")?""", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Attribute();
}
