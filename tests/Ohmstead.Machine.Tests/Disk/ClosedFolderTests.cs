using Ohmstead.Tests.Support;

namespace Ohmstead.Machine.Tests.Disk;

/// <summary>Where a folder of records is not looked into, nothing is written that hangs on what lies in it: a number that seems free, a
/// sheet without half of the parts, a calendar without its dues, verdicts without the design.</summary>
public sealed class ClosedFolderTests
{
    [Theory]
    [InlineData("boards", 3, "start board SP-0004 --in @")]
    [InlineData("designs", 3, "sheet SP-0007 --to @/sheet.html --in @")]
    [InlineData("designs", 1, "ahead @ --calendar @/ahead.ics")]
    [InlineData("designs", 1, "tidy @/boards/SP-0007.md --verdicts")]
    [InlineData("designs", 1, "decide SP-0007 BR1 watch content --in @")]
    [InlineData("boards", 3, "take-in --parts @/list.csv --board SP-0007 --write --in @")]
    public void Nothing_is_written_that_hangs_on_what_is_not_known(string folder, int exit, string line)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "makes a link by a shell");
        using var copy = CollectionCopy.Make();
        using var outside = CollectionCopy.Empty();
        copy.Write("list.csv", "Ref,Value,Kind\nC1,10 uF,aluminium electrolytic\n");
        Directory.Move(copy.At(folder), outside.At(folder));
        Directory.CreateSymbolicLink(copy.At(folder), outside.At(folder));
        var (before, beside) = (FilesBelow.Of(copy.Root), FilesBelow.Of(outside.Root));
        var run = Run.Of([.. line.Replace("@", copy.Root, StringComparison.Ordinal).Split(' '), "--as-of", "2026-11-25"]);
        Assert.Equal(exit, run.Exit);
        Assert.Equal(before, FilesBelow.Of(copy.Root));
        Assert.Equal(beside, FilesBelow.Of(outside.Root));
        Assert.NotEmpty(run.Error);
    }
}
