using System.Text.RegularExpressions;
using Ohmstead.Assessment.Checks;
using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Assessment.Tests.Support;

namespace Ohmstead.Assessment.Tests.Checks;

public sealed partial class CheckCatalogueTests
{
    private static readonly IReadOnlyList<(Type Type, CheckDescription Description)> Checks =
    [
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
                && (typeof(IBoardCheck).IsAssignableFrom(type) || typeof(ICollectionCheck).IsAssignableFrom(type))
            );
        Assert.Equal(
            written.Select(type => type.Name).Order(StringComparer.Ordinal),
            Checks.Select(check => check.Type.Name).Order(StringComparer.Ordinal)
        );
    }

    [Fact]
    public void A_check_is_called_as_its_type_in_small_letters_with_hyphens() =>
        Assert.All(Checks, check =>
            Assert.Equal(InnerCapital().Replace(check.Type.Name, "-$0").ToLowerInvariant(), check.Description.Name)
        );

    [Fact]
    public void No_two_checks_have_one_name() => Assert.Distinct(Checks.Select(check => check.Description.Name), StringComparer.Ordinal);

    [Fact]
    public void Every_check_has_cases() =>
        Assert.Equal(
            Checks.Select(check => check.Type.Name).Order(StringComparer.Ordinal),
            RecordCase.All.Select(one => one.File).Distinct().Order(StringComparer.Ordinal)
        );

    [Fact]
    public void Every_check_is_provoked_by_a_case_of_its_own() =>
        Assert.All(Checks, check =>
            Assert.Contains(
                RecordCase
                    .All.Where(one => one.File == check.Type.Name)
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

    [GeneratedRegex("(?<!^)[A-Z]")]
    private static partial Regex InnerCapital();
}
