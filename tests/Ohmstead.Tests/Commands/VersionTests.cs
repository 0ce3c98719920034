using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Commands;

/// <summary>Which program it is.</summary>
public sealed class VersionTests
{
    [Fact]
    public void A_build_that_no_release_made_tells_its_version_its_rules_and_that_it_knows_no_commit()
    {
        var run = Run.Of("--version");
        Assert.Equal((0, string.Empty), (run.Exit, run.Error));
        Assert.Matches(
            "^ohmstead [0-9]+\\.[0-9]+\\.[0-9]+\nbuilt from source, and not told of which commit\nrules [1-9][0-9]*, record format 1\n$",
            run.Out
        );
    }

    // The version has one place: whoever reads it elsewhere would tell another one after a release.
    [Fact]
    public void The_version_is_that_of_the_one_file_that_has_it()
    {
        var props = File.ReadAllText(ProjectFolder.At("Directory.Build.props"));
        var version = props.Split("<Version>")[1].Split("</Version>")[0];
        Assert.StartsWith($"ohmstead {version}\n", Run.Of("--version").Out, StringComparison.Ordinal);
        Assert.DoesNotContain(Directory.EnumerateFiles(ProjectFolder.At("src"), "*.csproj", SearchOption.AllDirectories), project =>
            File.ReadAllText(project).Contains("<Version", StringComparison.Ordinal)
        );
    }
}
