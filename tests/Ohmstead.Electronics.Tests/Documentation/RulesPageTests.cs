using System.Text;

namespace Ohmstead.Electronics.Tests.Documentation;

/// <summary>The page that lists every rule of the library with its source and its check. OHMSTEAD_WRITE=1 writes it.</summary>
public sealed class RulesPageTests
{
    [Fact]
    public void The_page_of_rules_is_the_one_that_the_library_and_its_tests_give()
    {
        var page = Write();
        var file = Path.Combine(Library(), "RULES.md");
        if (Environment.GetEnvironmentVariable("OHMSTEAD_WRITE") == "1")
        {
            File.WriteAllText(file, page);
        }

        Assert.True(
            File.Exists(file) && File.ReadAllText(file) == page,
            "src/Ohmstead.Electronics/RULES.md is not current; write it with: OHMSTEAD_WRITE=1 dotnet run --project "
                + "tests/Ohmstead.Electronics.Tests"
        );
    }

    [Fact]
    public void Every_rule_that_names_a_source_has_a_test_that_names_its_type()
    {
        var tests = RuleTest.All(Tests());
        Assert.Empty(RuleFile.All(Library()).Where(rule => !tests.Any(test => Checks(test, rule))).Select(rule => rule.Name));
    }

    private static string Write()
    {
        var text = new StringBuilder(
            "# Rules, their sources and their checks\n\nWritten by the tests from the library and its tests; OHMSTEAD_WRITE=1 writes it "
                + "anew. *Read in the source* means the published text, or a copy that quotes it, was read for this rule; *from memory* "
                + "means that it was not.\n"
        );
        var tests = RuleTest.All(Tests());
        foreach (var group in RuleFile.All(Library()).GroupBy(rule => rule.Folder))
        {
            text.Append("\n## ").Append(group.Key).Append('\n');
            foreach (var rule in group)
            {
                text.Append("\n### ").Append(rule.Name).Append("\n\n").Append(rule.Summary).Append("\n\n");
                foreach (var source in rule.Sources)
                {
                    text.Append("- Source: ")
                        .Append(source.Title)
                        .Append(source.Title == source.Basis ? string.Empty : $" ({source.Basis})")
                        .Append('\n');
                }

                if (BenchRules.For(rule.Name) is { Count: > 0 } bench)
                {
                    text.Append("- At the bench: ").AppendJoin(", ", bench.Select(name => $"`ohmstead calculate {name}`")).Append('\n');
                }

                foreach (var test in tests.Where(test => Checks(test, rule) && test.Against.Length > 0))
                {
                    text.Append("- Check: ").Append(test.Sentence).Append(". ").Append(test.Against).Append('\n');
                }
            }
        }

        return text.ToString();
    }

    // A file of tests named after the type checks it; a type without one is checked where its name occurs.
    private static bool Checks(RuleTest test, RuleFile rule) =>
        test.File == rule.Name + "Tests"
        || (
            !File.Exists(Path.Combine(Tests(), rule.Folder, rule.Name + "Tests.cs"))
            && test.Text.Contains(rule.Name, StringComparison.Ordinal)
        );

    private static string Library() => Path.Combine(Root(), "src", "Ohmstead.Electronics");

    private static string Tests() => Path.Combine(Root(), "tests", "Ohmstead.Electronics.Tests");

    internal static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Ohmstead.slnx")))
        {
            folder = folder.Parent;
        }

        return Assert.IsType<DirectoryInfo>(folder).FullName;
    }
}
