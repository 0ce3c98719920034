using System.Text.RegularExpressions;
using Ohmstead.Assessment.Checks;
using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.Checks;

public sealed class CheckCatalogueTests
{
    private static readonly IReadOnlyList<(Type Type, CheckDescription Description)> Checks =
    [
        .. CheckCatalogue.Files.Select(check => (check.GetType(), check.Description)),
        .. CheckCatalogue.Boards.Select(check => (check.GetType(), check.Description)),
        .. CheckCatalogue.Collection.Select(check => (check.GetType(), check.Description)),
    ];

    [Fact]
    public void The_catalogue_lists_every_check_there_is()
    {
        var written = typeof(CheckCatalogue)
            .Assembly.GetTypes()
            .Where(type =>
                type is { IsClass: true, IsAbstract: false }
                && (
                    typeof(IFileCheck).IsAssignableFrom(type)
                    || typeof(IBoardCheck).IsAssignableFrom(type)
                    || typeof(ICollectionCheck).IsAssignableFrom(type)
                )
            );
        Assert.Equal(
            written.Select(type => type.Name).Order(StringComparer.Ordinal),
            Checks.Select(check => check.Type.Name).Distinct().Order(StringComparer.Ordinal)
        );
    }

    [Fact]
    public void A_check_is_called_as_its_type_in_small_letters_with_hyphens() =>
        Assert.All(Checks.Where(check => check.Type != typeof(UnknownNameCheck)), check =>
            Assert.Equal(check.Type.Name, FileOf(check.Description))
        );

    [Fact]
    public void Checks_of_unknown_names_are_rows_of_one_table() =>
        Assert.Equal(
            ["design-unknown", "instrument-unknown", "lot-unknown", "order-unknown", "part-unknown", "point-unknown"],
            Checks.Where(check => check.Type == typeof(UnknownNameCheck)).Select(check => check.Description.Name)
        );

    [Fact]
    public void No_two_checks_have_one_name() => Assert.Distinct(Checks.Select(check => check.Description.Name), StringComparer.Ordinal);

    [Fact]
    public void Every_check_has_cases() =>
        Assert.Equal(
            Checks.Select(check => FileOf(check.Description)).Order(StringComparer.Ordinal),
            RecordCase.All.Select(one => one.File).Distinct().Order(StringComparer.Ordinal)
        );

    [Fact]
    public void Every_check_is_provoked_by_a_case_of_its_own() =>
        Assert.All(Checks, check =>
            Assert.Contains(
                RecordCase
                    .All.Where(one => one.File == FileOf(check.Description))
                    .SelectMany(one => one.Blocks)
                    .SelectMany(block => block.Expected()),
                expected => expected.Check == check.Description.Name
            )
        );

    [Fact]
    public void Every_check_has_a_page_with_all_its_sections() => Assert.All(Checks, check =>
        {
            var page = PageOf(check.Description.Name);
            Assert.StartsWith($"# {check.Description.Name}\n\n", page, StringComparison.Ordinal);
            string[] headings = ["## Why", "## Wrong", "## Right", "## What to do", "## Source"];
            Assert.Equal(headings, page.Split('\n').Where(line => line.StartsWith("## ", StringComparison.Ordinal)));
        });

    [Fact]
    public void Every_page_begins_with_the_summary_of_its_check() =>
        Assert.All(Checks, check =>
            Assert.Equal(check.Description.Summary + ".", Uncapitalised(PageOf(check.Description.Name).Split('\n')[2]))
        );

    [Fact]
    public void Every_page_shows_what_is_wrong_and_what_is_right_as_yaml() => Assert.All(Checks, check =>
        {
            var page = PageOf(check.Description.Name);
            var wrong = ExampleOf(page, "Wrong");
            var right = ExampleOf(page, "Right");
            Assert.NotEmpty(wrong);
            Assert.NotEmpty(right);
            Assert.NotEqual(wrong, right);
        });

    [Fact]
    public void Every_summary_is_one_line_that_starts_small_and_has_no_full_stop() =>
        Assert.All(Checks, check => MessageRules.Hold(check.Description.Summary));

    // The file of its cases: its name with capitals for hyphens.
    private static string FileOf(CheckDescription check) =>
        string.Concat(check.Name.Split('-').Select(word => char.ToUpperInvariant(word[0]) + word[1..]));

    private static string PageOf(string name)
    {
        using var stream = typeof(CheckCatalogue).Assembly.GetManifestResourceStream($"checks/{name}.md");
        Assert.True(stream is not null, $"there is no page checks/{name}.md");
        using var text = new StreamReader(stream);
        return text.ReadToEnd();
    }

    private static string ExampleOf(string page, string heading)
    {
        var match = Regex.Match(page, $"## {heading}\n\n```yaml\n(.+?)```", RegexOptions.Singleline);
        return match.Groups[1].Value;
    }

    private static string Uncapitalised(string text) => char.ToLowerInvariant(text[0]) + text[1..];
}
