using Ohmstead.Tests.Support;

namespace Ohmstead.Machine.Tests.Disk;

/// <summary>A link where a command writes: it is refused on one line, and neither what it leads to nor anything else is touched.</summary>
public sealed class LinkTests
{
    /// <summary>A command that writes, where the link is, and what it leads to: a file or a folder of somebody else, or nothing.</summary>
    public static TheoryData<string, string, string> Links { get; } =
        new()
        {
            { "sheet SP-0007 --in . --to out.html", "out.html", "file.txt" },
            { "sheet SP-0007 --in . --to out.html --over", "out.html", "file.txt" },
            { "sheet SP-0007 --in . --to out.html --over", "out.html", "nowhere" },
            { "sheet SP-0007 --in . --to out.html --over", "out.html", "folder" },
            { "sheet SP-0007 --in . --to sheets/out.html", "sheets", "folder" },
            { "sheet SP-0007 --in . --to sheets/of/out.html", "sheets", "folder" },
            { "ahead . --calendar out.ics", "out.ics", "file.txt" },
            { "ahead . --calendar out.ics --over", "out.ics", "file.txt" },
            { "ahead . --calendar out.ics --over", "out.ics", "nowhere" },
            { "ahead . --calendar calendars/out.ics", "calendars", "folder" },
            { "report . --to pages", "pages", "empty" },
            { "report . --to pages", "pages", "nowhere" },
            { "report . --to out/pages", "out", "folder" },
            { "report . --to pages", ".pages.ohmstead-new", "folder" },
            { "report . --to pages", ".pages.ohmstead-new", "nowhere" },
            { "start board SP-0090 --name Logger --in .", "boards", "folder" },
            { "start design new-one --from SP-0019 --in .", "designs", "folder" },
            { "start collection . --name Demo --schemas", "schema", "folder" },
            { "start collection . --name Demo --schemas", ".vscode", "folder" },
            { "start collection . --name Demo --program saltmarsh/ohmstead", ".github", "folder" },
            { "start collection new --name Demo", "new", "folder" },
            { "start collection new/one --name Demo", "new", "folder" },
        };

    [Theory]
    [MemberData(nameof(Links))]
    public async Task A_link_in_the_way_is_refused_and_nothing_is_touched(string command, string link, string leadsTo)
    {
        Assert.SkipUnless(
            TestExtent.IsAll || TestExtent.Of([.. Links.Select(row => row.Data)], usual: 4).Contains((command, link, leadsTo)),
            TestExtent.LeftOut
        );
        Assert.SkipWhen(OperatingSystem.IsWindows(), "makes links as anybody may elsewhere");
        using var outside = CollectionCopy.Empty();
        outside.Write("file.txt", "somebody else's");
        Directory.CreateDirectory(outside.At("empty"));
        outside.Write("folder/of/letter.txt", "somebody else's too");
        using var copy = CollectionCopy.Make();
        if (Directory.Exists(copy.At(link)))
        {
            Directory.Move(copy.At(link), copy.At(link + ".aside"));
        }

        File.CreateSymbolicLink(copy.At(link), outside.At(leadsTo));
        var (before, beyond) = (FilesBelow.Of(copy.Root), FilesBelow.Of(outside.Root));

        var run = await Child.ShellAsync($"exec $ohmstead {command}", copy.Root);
        Assert.Equal(before, FilesBelow.Of(copy.Root));
        Assert.Equal(beyond, FilesBelow.Of(outside.Root));
        Assert.Equal(3, run.Exit);
        Assert.Contains("is a symbolic link, and nothing is done through one", run.Error, StringComparison.Ordinal);
        Assert.Equal(1, run.Error.Count(letter => letter == '\n'));
    }

    /// <summary>Where in a report a link is.</summary>
    public static TheoryData<string, string> LinksInPages { get; } =
        new()
        {
            { ".ohmstead-new", "boards" },
            { ".ohmstead-new", "nowhere" },
            { ".ohmstead-report", "boards/SP-0001.md" },
            { "boards", "boards" },
            { "boards", "nowhere" },
            { "badges", "boards" },
            { "index.html", "boards/SP-0001.md" },
            { "boards/SP-0001.html", "boards/SP-0001.md" },
            { "boards/SP-0001.html", "nowhere" },
        };

    [Theory]
    [MemberData(nameof(LinksInPages))]
    public async Task A_link_in_a_report_is_refused_by_the_next_and_nothing_is_touched(string link, string leadsTo)
    {
        Assert.SkipUnless(TestExtent.IsAll || (link is "boards/SP-0001.html" && leadsTo is "nowhere"), TestExtent.LeftOut);
        Assert.SkipWhen(OperatingSystem.IsWindows(), "makes links as anybody may elsewhere");
        using var copy = CollectionCopy.Make();
        Assert.Equal(0, Run.Of("report", copy.Root, "--to", copy.At("pages"), "--as-of", "2026-11-25").Exit);
        // There is something to write, and a board whose page would go.
        copy.Write(
            "boards/SP-0003.md",
            copy.Read("boards/SP-0003.md").Replace("spare from the boat house", "spare out of it", StringComparison.Ordinal)
        );
        copy.Write(
            "pages/.ohmstead-report",
            copy.Read("pages/.ohmstead-report") + "boards/SP-0002.md\n../boards/SP-0002.md\n/etc/nothing\n"
        );
        var at = copy.At($"pages/{link}");
        if (Path.Exists(at))
        {
            Directory.Move(at, copy.At("aside"));
        }

        File.CreateSymbolicLink(at, copy.At(leadsTo));
        var before = FilesBelow.Of(copy.Root);
        var run = await Child.ShellAsync("exec $ohmstead report . --to pages", copy.Root);
        Assert.Equal(before, FilesBelow.Of(copy.Root));
        Assert.Equal(3, run.Exit);
        Assert.Contains("is a symbolic link, and nothing is done through one", run.Error, StringComparison.Ordinal);
        Assert.Equal(1, run.Error.Count(letter => letter == '\n'));
    }

    [Fact]
    public void A_list_of_pages_takes_nothing_away_that_lies_outside_of_them()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "makes links as anybody may elsewhere");
        using var copy = CollectionCopy.Make();
        Directory.CreateDirectory(copy.At("pages"));
        copy.Write(
            "pages/.ohmstead-report",
            "../boards/SP-0002.md\nin/SP-0002.md\n../../x\nboards//SP-0002.md\n" + copy.At("boards/SP-0002.md") + "\n"
        );
        Directory.CreateSymbolicLink(copy.At("pages/in"), copy.At("boards"));
        var before = FilesBelow.Of(copy.At("boards"));
        Assert.NotEqual(0, Run.Of("report", copy.Root, "--to", copy.At("pages")).Exit);
        Assert.Equal(before, FilesBelow.Of(copy.At("boards")));
    }

    [Fact]
    public async Task Links_above_the_folder_that_a_person_works_in_are_their_own_and_are_followed()
    {
        Assert.SkipUnless(TestExtent.IsAll, TestExtent.LeftOut);
        Assert.SkipWhen(OperatingSystem.IsWindows(), "makes links as anybody may elsewhere");
        using var copy = CollectionCopy.Make();
        using var home = CollectionCopy.Empty();
        Directory.CreateSymbolicLink(home.At("boards of mine"), copy.Root);
        var run = await Child.ShellAsync(
            $"cd '{home.At("boards of mine")}' && $ohmstead sheet SP-0007 --in . --to one.html && cd / && "
                + $"$ohmstead sheet SP-0007 --in '{home.At("boards of mine")}' --to '{home.At("boards of mine")}/two.html' && "
                + $"$ohmstead wait SP-0007 'a pen' --by RK --in '{home.At("boards of mine")}'",
            copy.Root
        );
        Assert.Equal((0, string.Empty), (run.Exit, run.Error));
        Assert.True(File.Exists(copy.At("one.html")) && File.Exists(copy.At("two.html")));
    }

    [Fact]
    public void A_board_behind_a_linked_folder_is_not_written()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "makes links as anybody may elsewhere");
        using var outside = CollectionCopy.Make();
        using var copy = CollectionCopy.Make();
        Directory.Delete(copy.At("boards"), recursive: true);
        Directory.CreateSymbolicLink(copy.At("boards"), outside.At("boards"));
        var beyond = FilesBelow.Of(outside.Root);
        Assert.NotEqual(0, Run.Of("wait", "SP-0007", "a pen", "--by", "RK", "--in", copy.Root).Exit);
        Assert.NotEqual(0, Run.Of("tidy", "--verdicts", copy.Root).Exit);
        Assert.Equal(beyond, FilesBelow.Of(outside.Root));
    }
}
