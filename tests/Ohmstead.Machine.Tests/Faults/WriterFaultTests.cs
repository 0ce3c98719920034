using Ohmstead.Tests.Support;

namespace Ohmstead.Machine.Tests.Faults;

/// <summary>
/// Every command that writes, while calls of the system fail or the process is killed: each file is what it was or what it was to become,
/// and a run that says it is done has done all of it. A usual run tries some commands with one call each, a run of all tests some calls of
/// each, a whole run every call.
/// </summary>
public sealed class WriterFaultTests
{
    private const int Internal = 4;
    private const int Killed = 137;

    /// <summary>The lines of the commands.</summary>
    public static TheoryData<string> Writers => [.. WritingCommands.Lines];

    // A command that splices, one that makes a folder of files, one that writes several, one that writes where it is told to.
    private static readonly string[] Few = ["decide ", "start collection ", "tidy ", "sheet "];

    private static readonly (CallKind Kind, CallError Error, int Some)[] Usual = [(CallKind.Rename, CallError.KilledBefore, 1)];

    private static readonly (CallKind Kind, CallError Error, int Some)[] All =
    [
        (CallKind.Write, CallError.NoSpace, 1),
        (CallKind.Sync, CallError.InputOutput, 1),
        (CallKind.Rename, CallError.InputOutput, 1),
        (CallKind.Any, CallError.KilledBefore, 2),
    ];

    private static readonly (CallKind Kind, CallError Error, int Some)[] Whole =
    [
        .. from kind in new[]
        {
            CallKind.Open,
            CallKind.Read,
            CallKind.List,
            CallKind.Write,
            CallKind.Sync,
            CallKind.Rename,
            CallKind.Unlink,
            CallKind.Mkdir,
            CallKind.Lock,
            CallKind.Close,
        }
        from error in new[]
        {
            CallError.NoSpace,
            CallError.InputOutput,
            CallError.NotAllowed,
            CallError.ReadOnly,
            CallError.TooManyOpen,
            CallError.NotThere,
        }
        select (kind, error, int.MaxValue),
        (CallKind.Write, CallError.Half, int.MaxValue),
        (CallKind.Any, CallError.KilledBefore, int.MaxValue),
        (CallKind.Any, CallError.KilledAfter, int.MaxValue),
    ];

    [Theory]
    [MemberData(nameof(Writers))]
    public async Task Whatever_fails_each_file_is_the_old_one_or_the_new_one(string command)
    {
        Assert.SkipUnless(TestExtent.IsAll || Few.Any(few => command.StartsWith(few, StringComparison.Ordinal)), TestExtent.LeftOut);
        Assert.SkipWhen(FaultLibrary.Path is null, FaultLibrary.Missing);
        using var copy = WritingCommands.Ready();
        var watched = new WatchedProgram(Child.Program, copy.Root);
        var line = "exec $ohmstead " + command;
        var old = WritingCommands.Files(copy);
        var whole = await watched.ShellAsync(line);
        Assert.True(whole.Run.Exit == 0, $"{command}: {whole.Run.Error}");
        var made = WritingCommands.Files(copy);
        Assert.NotEqual(old, made);

        foreach (
            var (kind, error, some) in TestExtent.IsWhole ? Whole
            : TestExtent.IsAll ? All
            : Usual
        )
        {
            foreach (var at in Moments.Of(whole.Count(kind), some, some))
            {
                WritingCommands.Renew(copy);
                var run = await watched.ShellAsync(line, new(kind, at, error));
                var now = WritingCommands.Files(copy);
                var words = $"{command}: {kind} {at} {error}: exit {run.Run.Exit}\n{run.Run.Out}{run.Run.Error}";
                WritingCommands.AreOldOrNew(old, made, now, words);
                Assert.True(run.Run.Exit != 0 || made.SequenceEqual(now), words);
                Assert.True(run.Run.Exit != Internal && !run.Run.Error.Contains("   at ", StringComparison.Ordinal), words);
                Assert.True(run.Run.Exit != Killed || error is CallError.KilledBefore or CallError.KilledAfter, words);
                Assert.True(!run.Run.Out.Contains("added", StringComparison.Ordinal) || !old.SequenceEqual(now), words);
            }
        }
    }
}
