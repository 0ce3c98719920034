using System.Globalization;
using System.Text.RegularExpressions;

namespace Ohmstead.History.Tests.Releases;

/// <summary>What CHANGELOG.md says: the releases, the newest first.</summary>
/// <param name="Releases">The chapters.</param>
internal sealed record Changelog(IReadOnlyList<ChangelogRelease> Releases)
{
    public static Changelog Parse(string text) => new([.. text.Split("\n## ").Skip(1).Select(ChangelogRelease.Parse)]);

    /// <summary>The places whose verdicts are told to change by a release that is later than one.</summary>
    /// <param name="version">That one.</param>
    /// <param name="folder">The collection that the places are of.</param>
    public IReadOnlySet<string> ToldSince(Version version, string folder) =>
        Releases
            .Where(release => release.Version > version)
            .SelectMany(release => release.Changes)
            .SelectMany(change => change.PlacesIn(folder))
            .ToHashSet(StringComparer.Ordinal);
}

/// <summary>A chapter of the changelog.</summary>
/// <param name="Version">The version.</param>
/// <param name="Day">Its day; null while it is not released.</param>
/// <param name="Rules">The number of the rules by which it judges.</param>
/// <param name="Format">The newest record format that it reads.</param>
/// <param name="Changes">What it may judge otherwise than the release before it.</param>
internal sealed partial record ChangelogRelease(Version Version, DateOnly? Day, int Rules, int Format, IReadOnlyList<VerdictChange> Changes)
{
    private const string Chapter = "\n### Verdicts that may change\n";

    public static ChangelogRelease Parse(string text)
    {
        var head = Head().Match(text);
        Assert.True(head.Success, $"no chapter of the changelog begins so: {text.Split('\n')[0]}");
        Assert.Contains(Chapter, text, StringComparison.Ordinal);
        var changes = text.Split(Chapter)[1].Split("\n### ")[0].Trim();
        return new(
            Version.Parse(head.Groups["version"].Value),
            head.Groups["day"].Success ? DateOnly.ParseExact(head.Groups["day"].Value, "yyyy-MM-dd", CultureInfo.InvariantCulture) : null,
            int.Parse(head.Groups["rules"].Value, CultureInfo.InvariantCulture),
            int.Parse(head.Groups["format"].Value, CultureInfo.InvariantCulture),
            changes.StartsWith("None", StringComparison.Ordinal)
                ? []
                : [.. $"\n{changes}".Split("\n- ").Skip(1).Select(change => new VerdictChange(change))]
        );
    }

    [GeneratedRegex(
        @"^(?<version>[0-9]+\.[0-9]+\.[0-9]+), (?:(?<day>[0-9]{4}-[0-9]{2}-[0-9]{2})|not released yet)\n\n"
            + @"Rules (?<rules>[0-9]+), record format (?<format>[0-9]+)\.\n"
    )]
    private static partial Regex Head();
}

/// <summary>One line of what may be judged otherwise. Behind it a remark names the kept records that show it, for the tests:
/// <c>&lt;!-- 0.1.0: CL-001 C1, CL-002 --&gt;</c>.</summary>
/// <param name="Text">The line.</param>
internal sealed partial record VerdictChange(string Text)
{
    public IEnumerable<string> PlacesIn(string folder) =>
        Remark()
            .Matches(Text)
            .Where(remark => remark.Groups["folder"].Value == folder)
            .SelectMany(remark => remark.Groups["places"].Value.Split(',', StringSplitOptions.TrimEntries));

    [GeneratedRegex("<!-- (?<folder>[0-9.]+): (?<places>[^>]+?) -->")]
    private static partial Regex Remark();
}
