using System.Text.RegularExpressions;

namespace Ohmstead.Electronics.Tests.Documentation;

/// <summary>One test of the library as its page of rules tells it: the sentence it proves, and the words above it that say against
/// what.</summary>
/// <param name="Text">The test itself, in which the names of the types it tests occur.</param>
/// <param name="File">The file's name without its ending.</param>
/// <param name="Sentence">The test's name as a sentence.</param>
/// <param name="Against">The comment above it, or empty.</param>
internal sealed partial record RuleTest(string Text, string File, string Sentence, string Against)
{
    /// <summary>All tests of a folder that have a comment above them: the ones checked against something outside.</summary>
    internal static IReadOnlyList<RuleTest> All(string folder) =>
        [
            .. Directory
                .EnumerateFiles(folder, "*Tests.cs", SearchOption.AllDirectories)
                .Order(StringComparer.Ordinal)
                .SelectMany(file => In(Path.GetFileNameWithoutExtension(file), System.IO.File.ReadAllText(file))),
        ];

    private static IEnumerable<RuleTest> In(string file, string text)
    {
        var match = Method().Match(text);
        while (match.Success)
        {
            var next = match.NextMatch();
            yield return new RuleTest(
                text[match.Index..(next.Success ? next.Index : text.Length)],
                file,
                match.Groups["name"].Value.Replace('_', ' '),
                Spaces().Replace(match.Groups["comment"].Value.Replace("//", " ", StringComparison.Ordinal), " ").Trim()
            );
            match = next;
        }
    }

    [GeneratedRegex(
        @"(?<comment>(?:^[ ]{4}//[^\n]*\n)*)(?:^[ ]{4}\[[^\n]*\n(?:^[ ]{8}[^\n]*\n)*(?:^[ ]{4}\)\]\n)?)+"
            + @"^[ ]{4}public (?:async )?\w+ (?<name>\w+)\(",
        RegexOptions.Multiline
    )]
    private static partial Regex Method();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();
}
