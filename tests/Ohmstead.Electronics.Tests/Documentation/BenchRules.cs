using System.Text.RegularExpressions;

namespace Ohmstead.Electronics.Tests.Documentation;

/// <summary>Which rules of the bench work with a type of the library, from their source files.</summary>
internal static partial class BenchRules
{
    private static readonly IReadOnlyList<(string Name, string Text)> All =
    [
        .. Directory.EnumerateFiles(Path.Combine(RulesPageTests.Root(), "src", "Ohmstead.Assessment", "Reckoning"), "*Rule.cs", SearchOption.AllDirectories)
            .Select(File.ReadAllText)
            .Select(text => (Name().Match(text).Groups["name"].Value, text))
            .Where(rule => rule.Item1.Length > 0)
            .OrderBy(rule => rule.Item1, StringComparer.Ordinal),
    ];

    /// <summary>The names of the rules that call a type, in order.</summary>
    internal static IReadOnlyList<string> For(string type) => [.. All.Where(rule => Calls(rule.Text, type)).Select(rule => rule.Name)];

    private static bool Calls(string text, string type)
    {
        for (var at = text.IndexOf(type + ".", StringComparison.Ordinal); at >= 0; at = text.IndexOf(type + ".", at + 1, StringComparison.Ordinal))
        {
            if (text[at - 1] is not '.' && !char.IsLetterOrDigit(text[at - 1]))
            {
                return true;
            }
        }

        return false;
    }

    [GeneratedRegex(@"ReckonRule Rule \{ get; \} = new\(\s*""(?<name>[a-z-]+)""", RegexOptions.ExplicitCapture)]
    private static partial Regex Name();
}
