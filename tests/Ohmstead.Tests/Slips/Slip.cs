using System.Globalization;
using System.Text.RegularExpressions;

namespace Ohmstead.Tests.Slips;

/// <summary>One slip in one file of the collection of the slips, the one message that comes of it, and the text that the message leads
/// to.</summary>
/// <param name="Theme">The theme of its file.</param>
/// <param name="Name">The slip in words.</param>
/// <param name="Path">The file.</param>
/// <param name="Was">The text as it is; its first place is meant.</param>
/// <param name="Put">The text as somebody might write it.</param>
/// <param name="Mended">The text that the message leads to.</param>
/// <param name="Told">Place, severity, check and message: <c>16:104 error key-unknown: ...</c>.</param>
/// <param name="Next">The next step.</param>
/// <param name="Judged">Whether the line is right, the cause named, and the slip mended at first try, as a person judges it who reads the
/// message alone.</param>
internal sealed partial record Slip(
    string Theme,
    string Name,
    string Path,
    string Was,
    string Put,
    string Mended,
    string Told,
    string Next,
    (bool Line, bool Cause, bool Mended) Judged
)
{
    /// <summary>True where the mended text holds words that the reader alone can know, such as the day that it was.</summary>
    public bool IsInOwnWords { get; init; }

    private static readonly string Folder = System.IO.Path.Combine(AppContext.BaseDirectory, "Slips");

    /// <summary>The files of the collection, without a slip.</summary>
    public static IReadOnlyList<(string Path, string Text)> Collection { get; } =
    [
        .. Files()
            .Matches(File.ReadAllText(System.IO.Path.Combine(Folder, "collection.md")))
            .Select(file => (file.Groups["path"].Value, file.Groups["text"].Value)),
    ];

    /// <summary>All slips, theme by theme.</summary>
    public static IReadOnlyList<Slip> All { get; } =
    [.. Directory.GetFiles(Folder, "0*.md").Order(StringComparer.Ordinal).SelectMany(Read)];

    /// <summary>The text of the file without a slip.</summary>
    public string Sound => Collection.Single(file => file.Path == Path).Text;

    /// <summary>The text of the file with the slip in it, or with what mends it.</summary>
    public string With(string put)
    {
        var at = Sound.IndexOf(Was, StringComparison.Ordinal);
        Assert.True(at >= 0, $"'{Was}' does not stand in {Path}");
        return string.Concat(Sound.AsSpan(0, at), put, Sound.AsSpan(at + Was.Length));
    }

    private static IEnumerable<Slip> Read(string file)
    {
        var sections = File.ReadAllText(file).Split("\n## ");
        var theme = sections[0].TrimStart('#', ' ').Split('\n')[0];
        return sections.Skip(1).Select(section => Read(theme, section));
    }

    private static Slip Read(string theme, string section)
    {
        var match = Section().Match(section);
        Assert.True(match.Success, $"this slip cannot be read: {section}");
        var lines = match.Groups["lines"].Value.Split('\n')[..^1];
        var mended = lines.Any(line => line.StartsWith('=')) ? Side(lines, '=') : Side(lines, '-');
        return new(
            theme,
            match.Groups["name"].Value,
            match.Groups["path"].Value,
            Side(lines, '-'),
            Side(lines, '+'),
            mended,
            match.Groups["told"].Value,
            match.Groups["next"].Value,
            (match.Groups["line"].Value == "yes", match.Groups["cause"].Value == "yes", match.Groups["mended"].Value == "yes")
        )
        {
            IsInOwnWords = match.Groups["own"].Success,
        };
    }

    private static string Side(string[] lines, char sign) =>
        Named().Replace(string.Join('\n', lines.Where(line => line[0] == sign).Select(line => line.Length > 2 ? line[2..] : "")), Letter);

    // ‹U+00A0› stands for a letter that nobody would see.
    private static string Letter(Match named) =>
        ((char)int.Parse(named.Groups["code"].Value, NumberStyles.HexNumber, CultureInfo.InvariantCulture)).ToString();

    [GeneratedRegex("^```yaml (?<path>.+)\n(?<text>(.*\n)+?)```$", RegexOptions.Multiline | RegexOptions.ExplicitCapture)]
    private static partial Regex Files();

    [GeneratedRegex(
        "^(?<name>.+)\n\n```diff (?<path>.+)\n(?<lines>(.*\n)+?)```\n\n(?<told>.+)\n= (?<next>.+)\n\n"
            + "right line (?<line>yes|no), cause (?<cause>yes|no), mended (?<mended>yes|no)(?<own>, in own words)?",
        RegexOptions.ExplicitCapture
    )]
    private static partial Regex Section();

    [GeneratedRegex("‹U\\+(?<code>[0-9A-F]{4})›")]
    private static partial Regex Named();
}
