using Ohmstead.Tests.Support;

namespace Ohmstead.Machine.Tests.Workflows;

/// <summary>The file from which an image of the program is built. Building it takes a system of its own, which no test brings along; what
/// it says is held here.</summary>
public sealed class ContainerFileTests
{
    private static readonly string[] Steps =
    [
        .. File.ReadAllText(ProjectFolder.At(".github/container/Containerfile"))
            .ReplaceLineEndings("\n")
            .Replace("\\\n", string.Empty, StringComparison.Ordinal)
            .Split('\n')
            .Where(line => line.Length > 0 && line[0] != '#'),
    ];

    [Fact]
    public void Whoever_starts_it_is_not_root_and_can_change_nothing_of_the_program()
    {
        Assert.Equal("USER 10001", Assert.Single(Steps, step => step.StartsWith("USER ", StringComparison.Ordinal)));
        Assert.Contains(Steps, step => step.Contains("useradd --uid 10001 ", StringComparison.Ordinal));
        // Behind it nothing is installed or put anywhere.
        Assert.Equal(["USER", "WORKDIR", "CMD"], Steps.Select(step => step.Split(' ')[0]).SkipWhile(word => word != "USER"));
        Assert.All(Steps.Where(step => step.StartsWith("COPY ", StringComparison.Ordinal)), step =>
            Assert.StartsWith("COPY --chown=root:root ", step, StringComparison.Ordinal)
        );
    }

    [Fact]
    public void It_holds_what_an_archive_holds_and_fetches_nothing_but_packages_of_its_system()
    {
        string[] copied =
        [
            .. Steps
                .Where(step => step.StartsWith("COPY ", StringComparison.Ordinal))
                .SelectMany(step => step.Split(' ')[2..^1])
                .Order(StringComparer.Ordinal),
        ];
        Assert.Equal(["LICENSE", "NOTICES.txt", "libSkiaSharp.so", "licences", "ohmstead"], copied);
        Assert.DoesNotContain(Steps, step =>
            step.StartsWith("ADD ", StringComparison.Ordinal) || step.Contains("://", StringComparison.Ordinal)
        );
        Assert.All(Steps.Where(step => step.Contains("apt-get install", StringComparison.Ordinal)), step =>
        {
            Assert.Contains(" --no-install-recommends ", step, StringComparison.Ordinal);
            Assert.Contains(" ca-certificates git ", step, StringComparison.Ordinal);
            Assert.Contains(" rm -rf /var/lib/apt/lists/* ", step, StringComparison.Ordinal);
        });
        Assert.Matches("^FROM debian:[0-9]+-slim$", Steps[0]);
    }
}
