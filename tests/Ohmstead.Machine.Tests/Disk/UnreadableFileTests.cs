using System.Net.Sockets;
using System.Text.RegularExpressions;
using Ohmstead.Machine.Tests.Faults;
using Ohmstead.Tests.Support;

namespace Ohmstead.Machine.Tests.Disk;

/// <summary>Files that are there and cannot or must not be read: the run goes on without them. A link is a finding; whatever could not be
/// read makes the run incomplete.</summary>
public sealed class UnreadableFileTests
{
    [Fact]
    public void A_linked_record_is_not_followed_and_nothing_of_its_target_is_shown()
    {
        using var outside = CollectionCopy.Empty();
        outside.Write("secret.md", "the keeper's own words");
        using var copy = CollectionCopy.Make();
        File.CreateSymbolicLink(copy.At("boards/SP-0099.md"), outside.At("secret.md"));
        foreach (var path in new[] { copy.Root, copy.At("boards/SP-0099.md") })
        {
            var run = Check(path);
            Assert.Equal(1, run.Exit);
            Assert.Contains(
                "boards/SP-0099.md:1:1: error: this is a symbolic link, which is not followed [symbolic-link]",
                run.Out,
                StringComparison.Ordinal
            );
            Assert.DoesNotContain("keeper", run.Out, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_linked_folder_is_told_once_and_a_circle_of_links_ends()
    {
        using var copy = CollectionCopy.Make();
        Directory.CreateSymbolicLink(copy.At("boards/again"), copy.At("boards"));
        var findings = ShownFinding.FromJson(Check(copy.Root, "--form", "json").Out).Where(finding => finding.Check == "symbolic-link");
        Assert.Equal("boards/again", Assert.Single(findings).Path);
    }

    [Fact]
    public void A_linked_list_of_instruments_is_not_followed()
    {
        using var copy = CollectionCopy.Make();
        File.Move(copy.At("instruments.yaml"), copy.At("elsewhere.yaml"));
        File.CreateSymbolicLink(copy.At("instruments.yaml"), copy.At("elsewhere.yaml"));
        var run = Check(copy.Root, "--form", "json");
        Assert.Equal(1, run.Exit);
        Assert.Contains(ShownFinding.FromJson(run.Out), finding => finding is { Path: "instruments.yaml", Check: "symbolic-link" });
    }

    [Fact]
    public void A_report_copies_nothing_from_behind_a_link_and_a_list_that_lacks_a_record_ends_as_incomplete()
    {
        using var outside = CollectionCopy.Empty();
        outside.Write("secret.md", "---\nboard: SP-0099\ntitle: the keeper's own words\n---\n");
        outside.Write("SP-0098.md", outside.Read("secret.md").Replace("0099", "0098", StringComparison.Ordinal));
        using var copy = CollectionCopy.Make();
        File.CreateSymbolicLink(copy.At("boards/SP-0099.md"), outside.At("secret.md"));
        Directory.CreateSymbolicLink(copy.At("boards/more"), outside.Root);
        using var pages = CollectionCopy.Empty();
        Assert.Equal(1, Run.Of("report", copy.Root, "--to", pages.At("pages"), "--as-of", "2026-11-25").Exit);
        var files = Directory.GetFiles(pages.At("pages"), "*", SearchOption.AllDirectories);
        Assert.DoesNotContain(files, file => file.Contains("SP-009", StringComparison.Ordinal));
        Assert.All(files, file => Assert.DoesNotContain("the keeper's own", File.ReadAllText(file), StringComparison.Ordinal));
        Assert.Equal(3, Run.Of("buy", copy.Root, "--as-of", "2026-11-25").Exit);
    }

    [Theory]
    [InlineData("mkfifo boards/SP-0099.md", "boards/SP-0099.md:1:1: error: this file cannot be read: it is a pipe, a socket or a device")]
    [InlineData("rm stock.yaml; mkfifo stock.yaml", "stock.yaml:1:1: error: this file cannot be read: it is a pipe, a socket or a device")]
    [InlineData("rm stock.yaml; mkdir stock.yaml", "stock.yaml:1:1: error: this file cannot be read: it is a folder")]
    [InlineData("SOCKET boards/SP-0099.md", "boards/SP-0099.md:1:1: error: this file cannot be read: it is a pipe, a socket or a device")]
    [InlineData("SOCKET stock.yaml", "stock.yaml:1:1: error: this file cannot be read: it is a pipe, a socket or a device")]
    [InlineData(
        "SOCKET designs/tide-logger.md",
        "designs/tide-logger.md:1:1: error: this file cannot be read: it is a pipe, a socket or a device"
    )]
    [InlineData(
        "rm designs/tide-logger.md; mkfifo designs/tide-logger.md",
        "designs/tide-logger.md:1:1: error: this file cannot be read: it is a pipe, a socket or a device"
    )]
    [InlineData(
        "rm stock.yaml; mknod stock.yaml c 1 5",
        "stock.yaml:1:1: error: this file cannot be read: it is a pipe, a socket or a device"
    )]
    [InlineData("SOCKET instruments.yaml", "instruments.yaml:1:1: error: this file cannot be read: it is a pipe, a socket or a device")]
    [InlineData(
        "mknod boards/SP-0099.md c 1 5",
        "boards/SP-0099.md:1:1: error: this file cannot be read: it is a pipe, a socket or a device"
    )]
    public async Task What_is_no_file_never_keeps_the_run_waiting_and_is_told(string made, string told)
    {
        Assert.SkipUnless(
            OperatingSystem.IsLinux() && (Environment.IsPrivilegedProcess || !made.Contains("mknod", StringComparison.Ordinal)),
            "makes what is no file by a shell"
        );
        using var copy = CollectionCopy.Make();
        using var socket = new Socket(AddressFamily.Unix, SocketType.Stream, ProtocolType.Unspecified);
        if (made.StartsWith("SOCKET ", StringComparison.Ordinal))
        {
            var path = copy.At(made["SOCKET ".Length..]);
            File.Delete(path);
            socket.Bind(new UnixDomainSocketEndPoint(path));
        }
        else
        {
            Assert.Equal(0, (await Child.ShellAsync(made, copy.Root)).Exit);
        }

        var run = Check(copy.Root);
        Assert.Equal(3, run.Exit);
        Assert.Contains(told, run.Out, StringComparison.Ordinal);
        Assert.Contains($" files, {CollectionCopy.Boards} boards", run.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("mkfifo")]
    [InlineData("SOCKET")]
    [InlineData("mknod")]
    public async Task What_is_no_file_in_the_place_of_a_photograph_keeps_neither_check_nor_report_waiting(string how)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "makes a pipe by a shell");
        Assert.SkipUnless(how != "mknod" || Environment.IsPrivilegedProcess, "makes a device as the superuser may");
        using var copy = CollectionCopy.Make();
        var photograph = copy.At("photos/SP-0004/c12-print.png");
        File.Delete(photograph);
        using var socket = new Socket(AddressFamily.Unix, SocketType.Stream, ProtocolType.Unspecified);
        if (how == "SOCKET")
        {
            socket.Bind(new UnixDomainSocketEndPoint(photograph));
        }
        else
        {
            Assert.Equal(0, (await Child.ShellAsync($"{how} '{photograph}'{(how == "mknod" ? " c 1 5" : string.Empty)}", copy.Root)).Exit);
        }

        foreach (var run in new[] { Check(copy.Root), Run.Of("report", copy.Root, "--to", copy.At("pages"), "--as-of", "2026-11-25") })
        {
            Assert.True(run.Exit is 0 or 1, run.Error);
            Assert.Contains("is a pipe, a socket or a device", run.Out, StringComparison.Ordinal);
            Assert.Contains($"{CollectionCopy.Boards} boards", run.Out, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData(CallKind.Open, "boards/more", "boards/more:1:1: error: this file cannot be read")]
    [InlineData(CallKind.List, "boards/more", "boards/more:1:1: error: this file cannot be read")]
    [InlineData(CallKind.Open, "photos/SP-0004", "[photograph-unreadable]")]
    [InlineData(CallKind.Open, "boards/SP-0004.md", "boards/SP-0004.md:1:1: error: this file cannot be read")]
    public async Task What_the_system_does_not_give_is_told_and_all_else_is_checked(CallKind kind, string under, string told)
    {
        Assert.SkipUnless(TestExtent.IsAll || under == "boards/SP-0004.md", TestExtent.LeftOut);
        Assert.SkipWhen(FaultLibrary.Path is null, FaultLibrary.Missing);
        using var copy = CollectionCopy.Make();
        copy.Write(
            "boards/more/SP-0098.md",
            copy.Read("boards/SP-0003.md").Replace("board: SP-0003", "board: SP-0098", StringComparison.Ordinal)
        );
        var fault = new SystemFault(kind, 1, CallError.NotAllowed) { Lasts = true };
        var run = await new WatchedProgram(Child.Program, copy.Root).ShellAsync(
            "exec $ohmstead check .",
            fault,
            ("OHMSTEAD_FAULT_UNDER", copy.At(under))
        );
        Assert.True(run.IsFaultReached);
        Assert.Contains(told, run.Run.Out, StringComparison.Ordinal);
        Assert.Contains(
            $" files, {(under.StartsWith("boards", StringComparison.Ordinal) ? CollectionCopy.Boards : CollectionCopy.Boards + 1)} boards",
            run.Run.Out,
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData("rm boards/SP-0007.md; mkfifo boards/SP-0007.md")]
    [InlineData("printf '\\377' >> boards/SP-0007.md")]
    public async Task A_record_that_cannot_be_read_is_told_as_that_and_not_as_no_board(string made)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "makes it by a shell");
        using var copy = CollectionCopy.Make();
        Assert.Equal(0, (await Child.ShellAsync(made, copy.Root)).Exit);
        foreach (var command in new[] { "why SP-0007", "enter SP-0007 C3 46.1uF --by RK", "sheet SP-0007", "fit SP-0007 C3" })
        {
            var run = Run.Of([.. command.Split(' '), "--in", copy.Root]);
            Assert.NotEqual(0, run.Exit);
            Assert.StartsWith("the record of SP-0007 is there and cannot be read: boards/SP-0007.md:", run.Error, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void The_page_of_a_record_that_cannot_be_read_stays_and_says_so_until_it_can()
    {
        using var copy = CollectionCopy.Make();
        Run Report() => Run.Of("report", copy.Root, "--to", copy.At("pages"), "--as-of", "2026-11-25");
        Assert.Equal(0, Report().Exit);
        var (record, page, data) = (
            copy.Read("boards/SP-0004.md"),
            copy.Read("pages/boards/SP-0004.html"),
            copy.Read("pages/boards/SP-0004.json")
        );
        copy.Write("boards/SP-0004.md", record.Replace("title:", "titel:", StringComparison.Ordinal));
        for (var time = 0; time < 2; time++)
        {
            var run = Report();
            Assert.Equal(1, run.Exit);
            Assert.Contains(
                "boards/SP-0004.md cannot be read: its page stays that of an earlier report",
                run.Out,
                StringComparison.Ordinal
            );
            var older = copy.Read("pages/boards/SP-0004.html");
            Assert.Contains(
                "This page is of an earlier report: on 2026-11-25 the record could not be read.",
                older,
                StringComparison.Ordinal
            );
            Assert.Equal(
                page,
                older
                    .Replace(
                        "<p><strong>This page is of an earlier report: on 2026-11-25 the record could not be read.</strong></p>",
                        string.Empty,
                        StringComparison.Ordinal
                    )
                    .Replace(" content=\"Of an earlier report: Fit to run: ", " content=\"Fit to run: ", StringComparison.Ordinal)
            );
            // Whoever sees only what the page says of itself is told first, and once.
            Assert.Single(Regex.Matches(older, "<meta name=description [^>]*content=\"Of an earlier report: Fit to run: "));
            Assert.Equal(data, copy.Read("pages/boards/SP-0004.json"));
            Assert.Single(Directory.GetFiles(copy.At("pages/photos/SP-0004")));
        }

        copy.Write("boards/SP-0004.md", record);
        Assert.Equal(0, Report().Exit);
        Assert.Equal(page, copy.Read("pages/boards/SP-0004.html"));
    }

    [Fact]
    public async Task A_name_that_is_not_UTF_8_is_told_and_the_other_records_are_read()
    {
        using var copy = CollectionCopy.Make();
        Assert.Equal(0, (await Child.ShellAsync("printf x > \"$(printf 'boards/SP-\\377.md')\"", copy.Root)).Exit);
        var run = Check(copy.Root);
        // What removes the folder afterwards cannot name it.
        await Child.ShellAsync("rm \"$(printf 'boards/SP-\\377.md')\"", copy.Root);
        Assert.Equal(3, run.Exit);
        Assert.Contains("there is no such file, or its name is not UTF-8 [file-unreadable]", run.Out, StringComparison.Ordinal);
        Assert.Contains($" files, {CollectionCopy.Boards} boards", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_of_a_million_million_bytes_is_refused_by_its_size()
    {
        using var copy = CollectionCopy.Make();
        using (var file = File.Create(copy.At("boards/SP-0099.md")))
        {
            file.SetLength(1L << 40);
        }

        var run = Check(copy.Root);
        Assert.Equal(3, run.Exit);
        Assert.Contains(
            "this file cannot be read: it has 1099511627776 bytes, at most 16777216 are read [file-unreadable]",
            run.Out,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_folder_with_the_name_of_a_record_is_no_record()
    {
        using var copy = CollectionCopy.Make();
        Directory.CreateDirectory(copy.At("boards/SP-0099.md"));
        Assert.Equal(Check(CollectionCopy.Untouched).Out, Check(copy.Root).Out);
    }

    [Fact]
    public void Five_thousand_mistakes_in_one_file_are_counted_and_fifty_are_shown()
    {
        using var copy = CollectionCopy.Make();
        copy.Write(
            "boards/SP-0099.md",
            "---\nboard: SP-0099\ntitle: Rain counter\nparts:\n"
                + string.Concat(Enumerable.Range(1, 5_000).Select(i => $"  - {{ ref: C{i}, kind: capacitor }}\n"))
                + "---\n"
        );
        var run = Check(copy.Root);
        Assert.Equal(1, run.Exit);
        Assert.Equal(
            50,
            run.Out.Split('\n')
                .Count(line =>
                    line.StartsWith("boards/SP-0099.md:", StringComparison.Ordinal) && line.Contains(": error: ", StringComparison.Ordinal)
                )
        );
        Assert.Contains("boards/SP-0099.md: 4950 more findings in this file are not shown", run.Out, StringComparison.Ordinal);
        Assert.Contains("5000 errors", run.Out, StringComparison.Ordinal);
    }

    private static Run Check(params string[] words) => Run.Of(["check", .. words, "--as-of", "2026-11-25"]);
}
