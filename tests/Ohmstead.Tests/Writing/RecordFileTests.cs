using Ohmstead.Tests.Support;
using Ohmstead.Writing;

namespace Ohmstead.Tests.Writing;

public sealed class RecordFileTests
{
    [Fact]
    public void What_an_editor_saved_meanwhile_is_not_overwritten()
    {
        using var copy = CollectionCopy.Empty();
        copy.Write("a.md", "old");
        var problem = Assert.Throws<IOException>(() => RecordFile.Change(copy.Root, "a.md", _ =>
        {
            copy.Write("a.md", "saved by the editor");
            return ("new", 0);
        }));
        Assert.StartsWith("another program changed the file meanwhile; nothing was written", problem.Message, StringComparison.Ordinal);
        Assert.Equal("saved by the editor", copy.Read("a.md"));
        Assert.Equal(["a.md"], Directory.GetFiles(copy.Root).Select(Path.GetFileName));
    }

    [Fact]
    public void Text_that_a_killed_run_left_behind_is_written_over()
    {
        using var copy = CollectionCopy.Empty();
        copy.Write("a.md", "old");
        copy.Write(".a.md.new", "half of somethi");
        Assert.Equal(1, RecordFile.Change(copy.Root, "a.md", text => (text + " and new", 1)));
        Assert.Equal("old and new", copy.Read("a.md"));
        Assert.Equal(["a.md"], Directory.GetFiles(copy.Root).Select(Path.GetFileName));
    }

    [Fact]
    public void A_link_in_the_place_of_the_waiting_text_is_not_written_through()
    {
        using var outside = CollectionCopy.Empty();
        outside.Write("b.md", "somebody else's");
        using var copy = CollectionCopy.Empty();
        copy.Write("a.md", "old");
        File.CreateSymbolicLink(copy.At(".a.md.new"), outside.At("b.md"));
        RecordFile.Change(copy.Root, "a.md", _ => ("new", 0));
        Assert.Equal(("new", "somebody else's"), (copy.Read("a.md"), outside.Read("b.md")));
        Assert.Equal(["a.md"], Directory.GetFiles(copy.Root).Select(Path.GetFileName));
    }

    [Fact]
    public async Task A_full_disk_leaves_the_old_record_and_nothing_else()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "limits the size of files as Linux does");
        using var copy = CollectionCopy.Empty();
        var old = $"---\nboard:   SP-0001\ntitle: Logger\n---\n{new string('x', 20_000)}\n";
        copy.Write("SP-0001.md", old);

        // The runtime maps its own memory by a file, which the limit would stop as well.
        var run = await Child.ShellAsync("trap '' XFSZ; ulimit -f 8; $ohmstead tidy .", copy.Root, ("DOTNET_EnableWriteXorExecute", "0"));
        Assert.Equal(3, run.Exit);
        Assert.StartsWith("SP-0001.md: ", run.Error, StringComparison.Ordinal);
        Assert.Equal(old, copy.Read("SP-0001.md"));
        Assert.Equal(["SP-0001.md"], Directory.GetFiles(copy.Root).Select(Path.GetFileName));
    }
}
