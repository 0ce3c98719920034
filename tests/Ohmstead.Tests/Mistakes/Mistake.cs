using System.Text.RegularExpressions;

namespace Ohmstead.Tests.Mistakes;

/// <summary>One slip in one file of the demo collection, and the one finding that must come of it.</summary>
/// <param name="Name">The slip in words.</param>
/// <param name="Path">The file.</param>
/// <param name="Found">The text as it is, which stands in the file at least once; its first place is meant.</param>
/// <param name="Put">The text as somebody might write it.</param>
/// <param name="Severity">error or warning.</param>
/// <param name="Check">The check that must speak.</param>
/// <param name="In">The file in which the finding stands.</param>
/// <param name="At">The text that the finding must point at, or null for the start of the file.</param>
/// <param name="AlsoIn">A second file, whose finding must name the first; null where there is none.</param>
/// <param name="Words">What its message or next step must hold.</param>
internal sealed partial record Mistake(
    string Name,
    string Path,
    string Found,
    string Put,
    string Severity,
    string Check,
    string In,
    string? At,
    string? AlsoIn,
    IReadOnlyList<string> Words
)
{
    /// <summary>All of them, in the order of the file beside this one.</summary>
    public static IReadOnlyList<Mistake> All { get; } =
    [.. File.ReadAllText(System.IO.Path.Combine(AppContext.BaseDirectory, "Mistakes", "mistakes.md")).Split("\n## ").Skip(1).Select(Read)];

    /// <summary>The file with the slip in it.</summary>
    public string Spoil(string text)
    {
        var at = text.IndexOf(Found, StringComparison.Ordinal);
        Assert.True(at >= 0, $"'{Found}' does not stand in {Path}");
        return string.Concat(text.AsSpan(0, at), Put, text.AsSpan(at + Found.Length));
    }

    /// <summary>Where the finding must stand, by line and column as an editor counts them.</summary>
    /// <param name="original">The text of the spoilt file before the slip.</param>
    /// <param name="shown">The text of the file in which the finding stands.</param>
    public (int Line, int Column) Place(string original, string shown)
    {
        if (At is null)
        {
            return (1, 1);
        }

        // In the text that was put if it is there, else its first place in the file.
        var put = In == Path ? original.IndexOf(Found, StringComparison.Ordinal) : 0;
        var at = shown.IndexOf(At, Put.Contains(At, StringComparison.Ordinal) ? put : 0, StringComparison.Ordinal);
        Assert.True(at >= 0, $"'{At}' does not stand in {In}");
        var before = shown[..at];
        return (before.Count(c => c == '\n') + 1, before[(before.LastIndexOf('\n') + 1)..].EnumerateRunes().Count() + 1);
    }

    private static Mistake Read(string section)
    {
        var diff = Diff().Match(section);
        var finding = Finding().Match(section);
        Assert.True(diff.Success && finding.Success, $"this mistake cannot be read: {section}");
        var lines = diff.Groups["lines"].Value.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        var path = diff.Groups["path"].Value;
        return new(
            section[..section.IndexOf('\n', StringComparison.Ordinal)],
            path,
            Side(lines, '-'),
            Side(lines, '+'),
            finding.Groups["severity"].Value,
            finding.Groups["check"].Value,
            finding.Groups["in"] is { Success: true } other ? other.Value : path,
            finding.Groups["at"] is { Success: true } at ? at.Value : null,
            finding.Groups["also"] is { Success: true } also ? also.Value : null,
            [.. Quoted().Matches(finding.Groups["words"].Value).Select(word => word.Groups[1].Value)]
        );
    }

    private static string Side(string[] lines, char sign) =>
        string.Join('\n', lines.Where(line => line[0] == sign).Select(line => line[2..]));

    [GeneratedRegex("^```diff (?<path>.+)\n(?<lines>(.*\n)+?)```$", RegexOptions.Multiline | RegexOptions.ExplicitCapture)]
    private static partial Regex Diff();

    [GeneratedRegex(
        "^(?<severity>error|warning) (?<check>[a-z0-9-]+)( in (?<in>[^ ]+))? at (line 1|`(?<at>[^`]+)`)(, also in (?<also>[^ ]+))?: "
            + "(?<words>.+)$",
        RegexOptions.Multiline | RegexOptions.ExplicitCapture
    )]
    private static partial Regex Finding();

    [GeneratedRegex("`([^`]+)`")]
    private static partial Regex Quoted();
}
