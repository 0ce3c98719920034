using System.Text;
using Ohmstead.Records.Nodes;
using Ohmstead.Tests.Support;
using Ohmstead.Yaml;
using Ohmstead.Yaml.Plain;

namespace Ohmstead.Published.Tests;

/// <summary>Records that go to the YAML library, read by two workers at once. Where code cannot be loaded a second time, the workers share
/// the library.</summary>
public sealed class HandedOverTests(PublishedProgram published)
{
    private const string Emoji = "# seen through the window: \U0001F50D\n";

    [Fact]
    public async Task A_collection_in_which_every_board_goes_there_is_judged_and_shown_alike()
    {
        var outcome = await SideBySide.AsOneAsync(
            published,
            "$ohmstead check . --workers 2 --form json && $ohmstead report . --to pages --workers 2",
            HandOverAll
        );
        Assert.Equal(0, outcome.Run.Exit);
        Assert.Equal(
            CollectionCopy.Boards,
            outcome.Files.Keys.Count(path =>
                path.StartsWith("pages/boards/", StringComparison.Ordinal) && path.EndsWith(".json", StringComparison.Ordinal)
            )
        );
    }

    [Fact]
    public async Task A_mistake_in_what_goes_there_is_found_alike()
    {
        var outcome = await SideBySide.AsOneAsync(published, "$ohmstead check . --workers 2", copy =>
        {
            HandOverAll(copy);
            copy.Write(
                "boards/SP-0004.md",
                copy.Read("boards/SP-0004.md").Replace("capacitance: 448.0 µF", "capacitance: \"448.0 \\q", StringComparison.Ordinal)
            );
        });
        Assert.Equal(1, outcome.Run.Exit);
        Assert.Contains("boards/SP-0004.md:", outcome.Run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void They_do_go_there()
    {
        using var copy = CollectionCopy.Make();
        HandOverAll(copy);
        var reader = new PlainNodeReader(() => new YamlNodeReader());
        foreach (var board in Directory.EnumerateFiles(copy.At("boards")))
        {
            reader.Read(board, File.ReadAllBytes(board), FileForm.Markdown, ReadingLimits.Usual);
        }

        Assert.Equal(CollectionCopy.Boards, reader.HandedOver);
    }

    private static void HandOverAll(CollectionCopy copy)
    {
        foreach (var board in Directory.EnumerateFiles(copy.At("boards")))
        {
            var text = File.ReadAllText(board, Encoding.UTF8);
            File.WriteAllText(board, text.Insert(text.IndexOf('\n', StringComparison.Ordinal) + 1, Emoji));
        }
    }
}
