using System.Text.Json;
using System.Xml.Linq;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Sources;

/// <summary>A package that is not what it was when it was chosen is not taken: a locked restore compares its hash.</summary>
public sealed class PackageLockTests
{
    [Fact]
    public void Every_package_is_locked_by_its_hash_and_the_workflow_restores_nothing_else()
    {
        var locks = Directory
            .EnumerateFiles(ProjectFolder.At("src"), "*.csproj", SearchOption.AllDirectories)
            .Concat(Directory.EnumerateFiles(ProjectFolder.At("tests"), "*.csproj", SearchOption.AllDirectories))
            .Select(project => Path.Combine(Path.GetDirectoryName(project)!, "packages.lock.json"))
            .ToArray();
        Assert.NotEmpty(locks);
        Assert.All(locks, file => Assert.Empty(WithoutHash(file)));

        // CI is set where the workflow runs.
        var locked = XDocument.Load(ProjectFolder.At("Directory.Build.props")).Descendants("RestoreLockedMode").Single();
        Assert.Equal(("true", "'$(CI)' == 'true'"), (locked.Value, locked.Attribute("Condition")?.Value));
    }

    private static string[] WithoutHash(string file)
    {
        using var document = JsonDocument.Parse(File.ReadAllText(file));
        return
        [
            .. document
                .RootElement.GetProperty("dependencies")
                .EnumerateObject()
                .SelectMany(framework => framework.Value.EnumerateObject())
                .Where(package =>
                    package.Value.GetProperty("type").GetString() != "Project"
                    && !(package.Value.TryGetProperty("contentHash", out var hash) && hash.GetString() is { Length: 88 })
                )
                .Select(package => package.Name),
        ];
    }
}
