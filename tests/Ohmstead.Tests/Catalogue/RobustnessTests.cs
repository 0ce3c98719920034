using System.Text.RegularExpressions;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Catalogue;

/// <summary>The pages that say which test holds what: the catalogue of bad inputs beside this file, and the security page. A test that they
/// name is there.</summary>
public sealed partial class RobustnessTests
{
    // How many cases each group has.
    private static readonly (string Group, int Count)[] Groups =
    [
        ("EN", 17),
        ("YA", 27),
        ("SC", 10),
        ("QU", 22),
        ("DA", 11),
        ("RE", 9),
        ("MX", 24),
        ("LK", 12),
        ("GT", 17),
        ("FS", 19),
        ("PR", 24),
        ("SZ", 8),
        ("RW", 12),
        ("MO", 6),
        ("SU", 5),
    ];

    private static readonly string Catalogue = File.ReadAllText(ProjectFolder.At("tests/Ohmstead.Tests/Catalogue/robustness.md"));
    private static readonly string Security = File.ReadAllText(ProjectFolder.At(".github/SECURITY.md"));

    private static readonly ILookup<string, string> Sources = Directory
        .EnumerateFiles(ProjectFolder.At("tests"), "*Tests.cs", SearchOption.AllDirectories)
        .Where(file => !file.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal))
        .ToLookup(file => Path.GetFileNameWithoutExtension(file), File.ReadAllText, StringComparer.Ordinal);

    private static IEnumerable<(string Id, string State, string By)> Rows =>
        Row().Matches(Catalogue).Select(row => (row.Groups["id"].Value, row.Groups["state"].Value, row.Groups["by"].Value));

    [Fact]
    public void The_catalogue_has_each_of_the_223_cases_once() =>
        Assert.Equal(
            Groups.SelectMany(group => Enumerable.Range(1, group.Count).Select(number => $"{group.Group}{number:00}")),
            Rows.Select(row => row.Id)
        );

    [Fact]
    public void It_says_how_many_are_as_asked() =>
        Assert.Contains(
            $"{Rows.Count()} cases: {Count("as asked")} as asked, {Count("otherwise")} otherwise, {Count("not tested")} not tested.",
            Catalogue,
            StringComparison.Ordinal
        );

    [Fact]
    public void What_is_as_asked_is_held_by_a_test_and_what_is_otherwise_says_why() =>
        Assert.Empty(
            Rows.Where(row =>
                    row.State switch
                    {
                        "as asked" => !Name().IsMatch(row.By),
                        "otherwise" => row.By.Length < 10,
                        _ => row.By.Length > 0,
                    }
                )
                .Select(row => row.Id)
        );

    [Fact]
    public void Each_test_that_a_page_names_is_there()
    {
        var names = Name().Matches(Catalogue + Security).Select(match => match.Value).Distinct(StringComparer.Ordinal).ToArray();
        Assert.InRange(names.Length, 100, int.MaxValue);
        Assert.DoesNotContain(names, name =>
            !Sources[name[..name.IndexOf('.', StringComparison.Ordinal)]]
                .Any(text => text.Contains($" {name[(name.IndexOf('.', StringComparison.Ordinal) + 1)..]}(", StringComparison.Ordinal))
        );
    }

    private static int Count(string state) => Rows.Count(row => row.State == state);

    [GeneratedRegex(
        @"^\| (?<id>[A-Z]{2}\d\d) \| .* \| (?<state>as asked|otherwise|not tested) \| (?<by>.*?) ?\|$",
        RegexOptions.Multiline | RegexOptions.ExplicitCapture
    )]
    private static partial Regex Row();

    [GeneratedRegex("[A-Z][A-Za-z]+Tests\\.[A-Z][A-Za-z_0-9]+")]
    private static partial Regex Name();
}
