using System.Text.RegularExpressions;
using Ohmstead.Tests.Documents;

namespace Ohmstead.Tests.Slips;

/// <summary>One slip on a command line or at the prompt of the bench, what is told of it, and the line that this leads to with what it then
/// writes.</summary>
/// <param name="Theme">The theme of its file.</param>
/// <param name="Name">The slip in words.</param>
/// <param name="Bench">For the prompt the board and the place where it is typed; null for a command line.</param>
/// <param name="Typed">The line as somebody may type it.</param>
/// <param name="Told">All that is told.</param>
/// <param name="Mended">The line that this leads to.</param>
/// <param name="Written">The lines that then come into the records and go, without their indentation.</param>
/// <param name="Judged">Whether the right word is named, the cause, and whether the slip is mended at first try, as a person judges it who
/// reads what is told alone.</param>
internal sealed partial record TypedSlip(
    string Theme,
    string Name,
    (string Board, string Place)? Bench,
    string Typed,
    IReadOnlyList<string> Told,
    string Mended,
    IReadOnlyList<string> Written,
    (bool Word, bool Cause, bool Mended) Judged
)
{
    private static readonly string Folder = Path.Combine(AppContext.BaseDirectory, "Slips");
    private static readonly string[] BesideTheMessage = ["  = ", "ohmstead ", "nothing was written"];

    /// <summary>All slips of command lines, theme by theme, then those of the prompt.</summary>
    public static IReadOnlyList<TypedSlip> All { get; } =
    [
        .. Directory
            .GetFiles(Folder, "*.md")
            .Where(file => char.IsAsciiDigit(Path.GetFileName(file)[0]) && Path.GetFileName(file)[0] != '0')
            .Order(StringComparer.Ordinal)
            .SelectMany(Read),
    ];

    /// <summary>True where the mended line holds words that the reader alone can know, such as the figure that was read.</summary>
    public bool IsInOwnWords { get; init; }

    /// <summary>The messages among what is told: not the next step, the way to the help, or that nothing was written.</summary>
    public IReadOnlyList<string> Messages =>
        [.. Told.Where(line => !BesideTheMessage.Any(beside => line.StartsWith(beside, StringComparison.Ordinal)))];

    /// <summary>The words of a line, as the shell or the bench takes them apart.</summary>
    public IReadOnlyList<string> Words(string line) => Bench is null ? Apart(line) : line.Split(' ', StringSplitOptions.RemoveEmptyEntries);

    private static IReadOnlyList<string> Apart(string line)
    {
        var typed = TypedLine.Of(line);
        Assert.NotNull(typed);
        return typed.Words;
    }

    private static IEnumerable<TypedSlip> Read(string file)
    {
        var sections = File.ReadAllText(file).Split("\n## ");
        var theme = sections[0].TrimStart('#', ' ').Split('\n')[0];
        return sections.Skip(1).Select(section => Read(theme, section));
    }

    private static TypedSlip Read(string theme, string section)
    {
        var match = Section().Match(section);
        Assert.True(match.Success, $"this slip cannot be read: {section}");
        var lines = match.Groups["lines"].Value.Split('\n')[..^1];
        var typed = lines.Index().Where(line => line.Item.StartsWith("$ ", StringComparison.Ordinal)).Select(line => line.Index).ToArray();
        Assert.Equal(2, typed.Length);
        var board = match.Groups["board"].Value;
        return new(
            theme,
            match.Groups["name"].Value,
            board.Length > 0 ? (board, match.Groups["place"].Value) : null,
            lines[typed[0]][2..].Replace("‹tab›", "\t", StringComparison.Ordinal),
            lines[(typed[0] + 1)..typed[1]],
            lines[typed[1]][2..],
            lines[(typed[1] + 1)..],
            (match.Groups["word"].Value == "yes", match.Groups["cause"].Value == "yes", match.Groups["mended"].Value == "yes")
        )
        {
            IsInOwnWords = match.Groups["own"].Success,
        };
    }

    [GeneratedRegex(
        "^(?<name>.+)\n\n```(console|bench (?<board>\\S+) (?<place>\\S+))\n(?<lines>(.*\n)+?)```\n\n"
            + "right word (?<word>yes|no), cause (?<cause>yes|no), mended (?<mended>yes|no)(?<own>, in own words)?",
        RegexOptions.ExplicitCapture
    )]
    private static partial Regex Section();
}
