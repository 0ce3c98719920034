using System.Text;
using System.Text.Json.Nodes;
using Ohmstead.Tests.Support;

namespace Ohmstead.Published.Tests;

/// <summary>The package that <c>dotnet tool install</c> takes: what is in it, and that it does the same as the program beside the
/// tests.</summary>
public sealed class ToolPackageTests(ToolPackage package) : IClassFixture<ToolPackage>
{
    private const string Within = "tools/net10.0/any/";

    [Fact]
    public void It_holds_the_program_its_licence_and_the_library_for_pictures_of_the_usual_machines()
    {
        Assert.SkipUnless(TestExtent.IsAll, TestExtent.LeftOut);
        Assert.Superset(
            new SortedSet<string>(StringComparer.Ordinal)
            {
                "README.md",
                "LICENSE",
                "NOTICES.txt",
                "licences/skiasharp.txt",
                Within + "ohmstead.dll",
                "ohmstead.nuspec",
            },
            new SortedSet<string>(package.Entries.Keys, StringComparer.Ordinal)
        );
        Assert.Equal(
            ["linux-arm64", "linux-musl-arm64", "linux-musl-x64", "linux-x64", "osx", "win-arm64", "win-x64"],
            package
                .Entries.Keys.Where(name => name.StartsWith(Within + "runtimes/", StringComparison.Ordinal))
                .Select(name => name[Within.Length..].Split('/')[1])
                .Distinct()
                .Order(StringComparer.Ordinal)
        );
        Assert.DoesNotContain(package.Entries.Keys, name =>
            name.EndsWith(".pdb", StringComparison.Ordinal) && name.Contains("runtimes/", StringComparison.Ordinal)
        );
        // What the SDK is told of the tool, and no documentation of code.
        Assert.Equal(
            [Within + "DotnetToolSettings.xml"],
            package.Entries.Keys.Where(name =>
                name.EndsWith(".xml", StringComparison.Ordinal) && name.StartsWith(Within, StringComparison.Ordinal)
            )
        );
    }

    [Fact]
    public async Task Installed_from_a_folder_it_says_what_the_ordinary_program_does_and_sizes_pictures()
    {
        Assert.SkipUnless(TestExtent.IsAll, TestExtent.LeftOut);
        using var copy = CollectionCopy.Make();
        const string Line = "$ohmstead --version && $ohmstead check .";
        var installed = await Child.ShellAsync(Line, copy.Root, [.. package.Apart, ("ohmstead", package.Command)]);
        Assert.Equal(await Child.ShellAsync(Line, copy.Root, ("ohmstead", Child.Ordinary)), installed);
        Assert.Equal(0, installed.Exit);

        // Pictures are sized by the library that lies in a folder for this machine.
        var report = await Child.ShellAsync("$ohmstead report . --to pages", copy.Root, [.. package.Apart, ("ohmstead", package.Command)]);
        Assert.Equal((0, string.Empty), (report.Exit, report.Error));
        Assert.NotEmpty(Directory.EnumerateFiles(copy.At("pages/photos"), "*.small.png", SearchOption.AllDirectories));
    }

    [Fact]
    public async Task A_manifest_installs_it_for_one_folder()
    {
        Assert.SkipUnless(TestExtent.IsAll, TestExtent.LeftOut);
        using var folder = CollectionCopy.Empty();
        folder.Write("dotnet-tools.json", "{ \"version\": 1, \"isRoot\": true, \"tools\": {} }\n");
        var run = await Child.ShellAsync(
            $"dotnet tool install ohmstead --source '{package.Source}' > said && dotnet ohmstead marking 103",
            folder.Root,
            package.Apart
        );
        Assert.Equal((0, string.Empty), (run.Exit, run.Error));
        Assert.Contains("10 nF", run.Out, StringComparison.Ordinal);
    }

    // No later .NET is there to try it with, so what it asks for is made an earlier one that is not there: the same rule finds this one.
    [Theory]
    [InlineData(true, 0)]
    [InlineData(false, 150)]
    public async Task It_starts_on_a_later_runtime_than_the_one_it_asks_for(bool asIs, int exit)
    {
        Assert.SkipUnless(TestExtent.IsAll, TestExtent.LeftOut);
        using var folder = CollectionCopy.Empty();
        foreach (var (name, bytes) in package.Entries.Where(entry => entry.Key.StartsWith(Within, StringComparison.Ordinal)))
        {
            folder.Write(name, string.Empty);
            await File.WriteAllBytesAsync(folder.At(name), bytes, TestContext.Current.CancellationToken);
        }

        var settings = JsonNode.Parse(Encoding.UTF8.GetString(package.Entries[Within + "ohmstead.runtimeconfig.json"]))!;
        var options = settings["runtimeOptions"]!;
        options["framework"]!["version"] = "9.0.0";
        if (!asIs)
        {
            options.AsObject().Remove("rollForward");
        }

        folder.Write(Within + "ohmstead.runtimeconfig.json", settings.ToJsonString());
        var run = await Child.ShellAsync($"dotnet {Within}ohmstead.dll marking 103", folder.Root, package.Apart);
        Assert.Equal(exit, run.Exit);
    }
}
