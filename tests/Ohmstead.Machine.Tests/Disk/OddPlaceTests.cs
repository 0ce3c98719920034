using Ohmstead.Machine.Tests.Faults;
using Ohmstead.Tests.Support;

namespace Ohmstead.Machine.Tests.Disk;

/// <summary>Folders and names that no keeper makes on purpose, and machines that give little: what can be done is, the rest is
/// told.</summary>
public sealed class OddPlaceTests
{
    private const int LongestPath = 4096;
    private const int Interrupted = 130;

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public async Task Folders_nested_deeper_than_a_path_may_be_long_are_told_and_all_else_is_checked(int longer)
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "makes folders of a depth that only Linux takes");
        using var copy = CollectionCopy.Make();

        // One of the two depths has a folder whose path is just as long as a path may be, and the next is not to be looked at.
        var first = copy.At("boards/" + new string('e', 1 + longer));
        Directory.CreateDirectory(first);
        var made = await Child.ShellAsync(
            "d=d; i=1; while [ $i -lt 100 ]; do d=$d/d; i=$((i + 1)); done; "
                + "i=0; while [ $i -lt 21 ]; do mkdir -p $d && cd -P $d || exit 1; i=$((i + 1)); done; echo x > SP-0098.md",
            first
        );
        Assert.Equal((0, string.Empty), (made.Exit, made.Error));
        try
        {
            var run = Run.Of("check", copy.Root, "--as-of", "2026-11-25");
            Assert.Equal(3, run.Exit);
            Assert.Contains("this file cannot be read: the system could not read it [file-unreadable]", run.Out, StringComparison.Ordinal);
            Assert.Contains($" files, {CollectionCopy.Boards} boards", run.Out, StringComparison.Ordinal);
        }
        finally
        {
            await Child.ShellAsync("rm -rf boards", copy.Root);
        }
    }

    [Fact]
    public void A_board_a_thousand_folders_deep_is_read_and_has_its_page()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "makes folders deeper than Windows takes");
        using var copy = CollectionCopy.Make();
        copy.Write(
            $"boards/{string.Concat(Enumerable.Repeat("d/", 1_000))}SP-0098.md",
            copy.Read("boards/SP-0003.md").Replace("board: SP-0003", "board: SP-0098", StringComparison.Ordinal)
        );
        Assert.Equal(0, Run.Of("report", copy.Root, "--to", copy.At("pages"), "--as-of", "2026-11-25").Exit);
        Assert.True(File.Exists(copy.At("pages/boards/SP-0098.html")));
    }

    [Fact]
    public void A_name_that_is_too_long_for_the_system_is_told_on_one_line()
    {
        using var copy = CollectionCopy.Make();
        Assert.Equal(2, Run.Of("check", string.Concat(Enumerable.Repeat("a/", LongestPath))).Exit);
        var run = Run.Of("report", copy.Root, "--to", copy.At(new string('a', 300)), "--as-of", "2026-11-25");
        Assert.Equal(3, run.Exit);
        Assert.StartsWith("could not read or write: ", run.Error, StringComparison.Ordinal);
        Assert.Equal(1, run.Error.Count(letter => letter == '\n'));
    }

    [Fact]
    public async Task A_record_that_goes_while_it_is_checked_is_told_and_all_else_is_checked()
    {
        Assert.SkipUnless(TestExtent.IsAll, TestExtent.LeftOut);
        Assert.SkipWhen(FaultLibrary.Path is null, FaultLibrary.Missing);
        using var copy = CollectionCopy.Make();
        var board = copy.At("boards/SP-0004.md");
        // It is renamed aside just before the call that opens it.
        var fault = new SystemFault(CallKind.Open, 1, CallError.None) { Swap = (board, string.Empty) };
        var run = await new WatchedProgram(Child.Program, copy.Root).ShellAsync(
            "exec $ohmstead check .",
            fault,
            ("OHMSTEAD_FAULT_UNDER", board)
        );
        Assert.True(File.Exists(board + ".aside"));
        Assert.Equal(3, run.Run.Exit);
        Assert.Contains("boards/SP-0004.md:1:1: error: this file cannot be read: ", run.Run.Out, StringComparison.Ordinal);
        Assert.Contains(" files, " + (CollectionCopy.Boards - 1) + " boards", run.Run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task With_few_open_files_one_processor_no_folder_for_temporary_files_and_no_rights_for_others_all_is_done()
    {
        Assert.SkipUnless(TestExtent.IsAll, TestExtent.LeftOut);
        Assert.SkipUnless(OperatingSystem.IsLinux(), "takes away from a process as Linux does");
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        using var copy = CollectionCopy.Make();
        using var other = CollectionCopy.Empty();
        File.SetUnixFileMode(copy.At("boards/SP-0007.md"), UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupRead);
        var run = await Child.ShellAsync(
            $"ulimit -n 128; umask 077; $ohmstead wait SP-0007 'a pen' --by RK --in . && $ohmstead report . --to '{other.At("pages")}'",
            copy.Root,
            ("TMPDIR", "/nowhere"),
            ("DOTNET_PROCESSOR_COUNT", "1"),
            ("DOTNET_GCHeapHardLimit", "10000000")
        );
        Assert.Equal((0, string.Empty), (run.Exit, run.Error));
        // The record has the rights that it had; pages are made with those that whoever makes them gives.
        Assert.Equal(
            UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupRead,
            File.GetUnixFileMode(copy.At("boards/SP-0007.md"))
        );
        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(other.At("pages/index.html")));
    }

    [Fact]
    public async Task Where_records_may_not_be_written_they_are_checked_and_a_command_that_would_write_is_told()
    {
        Assert.SkipUnless(TestExtent.IsAll, TestExtent.LeftOut);
        Assert.SkipUnless(OperatingSystem.IsLinux() && Environment.IsPrivilegedProcess, "becomes somebody else, as the superuser may");
        using var copy = CollectionCopy.Make();
        copy.Write("boards/SP-0003.md", copy.Read("boards/SP-0003.md").Replace("title: ", "title:    ", StringComparison.Ordinal));
        using var home = CollectionCopy.Empty();
        var before = FilesBelow.Of(copy.Root);
        var run = await Child.ShellAsync(
            $"chmod -R a+rX,a-w . && chmod 777 '{home.Root}' && exec setpriv --reuid 65534 --regid 65534 --clear-groups "
                + "--inh-caps=-all sh -c "
                + $"'cd \"$1\"; $ohmstead check . > /dev/null; echo check $?; $ohmstead report . --to \"$2\" > /dev/null; echo report $?;"
                + " $ohmstead tidy . > /dev/null; echo tidy $?' sh . "
                + $"'{home.At("pages")}'",
            copy.Root,
            ("HOME", home.Root),
            ("DOTNET_CLI_HOME", home.Root)
        );
        Assert.SkipWhen(run.Error.Contains("setpriv", StringComparison.Ordinal), "there is no setpriv here");
        Assert.Equal("check 0\nreport 0\ntidy 3\n", run.Out);
        Assert.StartsWith("boards/SP-0003.md: ", run.Error, StringComparison.Ordinal);
        Assert.Equal(before, FilesBelow.Of(copy.Root));
    }

    [Theory]
    [InlineData("-a b.png")]
    [InlineData("a#1.png")]
    [InlineData("a;b&amp;'c.png")]
    public void A_photograph_with_an_odd_name_is_shown(string name)
    {
        using var copy = CollectionCopy.Make();
        File.Move(copy.At("photos/SP-0004/c12-print.png"), copy.At("photos/SP-0004/" + name));
        copy.Write(
            "boards/SP-0004.md",
            copy.Read("boards/SP-0004.md").Replace("photos/SP-0004/c12-print.png", $"\"photos/SP-0004/{name}\"", StringComparison.Ordinal)
        );
        var run = Run.Of("report", copy.Root, "--to", copy.At("pages"), "--as-of", "2026-11-25");
        Assert.Equal(0, run.Exit);
        var page = copy.Read("pages/boards/SP-0004.html");
        var source = page[(page.IndexOf("<img", StringComparison.Ordinal))..];
        source = source[(source.IndexOf("src=", StringComparison.Ordinal) + 4)..];
        var address = new Uri(
            new Uri("file://" + copy.At("pages/boards/SP-0004.html")),
            System.Net.WebUtility.HtmlDecode(source[..source.IndexOfAny([' ', '>'])].Trim('"'))
        );
        Assert.Equal((string.Empty, string.Empty), (address.Query, address.Fragment));
        Assert.True(File.Exists(address.LocalPath), address.LocalPath);
    }

    [Fact]
    public async Task Told_to_stop_twice_it_stops_at_once()
    {
        Assert.SkipUnless(TestExtent.IsAll, TestExtent.LeftOut);
        Assert.SkipWhen(FaultLibrary.Path is null, FaultLibrary.Missing);
        using var copy = CollectionCopy.Make();

        // A page never comes to the disk, and who is told to stop waits for it, to take the pages back: once more ends that.
        var hangs = new SystemFault(CallKind.Write, 3, CallError.Hangs);
        var run = await new WatchedProgram(Child.Program, copy.Root).SignalledAsync(
            "exec $ohmstead report . --to pages",
            hangs,
            "INT",
            most: 200
        );
        Assert.Equal((Interrupted, string.Empty, string.Empty), (run.Exit, run.Out, run.Error));
        Assert.False(Directory.Exists(copy.At("pages")));
        Assert.True(Directory.Exists(copy.At(".pages.ohmstead-new")), "the pages were taken back, so nothing hung");
        Assert.Equal(0, Run.Of("report", copy.Root, "--to", copy.At("pages"), "--as-of", "2026-11-25").Exit);
        Assert.False(Directory.Exists(copy.At(".pages.ohmstead-new")));
    }

    [Fact]
    public async Task With_sixty_four_open_files_a_command_does_its_work_or_says_on_one_line_why_not()
    {
        Assert.SkipUnless(TestExtent.IsAll, TestExtent.LeftOut);
        Assert.SkipUnless(OperatingSystem.IsLinux(), "takes away from a process as Linux does");
        using var copy = CollectionCopy.Make();
        var record = copy.Read("boards/SP-0007.md");
        foreach (var command in new[] { "check .", "report . --to pages", "wait SP-0007 'a pen' --by RK --in ." })
        {
            var run = await Child.ShellAsync(
                $"ulimit -n 64; exec $ohmstead {command}",
                copy.Root,
                ("DOTNET_PROCESSOR_COUNT", "1"),
                ("DOTNET_GCHeapHardLimit", "10000000")
            );
            Assert.True(run.Exit is 0 or 3, $"{command}: exit {run.Exit}: {run.Error}");
            // A file that cannot be opened is a finding, too.
            Assert.InRange(run.Error.Count(letter => letter == '\n'), 0, run.Exit == 0 ? 0 : 1);
            Assert.True(run.Exit == 0 || !Directory.Exists(copy.At("pages")) || command[0] != 'r', "half a report");
        }

        Assert.StartsWith(record.TrimEnd()[..100], copy.Read("boards/SP-0007.md"), StringComparison.Ordinal);
        Assert.InRange(Run.Of("check", copy.Root, "--as-of", "2026-11-25").Exit, 0, 1);
    }

    [Fact]
    public async Task Without_enough_memory_the_record_is_named_and_nothing_is_written()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "takes away from a process as Linux does");
        using var copy = CollectionCopy.Empty();
        copy.Write(
            "boards/SP-0001.md",
            "---\nboard: SP-0001\ntitle: Rain counter\nparts:\n"
                + string.Concat(
                    Enumerable.Range(1, 60_000).Select(i => $"- {{ ref: R{i}, kind: carbon film resistor, resistance: 47 kΩ }}\n")
                )
                + "---\n"
        );
        var before = FilesBelow.Of(copy.Root);

        // The limit is a hexadecimal number; with 0x before it the program that is linked ahead of time passes over it.
        foreach (var command in new[] { "check .", "report . --to pages", "wait SP-0001 'a pen' --by RK --in ." })
        {
            var run = await Child.ShellAsync($"exec $ohmstead {command}", copy.Root, ("DOTNET_GCHeapHardLimit", "1800000"));
            Assert.Equal(3, run.Exit);
            Assert.StartsWith("could not read or write: there is not enough memory", run.Error, StringComparison.Ordinal);
            Assert.True(
                run.Error.Contains("boards/SP-0001.md", StringComparison.Ordinal) || command.Contains("SP-0001", StringComparison.Ordinal),
                run.Error
            );
            Assert.Equal(before, FilesBelow.Of(copy.Root));
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(20)]
    [InlineData(500)]
    public async Task However_wide_the_terminal_is_all_is_told(int columns)
    {
        Assert.SkipUnless(TestExtent.IsAll || columns == 1, TestExtent.LeftOut);
        Assert.SkipUnless(OperatingSystem.IsLinux(), "makes a terminal by a tool of Linux");
        using var copy = CollectionCopy.Make();

        // The terminal changes its width while a command runs, too.
        var run = await Child.ShellAsync(
            $"script -qec \"stty cols {columns}; $ohmstead check --help; (sleep 0.3; stty cols 33) & $ohmstead check .; "
                + "echo ends with \\$?\" /dev/null",
            copy.Root
        );
        Assert.SkipWhen(run.Error.Contains("not found", StringComparison.Ordinal), "there is no script here");
        Assert.Contains("ends with 0", run.Out, StringComparison.Ordinal);
        Assert.Contains($" files, {CollectionCopy.Boards} boards", run.Out, StringComparison.Ordinal);
        Assert.Contains("Usage:", run.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("xception", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Without_the_library_for_pictures_the_old_ones_stay_and_the_run_is_incomplete()
    {
        Assert.SkipUnless(TestExtent.IsAll, TestExtent.LeftOut);
        Assert.SkipUnless(OperatingSystem.IsLinux(), "copies the program with a shell");
        using var copy = CollectionCopy.Make();
        using var program = CollectionCopy.Empty();
        Assert.Equal(0, Run.Of("report", copy.Root, "--to", copy.At("pages"), "--as-of", "2026-11-25").Exit);
        var before = FilesBelow.Of(copy.At("pages/photos")).Where(file => !file.Key.StartsWith("SP-0004", StringComparison.Ordinal));
        Assert.NotEmpty(before);
        // Another photograph lies there under the old name, which nobody can size.
        File.Copy(copy.At("photos/SP-0017/tube.png"), copy.At("photos/SP-0004/c12-print.png"), overwrite: true);
        var run = await Child.ShellAsync(
            $"cp '{AppContext.BaseDirectory}'/*.dll '{AppContext.BaseDirectory}/ohmstead.runtimeconfig.json' '{program.Root}' && "
                + $"dotnet '{program.At("ohmstead.dll")}' report . --to pages",
            copy.Root
        );
        Assert.Equal(3, run.Exit);
        Assert.Contains(
            "pictures are missing: the library that opens them does not run on this machine; those made before are there",
            run.Out + run.Error,
            StringComparison.Ordinal
        );
        Assert.Equal(
            before.ToDictionary(),
            FilesBelow.Of(copy.At("pages/photos")).Where(file => !file.Key.StartsWith("SP-0004", StringComparison.Ordinal)).ToDictionary()
        );
        Assert.DoesNotContain("<img", copy.Read("pages/boards/SP-0004.html"), StringComparison.Ordinal);
    }
}
