using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Commands;

/// <summary>A record that is not read because of its name or place is told, with the name or place that it should have.</summary>
public sealed class OverlookedRecordTests
{
    private const string Record = "---\nboard: SP-0099\ntitle: A board that nobody sees\n---\n";

    [Theory]
    [InlineData("boards/SP-0099.txt", Record, "rename it to boards/SP-0099.md")]
    [InlineData("boards/SP-0099.md.txt", Record, "rename it to boards/SP-0099.md")]
    [InlineData("boards/SP-0099.MD", Record, "rename it to boards/SP-0099.md")]
    [InlineData("boards/SP-0099.markdown", "\uFEFF" + Record, "rename it to boards/SP-0099.md")]
    [InlineData("boards/hut/SP-0099", Record, "rename it to boards/hut/SP-0099.md")]
    [InlineData("designs/tide.yaml", "---\ndesign: tide\ntitle: Tide\n---\n", "rename it to designs/tide.md")]
    [InlineData("Boards/SP-0099.md", Record, "move it to boards/SP-0099.md")]
    [InlineData("board/SP-0099.md", Record, "move it to boards/SP-0099.md")]
    [InlineData("SP-0099.md", Record, "move it to boards/SP-0099.md")]
    [InlineData("tide.txt", "---\ndesign: tide\ntitle: Tide\n---\n", "move it to designs/tide.md")]
    [InlineData("stock.yml", "lots: []\n", "rename it to stock.yaml")]
    [InlineData("Collection.yaml", "collection: x\n", "rename it to collection.yaml")]
    [InlineData("instruments.yaml.txt", "instruments: []\n", "rename it to instruments.yaml")]
    public void A_record_that_is_not_read_is_told_with_where_it_should_be(string path, string text, string next)
    {
        using var copy = CollectionCopy.Make();
        copy.Write(path, text);
        var run = Run.Of("check", copy.Root, "--as-of", "2026-11-25");
        Assert.Equal(1, run.Exit);
        Assert.Contains($"{path}:1:1: error: this record is not read: ", run.Out, StringComparison.Ordinal);
        Assert.Contains($"  = {next}\n", run.Out, StringComparison.Ordinal);
        Assert.Contains("[record-overlooked]", run.Out, StringComparison.Ordinal);
    }

    // The advice, followed to the letter, makes the board one that is read.
    [Fact]
    public void A_record_that_is_renamed_as_told_is_read()
    {
        using var copy = CollectionCopy.Make();
        copy.Write("boards/SP-0099.txt", Record);
        File.Move(copy.At("boards/SP-0099.txt"), copy.At("boards/SP-0099.md"));
        var run = Run.Of("check", copy.Root, "--as-of", "2026-11-25");
        Assert.DoesNotContain("record-overlooked", run.Out, StringComparison.Ordinal);
        Assert.Contains($" files, {CollectionCopy.Boards + 1} boards", run.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("boards/notes.txt", "What to ask at the hut.\n")]
    [InlineData("boards/measured.txt", "board: SP-0099, not a record\n")]
    [InlineData("boards/empty.txt", "")]
    [InlineData("README.md", "---\nboard: an example\n---\n")]
    [InlineData("stock.txt", "what to count on Monday\n")]
    [InlineData("boardwalk/SP-0099.md", Record)]
    [InlineData("boards/.SP-0099.md.swp", Record)]
    public void What_is_no_record_may_lie_there(string path, string text)
    {
        using var copy = CollectionCopy.Make();
        copy.Write(path, text);
        var run = Run.Of("check", copy.Root, "--as-of", "2026-11-25");
        Assert.Equal(0, run.Exit);
        Assert.DoesNotContain("record-overlooked", run.Out, StringComparison.Ordinal);
    }
}
