using Ohmstead.Publishing;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Commands;

/// <summary>The pages: where they may be written, and that they come whole or not at all.</summary>
public sealed class ReportCommandTests
{
    [Fact]
    public void A_report_has_a_page_for_the_collection_and_one_for_each_board()
    {
        using var copy = CollectionCopy.Make();
        var run = Report(copy);
        Assert.Equal(0, run.Exit);
        Assert.EndsWith($"open {copy.At("pages/index.html")}\n", run.Out, StringComparison.Ordinal);
        Assert.Equal(Names(copy, "boards", "*.md"), Names(copy, "pages/boards", "*.html"));
        Assert.True(File.Exists(copy.At("pages/families.html")));
        Assert.Single(Directory.GetFiles(copy.At("pages/photos/SP-0004"), "c12-print.*.png"));
        Assert.DoesNotContain(Directory.EnumerateFileSystemEntries(copy.At("pages")), path =>
            path.EndsWith(".ohmstead-new", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void A_second_report_of_the_same_records_writes_nothing()
    {
        using var copy = CollectionCopy.Make();
        Report(copy);
        var before = Pages(copy);
        Assert.Contains("0 files written,", Report(copy).Out, StringComparison.Ordinal);
        Assert.Equal(before, Pages(copy));
    }

    [Fact]
    public void A_changed_title_changes_the_page_of_its_board_and_the_files_that_name_it_and_no_other()
    {
        using var copy = CollectionCopy.Make();
        Report(copy);
        var before = Pages(copy);
        copy.Write(
            "boards/SP-0003.md",
            copy.Read("boards/SP-0003.md").Replace("spare from the boat house", "spare out of the boat house", StringComparison.Ordinal)
        );
        Report(copy);
        Assert.Equal(
            [
                "boards.csv",
                "boards/SP-0003.html",
                "data.json",
                "designs/tide-logger.html",
                "findings.html",
                "index.html",
                "search/p1.js",
                "search/w1.js",
                "sheets/SP-0003.html",
                "sheets/~collection.html",
            ],
            Pages(copy).Where(page => before[page.Key] != page.Value).Select(page => page.Key).Order(StringComparer.Ordinal)
        );
    }

    [Fact]
    public void The_page_of_a_board_that_is_gone_is_taken_away_and_a_file_of_somebody_else_is_not()
    {
        using var copy = CollectionCopy.Make();
        Report(copy);
        copy.Write("pages/notes.txt", "mine");
        File.Delete(copy.At("boards/SP-0003.md"));
        Report(copy);
        Assert.False(File.Exists(copy.At("pages/boards/SP-0003.html")));
        Assert.Equal("mine", copy.Read("pages/notes.txt"));
    }

    [Theory]
    [InlineData("pages/.ohmstead-new/boards/SP-9999.html")]
    [InlineData(".pages.ohmstead-new/boards/SP-9999.html")]
    public void A_page_that_a_killed_run_left_waiting_does_not_come_into_the_report(string left)
    {
        using var copy = CollectionCopy.Make();
        copy.Write(left, "a board that has gone since");
        copy.Write(".pages.ohmstead-new/.ohmstead-building", string.Empty);
        Assert.Equal(0, Report(copy).Exit);
        Assert.Equal(Names(copy, "boards", "*.md"), Names(copy, "pages/boards", "*.html"));
        Assert.False(Directory.Exists(copy.At("pages/.ohmstead-new")) || Directory.Exists(copy.At(".pages.ohmstead-new")));
    }

    [Fact]
    public void A_folder_of_somebody_else_by_the_name_of_ours_is_not_emptied()
    {
        using var copy = CollectionCopy.Make();
        copy.Write(".pages.ohmstead-new/letter.txt", "keep me");
        var run = Report(copy);
        Assert.Equal(3, run.Exit);
        Assert.Contains("has files that are not ours, and pages would wait there", run.Error, StringComparison.Ordinal);
        Assert.Equal("keep me", copy.Read(".pages.ohmstead-new/letter.txt"));
        Assert.False(Directory.Exists(copy.At("pages")));
    }

    [Fact]
    public void A_file_of_somebody_else_where_a_page_would_be_is_not_written_over()
    {
        using var copy = CollectionCopy.Make();
        Report(copy);
        copy.Write("pages/boards/SP-0099.html", "my own page");
        copy.Write(
            "boards/SP-0099.md",
            copy.Read("boards/SP-0003.md").Replace("board: SP-0003", "board: SP-0099", StringComparison.Ordinal)
        );
        var before = Pages(copy);
        var run = Report(copy);
        Assert.Equal(3, run.Exit);
        Assert.Contains("SP-0099.html' is no page of ours, and one would be written there", run.Error, StringComparison.Ordinal);
        Assert.Equal(before, Pages(copy));
    }

    [Theory]
    [InlineData("pages/notes.txt")]
    [InlineData("pages/boards/notes.txt")]
    [InlineData("pages/.git/objects/00/ab")]
    public void What_somebody_else_keeps_among_the_pages_stays_what_it_is(string mine)
    {
        using var copy = CollectionCopy.Make();
        Report(copy);
        copy.Write(mine, "mine");
        copy.Write(
            "boards/SP-0003.md",
            copy.Read("boards/SP-0003.md").Replace("spare from the boat house", "spare out of it", StringComparison.Ordinal)
        );
        File.Delete(copy.At("boards/SP-0002.md"));
        Assert.NotEqual(3, Report(copy).Exit);
        Assert.Equal("mine", copy.Read(mine));
        Assert.Contains("spare out of it", copy.Read("pages/boards/SP-0003.html"), StringComparison.Ordinal);
        Assert.False(File.Exists(copy.At("pages/boards/SP-0002.html")));
        Assert.Equal(["pages"], Directory.GetDirectories(copy.Root, "*pages*").Select(Path.GetFileName));
        Assert.Empty(Directory.GetDirectories(copy.At("pages"), ".ohmstead*"));
    }

    [Theory]
    [InlineData(".", "is or holds the collection")]
    [InlineData("..", "is or holds the collection")]
    [InlineData("/", "is or holds the collection")]
    [InlineData("boards", "among the records")]
    [InlineData("photos/SP-0001", "among the records")]
    [InlineData("others", "has files that are not pages of ours")]
    [InlineData("collection.yaml", "is a file")]
    [InlineData("link", "is or holds the collection")]
    [InlineData("link/boards", "among the records")]
    public void A_folder_that_is_not_for_pages_is_refused_before_anything_is_written(string to, string why)
    {
        using var copy = CollectionCopy.Make();
        copy.Write("others/letter.txt", "keep me");
        Directory.CreateSymbolicLink(copy.At("link"), copy.Root);
        var before = Files(copy.Root);
        var run = Run.Of("report", copy.Root, "--to", copy.At(to), "--as-of", "2026-11-25");
        Assert.Equal(2, run.Exit);
        Assert.Contains(why, run.Error, StringComparison.Ordinal);
        Assert.Equal(before, Files(copy.Root));
    }

    [Fact]
    public void A_linked_folder_of_their_own_for_pages_is_used_and_shown_by_its_real_name()
    {
        using var copy = CollectionCopy.Make();
        using var elsewhere = CollectionCopy.Empty();
        using var own = CollectionCopy.Empty();
        Directory.CreateSymbolicLink(own.At("pages"), elsewhere.Root);
        var run = Run.Of("report", copy.Root, "--to", own.At("pages"), "--as-of", "2026-11-25");
        Assert.EndsWith($"open {elsewhere.At("index.html")}\n", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_picture_that_leads_out_through_a_link_is_not_copied()
    {
        using var copy = CollectionCopy.Make();
        using var outside = CollectionCopy.Empty();
        outside.Write("c12-print.png", "not for the pages");
        File.Delete(copy.At("photos/SP-0004/c12-print.png"));
        File.CreateSymbolicLink(copy.At("photos/SP-0004/c12-print.png"), outside.At("c12-print.png"));
        Assert.Equal(1, Report(copy).Exit);
        Assert.False(Directory.Exists(copy.At("pages/photos/SP-0004")));
    }

    [Fact]
    public async Task When_a_page_cannot_be_written_the_old_report_stays_whole()
    {
        using var copy = CollectionCopy.Make();
        Report(copy);
        var before = Pages(copy);
        copy.Write("boards/SP-0001.md", copy.Read("boards/SP-0001.md").Replace("east well", "eastern well", StringComparison.Ordinal));

        // No file may grow beyond some kilobytes: writing fails in the middle of a page, as it does on a full disk. (The runtime's own
        // doubled memory is such a file too, so it goes without.)
        var run = await Child.ShellAsync(
            "trap '' XFSZ; ulimit -f 20; exec $ohmstead report . --to pages",
            copy.Root,
            ("DOTNET_EnableWriteXorExecute", "0")
        );
        Assert.Equal(3, run.Exit);
        Assert.StartsWith("could not read or write: ", run.Error, StringComparison.Ordinal);
        Assert.Equal(before, Pages(copy));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Two_runs_do_not_write_into_one_folder(bool isThere)
    {
        using var copy = CollectionCopy.Make();
        if (isThere)
        {
            Report(copy);
        }

        using (var first = ReportFolder.Open(copy.At("pages"), copy.Root))
        {
            var run = Report(copy);
            Assert.Equal(3, run.Exit);
            Assert.Contains("another run is writing pages into", run.Error, StringComparison.Ordinal);
        }

        Assert.Equal(0, Report(copy).Exit);
    }

    [Fact]
    public void A_number_that_two_files_claim_has_the_page_of_the_file_named_after_it()
    {
        using var copy = CollectionCopy.Make();
        copy.Write(
            "boards/SP-0000.md",
            copy.Read("boards/SP-0003.md").Replace("spare from the boat house", "a copy", StringComparison.Ordinal)
        );
        Assert.Equal(1, Report(copy).Exit);
        Assert.Contains("spare from the boat house", copy.Read("pages/boards/SP-0003.html"), StringComparison.Ordinal);
        Assert.False(File.Exists(copy.At("pages/boards/SP-0000.html")));
    }

    [Fact]
    public void A_lot_of_which_more_was_fitted_than_came_holds_back_every_board_it_sits_on_in_the_pages_too()
    {
        using var copy = CollectionCopy.Make();
        Assert.Equal(0, Report(copy).Exit);
        Assert.Contains("fit to run", copy.Read("pages/badges/SP-0001.svg"), StringComparison.Ordinal);
        copy.Write(
            "stock.yaml",
            copy.Read("stock.yaml")
                .Replace(
                    "received: 2026-01-28, quantity: 20, order: PO-01",
                    "received: 2026-01-28, quantity: 1, order: PO-01",
                    StringComparison.Ordinal
                )
        );

        // All boards must be read before it is known: the pages are made again with it.
        var run = Report(copy);
        Assert.Equal(1, run.Exit);
        Assert.Contains("[lot-overdrawn]", run.Out, StringComparison.Ordinal);
        Assert.Contains("proof due", copy.Read("pages/badges/SP-0001.svg"), StringComparison.Ordinal);
        Assert.Contains("lot-overdrawn", copy.Read("pages/boards/SP-0001.html"), StringComparison.Ordinal);
        Assert.Contains("fit to run", copy.Read("pages/badges/SP-0005.svg"), StringComparison.Ordinal);
        Assert.DoesNotContain("lot-overdrawn", copy.Read("pages/boards/SP-0005.html"), StringComparison.Ordinal);
    }

    [Fact]
    public void The_pages_do_not_depend_on_the_folder_or_the_number_of_workers()
    {
        using var one = CollectionCopy.Make();
        using var two = CollectionCopy.Make();
        Run.Of("report", one.Root, "--to", one.At("pages"), "--as-of", "2026-11-25", "--workers", "1");
        Run.Of("report", two.Root, "--to", two.At("pages"), "--as-of", "2026-11-25", "--workers", "4");
        Assert.Equal(Bytes(one), Bytes(two));
    }

    private static Run Report(CollectionCopy copy) => Run.Of("report", copy.Root, "--to", copy.At("pages"), "--as-of", "2026-11-25");

    private static string?[] Names(CollectionCopy copy, string folder, string pattern) =>
        [.. Directory.GetFiles(copy.At(folder), pattern).Select(Path.GetFileNameWithoutExtension).Order(StringComparer.Ordinal)];

    private static List<string> Files(string root) =>
        [
            .. Directory
                .EnumerateFileSystemEntries(
                    root,
                    "*",
                    new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = FileAttributes.ReparsePoint }
                )
                .Order(StringComparer.Ordinal),
        ];

    private static Dictionary<string, string> Pages(CollectionCopy copy) =>
        Files(copy.At("pages"))
            .Where(File.Exists)
            .Where(path => !path.Contains(".ohmstead", StringComparison.Ordinal))
            .ToDictionary(
                path => Path.GetRelativePath(copy.At("pages"), path),
                path =>
                    $"{File.GetLastWriteTimeUtc(path):O} "
                    + $"{Convert.ToHexString(System.Security.Cryptography.SHA256.HashData(File.ReadAllBytes(path)))}",
                StringComparer.Ordinal
            );

    private static List<string> Bytes(CollectionCopy copy) => [.. Pages(copy).Select(page => $"{page.Key} {page.Value.Split(' ')[1]}")];
}
