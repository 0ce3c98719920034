using Ohmstead.Tests.Support;

namespace Ohmstead.Machine.Tests.Processes;

/// <summary>A preview as a person has it running beside an editor.</summary>
public sealed class PreviewTests
{
    [Fact]
    public async Task A_saved_record_is_built_and_told_and_the_way_out_is_no_failure()
    {
        using var copy = CollectionCopy.Make();
        using var process = Child.Start("exec $ohmstead preview . --to pages", copy.Root);
        await Child.ToldAsync(process, "files written");
        Assert.True(File.Exists(copy.At("pages/index.html")));

        copy.Write(
            "boards/SP-0003.md",
            copy.Read("boards/SP-0003.md").Replace("spare from the boat house", "spare out of the boat house", StringComparison.Ordinal)
        );
        Assert.DoesNotContain(" 0 unchanged", await Child.ToldAsync(process, "files written"), StringComparison.Ordinal);
        Assert.Contains("spare out of the boat house", copy.Read("pages/boards/SP-0003.html"), StringComparison.Ordinal);

        // A slip of the hand is told with its line, and the preview goes on.
        copy.Write("boards/SP-0003.md", copy.Read("boards/SP-0003.md").Replace("title:", "titel:", StringComparison.Ordinal));
        Assert.Contains("SP-0003.md:", await Child.ToldAsync(process, "'titel'"), StringComparison.Ordinal);
        await Child.ToldAsync(process, "files written");

        await Child.ShellAsync($"kill -INT {process.Id}", copy.Root);
        var run = await Child.EndAsync(process);
        Assert.Equal((0, string.Empty), (run.Exit, run.Error));
        Assert.False(Directory.Exists(copy.At(".pages.ohmstead-new")));
    }

    [Theory]
    [InlineData("--serve 0", "0 is no port")]
    [InlineData("--to .", "is or holds the collection")]
    public async Task What_cannot_be_previewed_is_refused_at_once(string words, string why)
    {
        var run = await Child.ShellAsync($"$ohmstead preview . {words}", CollectionCopy.Untouched);
        Assert.Equal(2, run.Exit);
        Assert.Contains(why, run.Error, StringComparison.Ordinal);
    }
}
