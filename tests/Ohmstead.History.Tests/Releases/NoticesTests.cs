using System.Text.Json;
using System.Xml.Linq;
using Ohmstead.Tests.Support;

namespace Ohmstead.History.Tests.Releases;

/// <summary>The notices that every archive and the package carry: each library that is in them, under which licence, and whose. The list is
/// written from what the packages say of themselves, OHMSTEAD_WRITE=1; the texts of the licences behind it are kept by hand.</summary>
public sealed class NoticesTests
{
    private const string Notices = ".github/release/NOTICES.txt";
    private const string Licence = "=== Licence ";

    private const string Opening = """
        Third-party notices

        Ohmstead is under the MIT licence; the file LICENSE has it. Its programs hold the libraries below, each under the licence on its line,
        whose text follows. A program that needs no .NET holds the runtime of .NET as well (MIT, Copyright (c) .NET Foundation and
        Contributors). What the runtime and the library for pictures are made of is told in the files under licences/.


        """;

    // They look at the code while it is built, and nothing of them is in a program.
    private static readonly string[] OfTheBuild = ["Meziantou.Analyzer", "Microsoft.NET.ILLink.Tasks"];

    [Fact]
    public void Every_library_is_named_with_its_licence_and_the_text_of_that_is_there()
    {
        var text = File.ReadAllText(ProjectFolder.At(Notices));
        var texts = text[text.IndexOf(Licence, StringComparison.Ordinal)..];
        var libraries = Libraries().ToList();
        WrittenFile.IsCurrent(
            Notices,
            Opening
                + string.Concat(libraries.Select(library => $"{library.Name} {library.Version} | {library.Terms} | {library.Whose}\n"))
                + $"\n{texts}"
        );
        Assert.All(libraries, library => Assert.Contains($"{Licence}{library.Terms.Split(' ')[0]}\n\n", texts, StringComparison.Ordinal));
    }

    private static IEnumerable<(string Name, string Version, string Terms, string Whose)> Libraries()
    {
        using var locked = JsonDocument.Parse(File.ReadAllText(ProjectFolder.At("src/Ohmstead/packages.lock.json")));
        foreach (
            var package in locked
                .RootElement.GetProperty("dependencies")
                .GetProperty("net10.0")
                .EnumerateObject()
                .Where(package => package.Value.GetProperty("type").GetString() != "Project" && !OfTheBuild.Contains(package.Name))
                .OrderBy(package => package.Name, StringComparer.OrdinalIgnoreCase)
        )
        {
            var version = package.Value.GetProperty("resolved").GetString()!;
            var folder = Path.Combine(Packages, package.Name.ToLowerInvariant(), version);
            var about = XDocument.Load(Path.Combine(folder, $"{package.Name.ToLowerInvariant()}.nuspec")).Root!.Elements().Single();
            string? Said(string name) => about.Elements().SingleOrDefault(element => element.Name.LocalName == name)?.Value.Trim();
            var terms = Said("license")!;
            yield return (
                package.Name,
                version,
                terms.EndsWith(" OR Apache-2.0", StringComparison.Ordinal) ? $"Apache-2.0 (of {terms})" : terms,
                Whose(folder) ?? Said("copyright") ?? Said("authors")!
            );
        }
    }

    // Its own file of the licence says it best.
    private static string? Whose(string folder)
    {
        var lines = Directory
            .EnumerateFiles(folder, "LICENSE.*")
            .SelectMany(File.ReadLines)
            .Select(line => line.Trim())
            .Where(line => line.StartsWith("Copyright ", StringComparison.Ordinal))
            .ToList();
        return lines.Count == 0 ? null : string.Join("; ", lines);
    }

    private static string Packages =>
        Environment.GetEnvironmentVariable("NUGET_PACKAGES")
        ?? Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.UserProfile), ".nuget", "packages");
}
