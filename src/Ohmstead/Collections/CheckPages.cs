using System.Reflection;
using Ohmstead.Assessment.Checks;
using Ohmstead.Records.Findings;

namespace Ohmstead.Collections;

/// <summary>The pages of all checks: why, a wrong and a right example, what to do.</summary>
internal static class CheckPages
{
    /// <summary>Each check by name, and where its page lies.</summary>
    /// <remarks>A page is named after its check (records) or after the class of its check (assessment); both end as the check's
    /// name.</remarks>
    public static Dictionary<string, (Assembly Assembly, string Resource)> All()
    {
        var pages = new Dictionary<string, (Assembly, string)>(StringComparer.Ordinal);
        foreach (var assembly in new[] { typeof(RecordChecks).Assembly, typeof(CheckCatalogue).Assembly, typeof(CheckPages).Assembly })
        {
            foreach (var resource in assembly.GetManifestResourceNames().Where(name => name.EndsWith(".md", StringComparison.Ordinal)))
            {
                var stem = resource[..^3];
                stem = stem[(stem.LastIndexOfAny(['.', '/']) + 1)..];
                pages[Hyphened(stem)] = (assembly, resource);
            }
        }

        return pages;
    }

    /// <summary>The text of a page.</summary>
    public static string Text((Assembly Assembly, string Resource) page)
    {
        using var stream = page.Assembly.GetManifestResourceStream(page.Resource)!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }

    private static string Hyphened(string name) =>
        string.Concat(
            name.Select((c, i) => char.IsAsciiLetterUpper(c) ? (i == 0 ? string.Empty : "-") + char.ToLowerInvariant(c) : c.ToString())
        );
}
