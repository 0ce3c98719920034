using System.Text.RegularExpressions;

namespace Ohmstead.Electronics.Tests.Documentation;

/// <summary>What one source file of the library says of itself: its public types with their first words, and the sources it
/// cites.</summary>
internal sealed partial record RuleFile(string Folder, string Name, string Summary, IReadOnlyList<RuleSource> Sources)
{
    /// <summary>All files of the library that hold a public type with a rule, by folder and name.</summary>
    internal static IReadOnlyList<RuleFile> All(string library) =>
        [
            .. Directory
                .EnumerateFiles(library, "*.cs", SearchOption.AllDirectories)
                .Where(file => !file.Contains(Path.DirectorySeparatorChar + "obj" + Path.DirectorySeparatorChar, StringComparison.Ordinal))
                .Select(file =>
                    Read(Path.GetFileName(Path.GetDirectoryName(file))!, Unbroken().Replace(File.ReadAllText(file), string.Empty))
                )
                .OfType<RuleFile>()
                .OrderBy(file => file.Folder, StringComparer.Ordinal)
                .ThenBy(file => file.Name, StringComparer.Ordinal),
        ];

    private static RuleFile? Read(string folder, string text)
    {
        var sources = Citation()
            .Matches(text)
            .Select(match => new RuleSource(
                match.Groups["basis"].Value switch
                {
                    "Published" => "read in the source",
                    "FromMemory" => "from memory",
                    _ => "common practice",
                },
                match.Groups["clause"].Success
                    ? $"{match.Groups["title"].Value}, {match.Groups["clause"].Value}"
                    : match.Groups["title"].Value
            ))
            .Concat(
                text.Contains("Source.CommonPractice", StringComparison.Ordinal)
                    ? [new("common practice", "common practice")]
                    : Array.Empty<RuleSource>()
            )
            .Distinct()
            .ToArray();
        var type = PublicType().Match(text);
        return sources.Length == 0 || !type.Success
            ? null
            : new(folder, type.Groups["name"].Value, Plain(type.Groups["summary"].Value), sources);
    }

    private static string Plain(string summary) =>
        Spaces().Replace(Tags().Replace(summary.Replace("///", " ", StringComparison.Ordinal), "$1"), " ").Trim();

    [GeneratedRegex("""Source\.(?<basis>Published|FromMemory|Practice)\(\s*"(?<title>[^"]*)"(?:,\s*"(?<clause>[^"]*)")?""")]
    private static partial Regex Citation();

    [GeneratedRegex(
        @"/// <summary>(?<summary>(?:(?!</summary>).)*)</summary>(?:(?!\n(?:public|internal) )[\s\S])*?\npublic "
            + @"(?:static |sealed |abstract |readonly |partial )*(?:record struct|record|class|struct|enum) (?<name>\w+)",
        RegexOptions.Singleline
    )]
    private static partial Regex PublicType();

    [GeneratedRegex("""<(?:see|paramref|c)[^>]*?(?:cref|name)?=?"?([\w.]*)"?\s*/?>|</c>""")]
    private static partial Regex Tags();

    // Where a long text goes on in the next line.
    [GeneratedRegex(@"""\s*\+\s*""")]
    private static partial Regex Unbroken();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();
}

/// <summary>A source as cited.</summary>
/// <param name="Basis">How well the figure is known to stand there.</param>
/// <param name="Title">The citation.</param>
internal sealed record RuleSource(string Basis, string Title);
