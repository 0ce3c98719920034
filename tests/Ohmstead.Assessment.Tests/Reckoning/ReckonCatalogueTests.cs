using Ohmstead.Assessment.Reckoning;
using Ohmstead.Assessment.Reckoning.Basis;

namespace Ohmstead.Assessment.Tests.Reckoning;

/// <summary>What holds for every rule.</summary>
public sealed class ReckonCatalogueTests
{
    public static TheoryData<string> Names => [.. ReckonCatalogue.All.Select(rule => rule.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void The_example_of_a_rule_works_and_every_line_of_it_has_a_source(string name)
    {
        var answer = Rule(name).OfExample();
        Assert.Null(answer.Refusal);
        Assert.NotEmpty(answer.Value.Lines);
        Assert.All(answer.Value.Lines, line => Assert.NotEmpty(line.Source.Text));
        Assert.All(answer.Value.Lines, line => Assert.NotEmpty(line.Value));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_rule_without_any_input_says_what_it_needs_or_names_itself(string name) =>
        Assert.Contains(name, Assert.IsType<string>(Rule(name).Answer([]).Refusal), StringComparison.Ordinal);

    [Theory]
    [MemberData(nameof(Names))]
    public void A_rule_is_worked_in_a_test_against_a_figure_from_outside(string name) =>
        Assert.Contains(TestFiles, text => text.Contains($"\"{name}\",", StringComparison.Ordinal));

    [Fact]
    public void Names_are_there_once_and_in_small_letters()
    {
        Assert.Equal(ReckonCatalogue.All.Count, ReckonCatalogue.All.Select(rule => rule.Name).Distinct().Count());
        Assert.All(ReckonCatalogue.All, rule => Assert.Matches("^[a-z]+(-[a-z]+)*$", rule.Name));
        Assert.All(ReckonCatalogue.All.SelectMany(rule => rule.Inputs), input => Assert.Matches("^[a-z]+(-[a-z]+)*$", input.Name));
    }

    [Fact]
    public void The_catalogue_lists_every_rule_there_is()
    {
        var written = typeof(ReckonCatalogue)
            .Assembly.GetTypes()
            .SelectMany(type => type.GetProperties(System.Reflection.BindingFlags.Static | System.Reflection.BindingFlags.NonPublic))
            .Where(property => property.PropertyType == typeof(ReckonRule))
            .Select(property => Assert.IsType<ReckonRule>(property.GetValue(null)).Name);
        Assert.Equal(written.Order(StringComparer.Ordinal), ReckonCatalogue.All.Select(rule => rule.Name).Order(StringComparer.Ordinal));
    }

    private static IReadOnlyList<string> TestFiles { get; } =
    [
        .. Directory
            .GetFiles(Path.Combine(Root(), "tests", "Ohmstead.Assessment.Tests", "Reckoning"), "*RulesTests.cs")
            .Select(File.ReadAllText),
    ];

    private static ReckonRule Rule(string name) => Assert.IsType<ReckonRule>(ReckonCatalogue.Find(name));

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Ohmstead.slnx")))
        {
            folder = folder.Parent;
        }

        return Assert.IsType<DirectoryInfo>(folder).FullName;
    }
}
