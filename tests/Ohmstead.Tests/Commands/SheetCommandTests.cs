using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Commands;

public sealed class SheetCommandTests
{
    [Fact]
    public void A_sheet_is_written_into_the_file_that_is_asked_for_and_nothing_else()
    {
        using var folder = CollectionCopy.Empty();
        var run = Run.Of(
            "sheet",
            "SP-0007",
            "--in",
            CollectionCopy.Untouched,
            "--paper",
            "Letter",
            "--to",
            folder.At("s.html"),
            "--as-of",
            "2026-11-25"
        );
        Assert.Equal((0, string.Empty), (run.Exit, run.Error));
        Assert.Equal([folder.At("s.html")], Directory.GetFileSystemEntries(folder.Root));
        Assert.Contains("size: letter", folder.Read("s.html"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("SP-0707", "s.html", "there is no board 'SP-0707'")]
    [InlineData("SP-0007", "s.md", "does not end in .html")]
    public void What_is_no_board_or_no_page_is_refused(string board, string file, string why)
    {
        using var folder = CollectionCopy.Empty();
        var run = Run.Of("sheet", board, "--in", CollectionCopy.Untouched, "--to", folder.At(file));
        Assert.Equal(2, run.Exit);
        Assert.Contains(why, run.Error, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFileSystemEntries(folder.Root));
    }
}
