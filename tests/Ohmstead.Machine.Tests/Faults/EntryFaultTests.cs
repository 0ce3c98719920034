using Ohmstead.Tests.Support;

namespace Ohmstead.Machine.Tests.Faults;

/// <summary>An entry while calls of the system fail: what is said is what happened, and the record is the old one or the new one,
/// whole.</summary>
public sealed class EntryFaultTests
{
    private const string Board = "boards/SP-0007.md";
    private const string Enter = "exec $ohmstead enter SP-0007 C3 46.1uF --lifted --by RK --instrument bridge-1 --in .";

    /// <summary>Each kind of call that an entry makes, and how it fails.</summary>
    public static TheoryData<CallKind, CallError> Faults { get; } =
        new()
        {
            { CallKind.Open, CallError.TooManyOpen },
            { CallKind.Read, CallError.InputOutput },
            { CallKind.Write, CallError.NoSpace },
            { CallKind.Write, CallError.Half },
            { CallKind.Sync, CallError.InputOutput },
            { CallKind.Sync, CallError.ReadOnly },
            { CallKind.Rename, CallError.InputOutput },
            { CallKind.Unlink, CallError.ReadOnly },
            { CallKind.Mode, CallError.NotAllowed },
            { CallKind.Lock, CallError.InputOutput },
            { CallKind.Close, CallError.InputOutput },
            { CallKind.Any, CallError.KilledBefore },
            { CallKind.Any, CallError.KilledAfter },
        };

    [Fact]
    public async Task The_new_text_is_on_the_disk_before_it_has_the_name_of_the_record_and_its_name_before_it_is_told()
    {
        Assert.SkipWhen(FaultLibrary.Path is null, FaultLibrary.Missing);
        using var copy = CollectionCopy.Make();
        var run = await new WatchedProgram(Child.Program, copy.Root).ShellAsync(Enter);
        Assert.Equal(0, run.Run.Exit);
        Assert.Equal(
            [
                "mode boards/.SP-0007.md.new",
                "write boards/.SP-0007.md.new",
                "sync boards/.SP-0007.md.new",
                $"rename boards/.SP-0007.md.new -> {Board}",
                "sync boards",
            ],
            run.Trace(copy.Root)
        );
    }

    [Fact]
    public async Task A_file_that_is_asked_for_comes_in_the_same_order()
    {
        Assert.SkipUnless(TestExtent.IsAll, TestExtent.LeftOut);
        Assert.SkipWhen(FaultLibrary.Path is null, FaultLibrary.Missing);
        using var copy = CollectionCopy.Make();
        var run = await new WatchedProgram(Child.Program, copy.Root).ShellAsync("exec $ohmstead sheet SP-0007 --in . --to a.html");
        Assert.Equal(["write .a.html.new", "sync .a.html.new", "rename .a.html.new -> a.html", "sync ."], run.Trace(copy.Root));
    }

    [Theory]
    [MemberData(nameof(Faults))]
    public async Task Whatever_fails_the_record_is_whole_and_nothing_is_said_to_be_added_that_is_not(CallKind kind, CallError error)
    {
        // A usual run holds a rename that fails and a kill, one moment each.
        Assert.SkipUnless(
            TestExtent.IsAll || (kind, error) is (CallKind.Rename, CallError.InputOutput) or (CallKind.Any, CallError.KilledAfter),
            TestExtent.LeftOut
        );
        Assert.SkipWhen(FaultLibrary.Path is null, FaultLibrary.Missing);
        using var copy = CollectionCopy.Make();
        var old = copy.Read(Board);
        var watched = new WatchedProgram(Child.Program, copy.At("boards"));
        var line = Enter.Replace("--in .", "--in ..", StringComparison.Ordinal);
        var whole = await watched.ShellAsync(line);
        Assert.Equal(0, whole.Run.Exit);
        var entered = copy.Read(Board);
        foreach (var at in Moments.Of(whole.Count(kind), usual: 1, all: 2))
        {
            copy.Write(Board, old);
            var run = await watched.ShellAsync(line, new(kind, at, error));
            var now = copy.Read(Board);
            var words = $"{kind} {at} {error}: exit {run.Run.Exit}\n{run.Run.Out}{run.Run.Error}";
            Assert.True(now == old || now == entered, words);
            Assert.True(!run.Run.Out.Contains("added", StringComparison.Ordinal) || now == entered, words);
            Assert.True(run.Run.Exit != 0 || now == entered, words);
            Assert.DoesNotContain("   at ", run.Run.Error, StringComparison.Ordinal);
            Assert.Contains(
                run.Run.Exit,
                run.IsFaultReached && error is CallError.KilledBefore or CallError.KilledAfter ? [137] : new[] { 0, 2, 3 }
            );

            // Whatever was left stops nobody, and is cleared away.
            if (TestExtent.IsWhole || Directory.GetFiles(copy.At("boards"), ".*").Length > 0)
            {
                Assert.Equal(0, (await Child.ShellAsync($"{line} --sure", copy.At("boards"))).Exit);
                Assert.Empty(Directory.GetFiles(copy.At("boards"), ".*"));
            }
        }
    }

    [Theory]
    [InlineData("enter SP-0007 C3 46.1uF --lifted --by RK --instrument bridge-1 --in .", "> /dev/full")]
    [InlineData("enter SP-0007 C3 46.1uF --lifted --by RK --instrument bridge-1 --in .", ">&-")]
    [InlineData("found SP-0007 C3 \"a crack\" minor --by RK --in .", "> /dev/full")]
    [InlineData("wait SP-0007 \"a pen\" --by RK --in .", "> /dev/full")]
    [InlineData("add part SP-0007 C99 mica 100pF --in .", "> /dev/full")]
    public async Task An_entry_that_nobody_can_be_told_of_is_not_entered(string command, string closed)
    {
        Assert.SkipUnless(TestExtent.IsAll || closed == ">&-", TestExtent.LeftOut);
        Assert.SkipWhen(OperatingSystem.IsWindows(), "closes streams with a shell");
        using var copy = CollectionCopy.Make();
        var before = copy.Read(Board);
        var run = await Child.ShellAsync($"exec $ohmstead {command} {closed}", copy.Root);
        Assert.Equal((3, before), (run.Exit, copy.Read(Board)));
        Assert.Contains("the entry was taken back, so give it again", run.Error, StringComparison.Ordinal);
        Assert.Equal(0, (await Child.ShellAsync($"exec $ohmstead {command}", copy.Root)).Exit);
        Assert.NotEqual(before, copy.Read(Board));
    }
}
