using Ohmstead.Assessment.Checks;
using Ohmstead.Collections;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Commands;

/// <summary>Every check has a page, and a line in the list.</summary>
public sealed class ExplainCommandTests
{
    public static TheoryData<string> Checks { get; } =
        new(
            CheckCatalogue
                .Descriptions.Select(check => check.Name)
                .Append(FileReader.Unreadable)
                .Append(FileReader.Link)
                .Append("key-unknown")
                .Append("quantity-unreadable")
                .Append("alias-used")
                .Append("decimal-comma")
        );

    [Theory]
    [MemberData(nameof(Checks))]
    public void A_check_is_explained_from_its_name_to_what_to_do(string check)
    {
        var run = Run.Of("explain", check);
        Assert.Equal(0, run.Exit);
        Assert.StartsWith($"# {check}\n\n", run.Out, StringComparison.Ordinal);
        Assert.Contains("\n## What to do\n", run.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("fitted-part-fails", "it holds the board back from fit to run: what sits there was known to be bad when it was fitted")]
    [InlineData(
        "photograph-missing",
        "as an error it holds the board back from fit to run, as a warning it is told: the record names evidence that is not there"
    )]
    [InlineData("drift-nears-limit", "none, it is told: an estimate of what will be, beside the readings that say what is")]
    [InlineData(
        "work-after-proof",
        "the finding is told, and the state follows from the evidence: the obligation to prove each point after the last work"
    )]
    public void A_check_says_what_it_does_to_the_state(string check, string effect) =>
        Assert.EndsWith($"\n\nWhat it does to the state: {effect}.\n", Run.Of("explain", check).Out, StringComparison.Ordinal);

    [Theory]
    [InlineData("ESR: equivalent series resistance of a capacitor\n", "esr")]
    [InlineData("form, re-form: to bring a stored electrolytic back to its voltage, slowly, through a resistor\n", "re-form")]
    [InlineData("fit to run: nothing stands open: every obligation of the board is met by a named entry\n", "fit", "to", "run")]
    [InlineData("meter: any instrument; instruments.yaml holds its calibrations and its accuracy\n", "meter")]
    public void A_word_is_told_as_the_glossary_has_it_whatever_its_capitals(string told, params string[] words) =>
        Assert.Equal((0, told), (Run.Of(["explain", .. words]).Exit, Run.Of(["explain", .. words]).Out));

    [Theory]
    [InlineData("there is no check and no word 'key-unknwon', 'key-unknown' is the nearest\n", "key-unknwon")]
    [InlineData("there is no check and no word 'obligaton', 'obligation' is the nearest\n", "obligaton")]
    [InlineData("there is no check and no word 'a<U+001B>[2J'\n", "a\u001b[2J")]
    public void What_is_neither_is_told_with_the_nearest_of_both(string message, string word)
    {
        var run = Run.Of("explain", word);
        Assert.Equal((2, string.Empty, message), (run.Exit, run.Out, run.Error));
    }

    [Fact]
    public void Every_word_of_the_page_is_built_in_once_and_on_a_line_of_its_own()
    {
        // Counted apart from the reader: the rows of the page below its head and its rule.
        string[] rows =
        [
            .. File.ReadAllLines(ProjectFolder.At("schema/GLOSSARY.md"))
                .Where(line => line.StartsWith("| ", StringComparison.Ordinal))
                .Skip(1),
        ];
        var lines = Run.Of("explain", "--words").Out.TrimEnd('\n').Split('\n');
        Assert.Equal(rows.Length, lines.Length);
        Assert.All(rows.Zip(lines), pair => Assert.StartsWith(pair.First[2..].Split(" |")[0], pair.Second, StringComparison.Ordinal));
        var names = Glossary.All().SelectMany(word => word.Names).ToArray();
        Assert.Equal(names.Length, names.Distinct(StringComparer.OrdinalIgnoreCase).Count());
        Assert.Empty(names.Intersect(CheckPages.All().Keys));
    }

    [Fact]
    public void Without_a_name_each_check_stands_on_a_line_with_its_summary()
    {
        var lines = Run.Of("explain").Out.TrimEnd('\n').Split('\n');
        Assert.All(lines, line => Assert.Matches("^[a-z0-9-]+ {2,}[A-Z].+\\.$", line));
        Assert.Contains(lines, line =>
            line.StartsWith("polarity-from-print-alone ", StringComparison.Ordinal)
            && line.EndsWith(
                "  A polarised part was fitted the way the print on the board shows, and nothing else confirms it.",
                StringComparison.Ordinal
            )
        );
        Assert.Equal(lines.Select(line => line.Split(' ')[0]).Order(StringComparer.Ordinal), lines.Select(line => line.Split(' ')[0]));
    }
}
