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
        var problem = Assert.Throws<IOException>(() => RecordFile.Change(copy.Root, "a.md", null, _ =>
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
        Assert.Equal(1, RecordFile.Change(copy.Root, "a.md", null, text => (text + " and new", 1)));
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
        RecordFile.Change(copy.Root, "a.md", null, _ => ("new", 0));
        Assert.Equal(("new", "somebody else's"), (copy.Read("a.md"), outside.Read("b.md")));
        Assert.Equal(["a.md"], Directory.GetFiles(copy.Root).Select(Path.GetFileName));
    }

    [Fact]
    public async Task The_owner_and_the_permissions_of_a_record_stay()
    {
        Assert.SkipUnless(
            OperatingSystem.IsLinux() && Environment.IsPrivilegedProcess,
            "gives a file to somebody else, as the superuser may"
        );
        using var copy = CollectionCopy.Make();
        const string board = "boards/SP-0007.md";
        Assert.Equal(
            0,
            (
                await Child.ShellAsync(
                    $"chown 12345:23456 {board} && chmod 640 {board} && $ohmstead wait SP-0007 'a pen' --in .",
                    copy.Root
                )
            ).Exit
        );
        Assert.Equal("12345:23456 640\n", (await Child.ShellAsync($"stat -c '%u:%g %a' {board}", copy.Root)).Out);
        Assert.Contains("a pen", copy.Read(board), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_second_name_of_a_record_keeps_the_old_text_and_that_is_told()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "gives a file a second name with a shell");
        using var copy = CollectionCopy.Make();
        var old = copy.Read("boards/SP-0007.md");
        var run = await Child.ShellAsync("ln boards/SP-0007.md kept.md && exec $ohmstead wait SP-0007 'a pen' --in .", copy.Root);
        Assert.Equal(
            (
                0,
                "boards/SP-0007.md: the file had 2 names on this disk (hard links); the new text has this one, the old text keeps the "
                    + "others\n"
            ),
            (run.Exit, run.Error)
        );
        Assert.Equal(old, copy.Read("kept.md"));
        Assert.Contains("a pen", copy.Read("boards/SP-0007.md"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("enter", "C3", "46.1uF", "--lifted", "--instrument", "bridge-1", "--by", "RK")]
    [InlineData("found", "C3", "a crack", "minor", "--by", "RK")]
    [InlineData("wait", "a pen", "--by", "RK")]
    public void An_entry_that_stands_already_is_asked_about(string command, params string[] words)
    {
        using var copy = CollectionCopy.Make();
        string[] line = [command, "SP-0007", .. words, "--in", copy.Root, "--as-of", "2026-11-25"];
        Assert.Equal(0, Run.Of(line).Exit);
        var once = copy.Read("boards/SP-0007.md");
        var run = Run.Of(line);
        Assert.Equal((1, once), (run.Exit, copy.Read("boards/SP-0007.md")));
        Assert.Contains("has this entry already, word for word: {", run.Error, StringComparison.Ordinal);
        Assert.Contains("--sure enters it a second time", run.Error, StringComparison.Ordinal);
        Assert.Equal(0, Run.Of([.. line, "--sure"]).Exit);
        Assert.NotEqual(once, copy.Read("boards/SP-0007.md"));
    }

    [Fact]
    public void At_the_bench_the_same_reading_twice_is_asked_about()
    {
        using var copy = CollectionCopy.Make();
        string[] bench = ["bench", "SP-0007", "--by", "RK", "--in", copy.Root, "--as-of", "2026-11-25"];
        var run = Run.Typing("C3 46.1uF\nC3 46.1uF\nn\nC3 46.1uF\ny\nquit\n", bench);
        Assert.Equal(0, run.Exit);
        Assert.Equal(2, run.Out.Split("entered already; is it a second one? y writes it all the same").Length - 1);
        Assert.Equal(2, copy.Read("boards/SP-0007.md").Split("{ part: C3, capacitance: 46.1 µF }").Length - 1);
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
