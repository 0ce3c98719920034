using Ohmstead.Assessment.History;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Commands;

public sealed class LabelsCommandTests
{
    private const string Site = "https://boards.example/saltmarsh/";

    [Theory]
    [InlineData("boards", "SP-0007", "mains; charged")]
    [InlineData("originals", "SP-0007 C1", "crazed suppressor")]
    [InlineData("lots", "L-001", "6 came 2026-01-28")]
    public void Labels_are_written_for_what_is_asked_for(string of, string number, string says)
    {
        using var folder = CollectionCopy.Empty();
        var run = Typed(folder, CollectionCopy.Untouched, "--of", of, "--site", Site);
        Assert.Equal((0, string.Empty), (run.Exit, run.Error));
        Assert.DoesNotContain("without a code", run.Out, StringComparison.Ordinal);
        var page = folder.Read("l.html");
        Assert.Contains(number, Plain(page), StringComparison.Ordinal);
        Assert.Contains(says, Plain(page), StringComparison.Ordinal);
        Assert.Contains("<svg", page, StringComparison.Ordinal);
    }

    [Fact]
    public void The_address_of_the_collection_is_taken_and_one_that_is_said_goes_before_it()
    {
        using var copy = CollectionCopy.Make();
        Assert.Contains("no codes", Typed(copy, copy.Root, "SP-0007").Out, StringComparison.Ordinal);
        Assert.DoesNotContain("<svg", copy.Read("l.html"), StringComparison.Ordinal);
        copy.Write("collection.yaml", copy.Read("collection.yaml") + "site: https://own.example/boards\n");
        Assert.Equal(0, Typed(copy, copy.Root, "SP-0007").Exit);
        Assert.Contains("https://own.example/boards/boards/SP-0007.html", copy.Read("l.html"), StringComparison.Ordinal);
        Assert.Equal(0, Typed(copy, copy.Root, "SP-0007", "--site", Site).Exit);
        Assert.Contains($"{Site}boards/SP-0007.html", copy.Read("l.html"), StringComparison.Ordinal);
        Assert.DoesNotContain("own.example", copy.Read("l.html"), StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_words_write_the_same_bytes_whoever_reads()
    {
        using var folder = CollectionCopy.Empty();
        Assert.Equal(0, Typed(folder, CollectionCopy.Untouched, "--workers", "1", "--site", Site).Exit);
        var first = folder.Read("l.html");
        Assert.Equal(0, Typed(folder, CollectionCopy.Untouched, "--workers", "4", "--site", Site).Exit);
        Assert.Equal(first, folder.Read("l.html"));
    }

    [Theory]
    [InlineData("there is no board 'SP-0707'", "SP-0707")]
    [InlineData("there is no lot 'L-901'", "L-901", "--of", "lots")]
    [InlineData("the sheet has labels 1 to 21", "--from", "22")]
    [InlineData("the sheet has labels 1 to 21", "--from", "0")]
    [InlineData("it is one of 63.5x38.1", "--size", "63x38")]
    [InlineData("give two numbers with an x between", "--size", "63.5 38.1")]
    [InlineData("give two numbers with an x between", "--size", "63.5x38.1", "--margin", "1;2")]
    [InlineData("--grid needs the size", "--grid", "3x7")]
    [InlineData("give --grid with it", "--gap", "1x1")]
    [InlineData("A4 is 210 mm", "--size", "80x30", "--grid", "3x7")]
    [InlineData("A4 is 297 mm", "--size", "60x30", "--grid", "3x9", "--margin", "10x40")]
    [InlineData("is no address of a site", "--site", "ftp://boards.example/")]
    public void What_cannot_be_printed_is_refused_and_nothing_is_written(string why, params string[] typed)
    {
        using var folder = CollectionCopy.Empty();
        var run = Typed(folder, CollectionCopy.Untouched, typed);
        Assert.Equal(2, run.Exit);
        Assert.Contains(why, run.Error, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFileSystemEntries(folder.Root));
    }

    [Fact]
    public void The_bench_sheet_has_the_code_too()
    {
        using var copy = CollectionCopy.Make();
        copy.Write("collection.yaml", copy.Read("collection.yaml") + "site: https://own.example/boards\n");
        Assert.Equal(0, Run.Of("sheet", "SP-0007", "--in", copy.Root, "--to", copy.At("s.html"), "--as-of", "2026-11-25").Exit);
        Assert.Contains("aria-label=https://own.example/boards/boards/SP-0007.html", copy.Read("s.html"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_report_has_the_codes_of_its_boards_where_the_collection_has_an_address_and_none_where_it_has_not()
    {
        using var copy = CollectionCopy.Make();
        Assert.InRange(Run.Of("report", copy.Root, "--to", copy.At("pages"), "--as-of", "2026-11-25").Exit, 0, 1);
        Assert.False(Directory.Exists(copy.At("pages/codes")));
        Assert.DoesNotContain("class=code", copy.Read("pages/boards/SP-0007.html"), StringComparison.Ordinal);
        copy.Write("collection.yaml", copy.Read("collection.yaml") + "site: https://own.example/boards\n");
        Assert.InRange(Run.Of("report", copy.Root, "--to", copy.At("pages"), "--as-of", "2026-11-25").Exit, 0, 1);
        Assert.Equal(CollectionCopy.Boards, Directory.GetFiles(copy.At("pages/codes")).Length);
        Assert.Contains(
            "aria-label=https://own.example/boards/index.html",
            copy.Read("pages/sheets/~collection.html"),
            StringComparison.Ordinal
        );
        Assert.Contains("../codes/SP-0007.svg", copy.Read("pages/boards/SP-0007.html"), StringComparison.Ordinal);
        Assert.Contains("https://own.example/boards/boards/SP-0007.html", copy.Read("pages/feed.xml"), StringComparison.Ordinal);
    }

    // What boards --on tells of that day, and what the clock tells of none.
    [Fact]
    public void The_collection_on_one_sheet_sets_now_beside_a_year_ago()
    {
        using var folder = CollectionCopy.Empty();
        Assert.InRange(Run.Of("report", CollectionCopy.Untouched, "--to", folder.At("pages"), "--as-of", "2027-06-25").Exit, 0, 1);
        var page = Plain(folder.Read("pages/sheets/~collection.html"));
        foreach (var state in BoardStates.All)
        {
            var words = BoardStates.Words(state);
            var (now, then) = (Told(words, "--as-of", "2027-06-25"), Told(words, "--on", "2026-06-25"));
            var row = $"{words}</span><td class=figure>{now}<td class=figure>{then}";
            Assert.Equal(now + then > 0, page.Contains(row, StringComparison.Ordinal));
        }

        static int Told(string state, params string[] on) =>
            Run.Of(["boards", "--state", state, "--brief", "--in", CollectionCopy.Untouched, .. on])
                .Out.Split('\n')
                .Count(line => line.StartsWith("SP-", StringComparison.Ordinal));
    }

    private static Run Typed(CollectionCopy folder, string collection, params string[] words) =>
        Run.Of(["labels", .. words, "--in", collection, "--to", folder.At("l.html"), "--as-of", "2026-11-25"]);

    // Days and names stand in elements of their own.
    private static string Plain(string page) =>
        page.Replace("<i>", "", StringComparison.Ordinal).Replace("</i>", "", StringComparison.Ordinal).Replace('\u00A0', ' ');
}
