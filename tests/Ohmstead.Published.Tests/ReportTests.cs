using Ohmstead.Tests.Support;

namespace Ohmstead.Published.Tests;

/// <summary>The report of the demo, equal to the byte whichever program wrote it.</summary>
public sealed class ReportTests(PublishedProgram published)
{
    [Fact]
    public async Task Every_page_table_feed_badge_and_sized_picture_is_the_same()
    {
        var outcome = await SideBySide.AsOneAsync(
            published,
            "$ohmstead report . --to pages --workers 2 && $ohmstead sheet SP-0007 --to sheet.html && $ohmstead ahead . --calendar ahead.ics"
        );
        Assert.Equal((0, string.Empty), (outcome.Run.Exit, outcome.Run.Error));
        Assert.All(
            ["pages/index.html", "pages/feed.xml", "pages/data.json", "pages/boards.csv", "pages/badge.svg", "sheet.html", "ahead.ics"],
            path => Assert.True(outcome.Files.ContainsKey(path), path)
        );
        Assert.Equal(
            CollectionCopy.Boards,
            outcome.Files.Keys.Count(path =>
                path.StartsWith("pages/boards/", StringComparison.Ordinal) && path.EndsWith(".json", StringComparison.Ordinal)
            )
        );
        // The photographs of the visits, made for the page.
        Assert.Contains(outcome.Files.Keys, path =>
            path.StartsWith("pages/photos/", StringComparison.Ordinal) && path.EndsWith(".small.png", StringComparison.Ordinal)
        );
    }

    [Fact]
    public async Task A_second_run_leaves_what_the_other_program_wrote()
    {
        var program = published.Path;
        using var copy = CollectionCopy.Make();
        await Child.ShellAsync("$ohmstead report . --to pages", copy.Root);
        var run = await Child.ShellAsync("$ohmstead report . --to pages", copy.Root, ("ohmstead", program));
        Assert.Equal(0, run.Exit);
        Assert.Contains("\n0 files written", run.Out, StringComparison.Ordinal);
    }
}
