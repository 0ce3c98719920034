using Ohmstead.Tests.Support;

namespace Ohmstead.Machine.Tests.Processes;

/// <summary>Streams that are closed or full, and the machine's own settings.</summary>
public sealed class PipeTests
{
    [Fact]
    public async Task A_reader_that_goes_away_early_stops_nothing_and_hears_no_complaint()
    {
        var run = await Child.ShellAsync("{ $ohmstead explain; echo $? >&2; } | head -n 1", CollectionCopy.Untouched);
        Assert.Equal("0\n", run.Error);
        Assert.StartsWith("accuracy-doubtful ", run.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("check .")]
    [InlineData("explain")]
    [InlineData("why SP-0001 --in .")]
    public async Task A_full_device_is_told_on_one_line_and_ends_with_3(string command)
    {
        Assert.SkipUnless(TestExtent.IsAll || command == "check .", TestExtent.LeftOut);
        var run = await Child.ShellAsync($"$ohmstead {command} > /dev/full", CollectionCopy.Untouched);
        Assert.Equal(3, run.Exit);
        Assert.StartsWith("could not read or write: ", run.Error, StringComparison.Ordinal);
        Assert.Equal(1, run.Error.Count(c => c == '\n'));
    }

    [Fact]
    public async Task With_both_streams_full_only_the_exit_code_is_left() =>
        Assert.Equal(3, (await Child.ShellAsync("$ohmstead check . > /dev/full 2> /dev/full", CollectionCopy.Untouched)).Exit);

    [Theory]
    [InlineData("check .", "<&-", 0, "boards")]
    [InlineData("check .", "2>&-", 0, "boards")]
    [InlineData("check .", ">&-", 3, null)]
    [InlineData("bench SP-0007 --by RK --in .", "<&-", 0, "SP-0007")]
    [InlineData("bench SP-0007 --by RK --in .", "<&- >&-", 3, null)]
    [InlineData("report . --to pages", "<&- 2>&-", 0, "files written")]
    [InlineData("report . --to pages", "<&- >&- 2>&-", 3, null)]
    public async Task A_stream_that_is_closed_is_not_there_and_no_record_takes_its_place(string line, string closed, int exit, string? says)
    {
        Assert.SkipUnless(TestExtent.IsAll || (line == "check ." && closed != "2>&-"), TestExtent.LeftOut);
        using var copy = CollectionCopy.Make();
        var run = await Child.ShellAsync($"exec $ohmstead {line} < /dev/null {closed}", copy.Root);
        var canTell = exit != 0 && !closed.Contains("2>", StringComparison.Ordinal);
        Assert.Equal((exit, canTell ? "could not read or write: the output is closed\n" : string.Empty), (run.Exit, run.Error));
        Assert.Equal(says is not null, run.Out.Contains(says ?? "\n", StringComparison.Ordinal));
        Assert.All(Directory.GetFiles(CollectionCopy.Untouched, "*", SearchOption.AllDirectories), file => IsAsItWas(file, copy));
    }

    [Theory]
    [InlineData("check .", "1< /dev/null")]
    [InlineData("why SP-0077 --in .", "2< /dev/null")]
    [InlineData("check .", "1< /dev/null 2< /dev/null")]
    public async Task A_stream_that_takes_nothing_is_a_failure_and_no_crash(string line, string streams)
    {
        Assert.SkipUnless(TestExtent.IsAll || streams.Length > 15, TestExtent.LeftOut);
        var run = await Child.ShellAsync($"exec $ohmstead {line} {streams}", CollectionCopy.Untouched);
        Assert.Equal(3, run.Exit);
        Assert.DoesNotContain("   at ", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_entry_with_all_streams_closed_leaves_the_record_whole()
    {
        using var copy = CollectionCopy.Make();
        const string board = "boards/SP-0007.md";
        var before = copy.Read(board);
        const string enter = "enter SP-0007 C3 46.1uF --lifted --by RK --instrument bridge-1 --in .";
        Assert.Equal(3, (await Child.ShellAsync($"exec $ohmstead {enter} <&- >&- 2>&-", copy.Root)).Exit);
        // Whether it stands is another matter: it says nothing else than before, or that one entry more.
        Assert.Equal(0, Run.Of("check", copy.Root, "--as-of", "2026-11-25").Exit);
        Assert.True(
            copy.Read(board) == before
                || copy.Read(board).Contains("{ part: C3, circuit: out, capacitance: 46.1 µF }", StringComparison.Ordinal)
        );
    }

    [Fact]
    public async Task The_language_of_the_machine_and_its_time_zone_change_nothing()
    {
        Assert.SkipUnless(TestExtent.IsAll, TestExtent.LeftOut);
        var plain = await Child.ShellAsync("$ohmstead check .", CollectionCopy.Untouched, ("LC_ALL", "C"), ("TZ", "UTC"));
        var other = await Child.ShellAsync(
            "$ohmstead check . < /dev/null",
            CollectionCopy.Untouched,
            ("LC_ALL", "tr_TR.ISO-8859-9"),
            ("TZ", "Pacific/Kiritimati"),
            ("NO_COLOR", "")
        );
        Assert.Equal(plain, other);
        Assert.Equal(0, plain.Exit);
        Assert.DoesNotContain('\u001b', plain.Out);
    }

    [Theory]
    [InlineData("")]
    [InlineData("-1")]
    [InlineData("yesterday")]
    [InlineData("99999999999999999999")]
    public async Task A_wrong_day_in_the_environment_ends_with_2_and_names_the_variable(string epoch)
    {
        var run = await Child.ShellAsync("$ohmstead check .", CollectionCopy.Untouched, ("SOURCE_DATE_EPOCH", epoch));
        Assert.Equal(2, run.Exit);
        Assert.StartsWith("SOURCE_DATE_EPOCH is ", run.Error, StringComparison.Ordinal);
    }

    private static void IsAsItWas(string file, CollectionCopy copy) =>
        Assert.Equal(File.ReadAllBytes(file), File.ReadAllBytes(copy.At(Path.GetRelativePath(CollectionCopy.Untouched, file))));
}
