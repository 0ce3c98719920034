using Ohmstead.Tests.Support;

namespace Ohmstead.Machine.Tests.Faults;

/// <summary>Tables taken in while calls of the system fail: all records are written, or none.</summary>
public sealed class MovementFaultTests
{
    private const string TakeIn =
        "exec $ohmstead take-in --boards lists/boards.csv --parts lists/parts.csv --readings lists/readings.csv --work lists/work.csv "
        + "--days day-first --decimals comma --kind 'R=metal film resistor' --write --in .";

    [Fact]
    public async Task Every_text_is_on_the_disk_before_the_first_is_put_in_place()
    {
        Assert.SkipWhen(FaultLibrary.Path is null, FaultLibrary.Missing);
        using var copy = CollectionCopy.Make();
        var run = await new WatchedProgram(Child.Program, copy.Root).ShellAsync(TakeIn);
        Assert.Equal(0, run.Run.Exit);
        string[] trace = [.. run.Trace(copy.Root)];
        string[] places = [.. trace.Where(call => call.StartsWith("rename boards/", StringComparison.Ordinal))];
        Assert.Equal(3, places.Length);
        Assert.True(
            Array.FindLastIndex(trace, call => call.StartsWith("sync boards/.", StringComparison.Ordinal)) < Array.IndexOf(trace, places[0])
        );
        Assert.Equal("sync boards", trace.SkipWhile(call => call != places[^1]).ElementAt(1));
    }

    [Theory]
    [InlineData(CallKind.Rename, 2, CallError.InputOutput)]
    [InlineData(CallKind.Rename, 4, CallError.InputOutput)]
    [InlineData(CallKind.Write, 3, CallError.NoSpace)]
    [InlineData(CallKind.Sync, 2, CallError.InputOutput)]
    public async Task When_one_text_cannot_be_written_the_collection_is_as_it_was(CallKind kind, int at, CallError error)
    {
        Assert.SkipUnless(TestExtent.IsAll || (kind, at) is (CallKind.Rename, 2), TestExtent.LeftOut);
        Assert.SkipWhen(FaultLibrary.Path is null, FaultLibrary.Missing);
        using var copy = CollectionCopy.Make();
        var before = WritingCommands.Files(copy);
        var run = await new WatchedProgram(Child.Program, copy.Root).ShellAsync(TakeIn, new(kind, at, error));
        Assert.Equal(3, run.Run.Exit);
        Assert.Contains("nothing was written, the collection is as it was", run.Run.Error, StringComparison.Ordinal);
        Assert.Equal(before, WritingCommands.Files(copy));
        Assert.Equal(0, (await Child.ShellAsync(TakeIn, copy.Root)).Exit);
        Assert.Empty(Directory.GetFiles(copy.At("boards"), ".*"));
    }

    [Fact]
    public async Task A_movement_that_nobody_can_be_told_of_is_taken_back()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "closes streams with a shell");
        using var copy = CollectionCopy.Make();
        var before = WritingCommands.Files(copy);
        var run = await Child.ShellAsync(TakeIn + " > /dev/full", copy.Root);
        Assert.Equal(3, run.Exit);
        Assert.Contains("nothing was written, the collection is as it was", run.Error, StringComparison.Ordinal);
        Assert.Equal(before, WritingCommands.Files(copy));
    }
}
