namespace Ohmstead.Published.Tests;

/// <summary>What a person gets: one folder, and nothing in it that has to be there already.</summary>
public sealed class PublishedFolderTests(PublishedProgram published, ITestOutputHelper output)
{
    [Fact]
    public void It_is_a_program_of_its_own_and_the_library_for_pictures()
    {
        output.WriteLine($"the published program is {PublishedKind.Words}");
        foreach (var file in published.Files)
        {
            output.WriteLine(FormattableString.Invariant($"  {file.Name}, {file.Length / 1e6:0.0} MB"));
        }

        Assert.Contains(published.Files, file => file.Name.Contains("SkiaSharp", StringComparison.Ordinal));
        // Code that a runtime would have to compile is there only where the runtime is too.
        Assert.Equal(PublishedKind.IsLinked, !published.Files.Any(file => file.Name is "ohmstead.dll"));
        Assert.Equal(PublishedKind.IsLinked, published.Files.Count == 2);
        Assert.DoesNotContain(published.Files, file => file.Extension is ".pdb" or ".dbg" or ".xml");
    }

    [Fact]
    public async Task It_needs_no_runtime_on_the_machine()
    {
        var run = await Ohmstead.Tests.Support.Child.ShellAsync(
            "\"$ohmstead\" marking 103",
            Ohmstead.Tests.Support.CollectionCopy.Untouched,
            ("ohmstead", published.Path),
            ("PATH", "/nowhere"),
            ("DOTNET_ROOT", "/nowhere")
        );
        Assert.Equal((0, string.Empty), (run.Exit, run.Error));
        Assert.Contains("10 nF", run.Out, StringComparison.Ordinal);
    }
}
