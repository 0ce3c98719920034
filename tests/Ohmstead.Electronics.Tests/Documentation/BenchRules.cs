using System.Text.RegularExpressions;

namespace Ohmstead.Electronics.Tests.Documentation;

/// <summary>Which rules of the bench work with a type of the library, from their source files.</summary>
internal static partial class BenchRules
{
    private static readonly IReadOnlyList<(string Name, string Text)> All =
    [
        .. Directory
            .EnumerateFiles(
                Path.Combine(RulesPageTests.Root(), "src", "Ohmstead.Assessment", "Reckoning"),
                "*Rule.cs",
                SearchOption.AllDirectories
            )
            .Select(File.ReadAllText)
            .Select(text => (Name().Match(text).Groups["name"].Value, text))
            .Where(rule => rule.Item1.Length > 0)
            .OrderBy(rule => rule.Item1, StringComparer.Ordinal),
    ];

    /// <summary>The names of the rules that call a type, in order.</summary>
    internal static IReadOnlyList<string> For(string type) => [.. All.Where(rule => Calls(rule.Text, type)).Select(rule => rule.Name)];

    // The point may stand on the next line.
    private static bool Calls(string text, string type)
    {
        var at = text.IndexOf(type, StringComparison.Ordinal);
        while (at >= 0)
        {
            var behind = text.AsSpan(at + type.Length).TrimStart();
            if (behind.StartsWith('.') && text[at - 1] is not '.' && !char.IsLetterOrDigit(text[at - 1]))
            {
                return true;
            }

            at = text.IndexOf(type, at + 1, StringComparison.Ordinal);
        }

        return false;
    }

    [GeneratedRegex(@"ReckonRule Rule \{ get; \} =\s*new\(\s*""(?<name>[a-z-]+)""", RegexOptions.ExplicitCapture)]
    private static partial Regex Name();
}
