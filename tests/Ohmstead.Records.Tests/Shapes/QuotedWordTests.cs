using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;

namespace Ohmstead.Records.Tests.Shapes;

/// <summary>
/// Code asks what a word of the record means and never how it is spelled: a word that is compared in quotes stands beside no row, and a new
/// one like it is forgotten there without a word from the compiler.
/// </summary>
public sealed partial class QuotedWordTests
{
    private static readonly HashSet<string> Words = [.. AllKeys.OfClosedLists.SelectMany(key => key.Words)];

    [Fact]
    public void No_word_of_the_record_is_compared_in_quotes() =>
        Assert.Empty(
            Directory
                .EnumerateFiles(Source(), "*.cs", SearchOption.AllDirectories)
                .Order(StringComparer.Ordinal)
                .SelectMany(file =>
                    File.ReadLines(file).Select((line, at) => (File: Path.GetRelativePath(Source(), file), Line: at + 1, Text: line))
                )
                .Where(row => IsComparison(row.Text))
                .Select(row => $"{row.File}:{row.Line}: {row.Text.Trim()}")
        );

    [Theory]
    [InlineData("if (values.Role is \"coupling\")")]
    [InlineData("if (role is not (\"bipolar\" or \"none\"))")]
    [InlineData("if (values.Polarity is { Value: \"polarised\" })")]
    [InlineData("if (values.Polarity?.Value == \"none\")")]
    [InlineData("if (\"none\" != polarity.Value)")]
    [InlineData("    \"X7R\" => DielectricFigures.CeramicX7R,")]
    [InlineData("    \"radial\" or \"disc\" or \"unheard of\" => CapacitorForm.Radial,")]
    [InlineData("    (\"nickel-cadmium\", _) => false,")]
    [InlineData("    (_, \"paper\" or \"metallised paper\") when isY => MetallisedPaper,")]
    [InlineData("    case \"as found\":")]
    [InlineData("    case [\"in\" or \"out\"]:")]
    [InlineData("if (word.Equals(\"mains suppression\", StringComparison.Ordinal))")]
    [InlineData("if (string.Equals(word, \"bleeder\", StringComparison.OrdinalIgnoreCase))")]
    [InlineData("return key.Words.Contains(\"yes\", StringComparer.Ordinal)")]
    [InlineData("return known.StartsWith(\"CMOS 74HC\", StringComparison.Ordinal) && known is \"CMOS 74HC\"")]
    public void A_comparison_is_found(string line) => Assert.True(IsComparison(line));

    // What a word stands beside, what people are shown, and keys are no comparisons.
    [Theory]
    [InlineData("        (PartRole.Coupling, \"coupling\"),")]
    [InlineData("    public static PartMaterial X7R { get; } = new(\"X7R\") { Ceramic = DielectricFigures.CeramicX7R };")]
    [InlineData("        VerdictOutcome.Undecided => \"undecided\",")]
    [InlineData("    html.Text(\"as found\");")]
    [InlineData("    private const string Aspect = \"voltage\";")]
    [InlineData("    Role = isLot ? null : fields.Word(\"role\", Vocabulary.Roles),")]
    [InlineData("    /// <summary>A role is \"coupling\", say.</summary>")]
    public void What_is_no_comparison_is_left_alone(string line) => Assert.False(IsComparison(line));

    private static bool IsComparison(string line) =>
        !line.TrimStart().StartsWith("//", StringComparison.Ordinal)
        && Quoted()
            .Matches(line)
            .Any(quoted =>
                Words.Contains(quoted.Groups["text"].Value) && IsCompared(line[..quoted.Index], line[(quoted.Index + quoted.Length)..])
            );

    private static bool IsCompared(string before, string after) =>
        Asks().IsMatch(before) || AsksAgain().IsMatch(after) || (Arm().IsMatch(before) && after.Contains("=>", StringComparison.Ordinal));

    [GeneratedRegex("""(?<![@$"])"(?<text>(?:[^"\\]|\\.)*)"(?!")""")]
    private static partial Regex Quoted();

    // is, or, ==, case and their like; a property in a pattern; the first or the second thing handed to what compares.
    [GeneratedRegex(
        """(?:(?:\b(?:is|not|or|and|case)|==|!=)\s*[(\[]*|[{,]\s*[\w.]+:\s*(?:not\s+)?\(?|"""
            + """\b(?:Equals|StartsWith|EndsWith|Contains|IndexOf|Compare|CompareOrdinal)\((?:[^()"]*,\s*)?)$"""
    )]
    private static partial Regex Asks();

    [GeneratedRegex("""^\s*\)*\s*(?:==|!=|\bor\b|\band\b)""")]
    private static partial Regex AsksAgain();

    // The first thing on a line that goes on with an arrow: a word alone, or one among the words of a tuple.
    [GeneratedRegex("""^\s*(?:\((?:[^="]|"[^"]*")*)?$""")]
    private static partial Regex Arm();

    private static string Source([CallerFilePath] string here = "") => Path.Combine(Path.GetDirectoryName(here)!, "..", "..", "..", "src");
}
