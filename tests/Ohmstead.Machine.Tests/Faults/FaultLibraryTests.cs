using Ohmstead.Tests.Support;

namespace Ohmstead.Machine.Tests.Faults;

/// <summary>The library that fails calls, held against what the system's own small programs are known to do.</summary>
public sealed class FaultLibraryTests
{
    /// <summary>A kind of call, a line of shell that makes it about the file or folder here, and how the line ends untouched.</summary>
    public static TheoryData<CallKind, string> Calls { get; } =
        new()
        {
            { CallKind.Open, "cat here" },
            { CallKind.Open, "ls ." },
            { CallKind.Read, "cat here" },
            { CallKind.List, "ls ." },
            { CallKind.Look, "stat here" },
            { CallKind.Write, "echo more | dd of=here conv=notrunc status=none" },
            { CallKind.Write, "truncate -s 1 here" },
            { CallKind.Sync, "sync here" },
            { CallKind.Rename, "mv here there" },
            { CallKind.Link, "ln here there" },
            { CallKind.Link, "ln -s here there" },
            { CallKind.Unlink, "rm here" },
            { CallKind.Unlink, "rmdir empty" },
            { CallKind.Mkdir, "mkdir there" },
            { CallKind.Mode, "chmod 600 here" },
            { CallKind.Lock, "flock here true" },
        };

    // As the C library words them.
    private static (CallError Error, string Words)[] Errors { get; } =
    [
        (CallError.NoSpace, "No space left on device"),
        (CallError.ReadOnly, "Read-only file system"),
        (CallError.InputOutput, "Input/output error"),
    ];

    [Theory]
    [MemberData(nameof(Calls))]
    public async Task A_call_is_written_down_and_fails_with_the_error_it_is_told(CallKind kind, string line)
    {
        Assert.SkipWhen(FaultLibrary.Path is null, FaultLibrary.Missing);
        using var copy = Folder();
        var watched = new WatchedProgram("true", copy.Root);
        var before = Files(copy);
        foreach (var (error, words) in Errors)
        {
            var failed = await watched.ShellAsync($"exec {line}", new(kind, 1, error) { Lasts = true }, ("LC_ALL", "C"));
            Assert.NotEqual(0, failed.Run.Exit);
            Assert.Contains(words, failed.Run.Error, StringComparison.Ordinal);
            Assert.True(failed.IsFaultReached);
            Assert.Equal(before, Files(copy));
        }

        var whole = await watched.ShellAsync($"exec {line}");
        Assert.Equal((0, string.Empty), (whole.Run.Exit, whole.Run.Error));
        Assert.True(whole.Count(kind) > 0);
        Assert.False(whole.IsFaultReached);
    }

    [Fact]
    public async Task Calls_that_a_program_looks_up_in_the_library_by_itself_are_seen_too()
    {
        Assert.SkipWhen(FaultLibrary.Path is null, FaultLibrary.Missing);
        using var copy = CollectionCopy.Make();
        var run = await new WatchedProgram(Child.Program, copy.Root).ShellAsync("exec $ohmstead wait SP-0007 'a pen' --in .");
        Assert.Equal(0, run.Run.Exit);
        Assert.Contains(run.Calls, call => call is { Kind: CallKind.Lock } && call.Path == copy.At("boards"));
    }

    [Fact]
    public async Task Only_the_call_of_that_number_fails_and_other_folders_are_let_alone()
    {
        Assert.SkipWhen(FaultLibrary.Path is null, FaultLibrary.Missing);
        using var copy = Folder();
        using var other = CollectionCopy.Empty();
        var line = $"exec mkdir {other.At("a")} one two three ../{Path.GetFileName(copy.Root)}x";
        var run = await new WatchedProgram("true", copy.Root).ShellAsync(line, new(CallKind.Mkdir, 2, CallError.NoSpace), ("LC_ALL", "C"));
        Directory.Delete(copy.Root + "x");
        Assert.Equal("mkdir: cannot create directory 'two': No space left on device\n", run.Run.Error);
        Assert.Equal(["mkdir one", "mkdir three"], run.Trace(copy.Root));
        Assert.Equal(3, run.Count(CallKind.Mkdir));
        Assert.True(Directory.Exists(other.At("a")));
    }

    [Fact]
    public async Task A_call_can_write_half_be_the_last_of_its_process_or_find_a_link_where_a_folder_was()
    {
        Assert.SkipWhen(FaultLibrary.Path is null, FaultLibrary.Missing);
        using var copy = Folder();
        var watched = new WatchedProgram("true", copy.Root);
        var half = await watched.ShellAsync("printf 12345678 | (exec dd of=half status=none)", new(CallKind.Write, 1, CallError.Half));
        Assert.Equal("12345678", copy.Read("half"));
        Assert.Equal(["write half", "write half"], half.Trace(copy.Root));

        Assert.Equal(137, (await watched.ShellAsync("exec mkdir before", new(CallKind.Mkdir, 1, CallError.KilledBefore))).Run.Exit);
        Assert.False(Directory.Exists(copy.At("before")));
        Assert.Equal(137, (await watched.ShellAsync("exec mkdir after", new(CallKind.Mkdir, 1, CallError.KilledAfter))).Run.Exit);
        Assert.True(Directory.Exists(copy.At("after")));

        using var other = CollectionCopy.Empty();
        var swap = new SystemFault(CallKind.Mkdir, 1, CallError.None) { Swap = (copy.At("empty"), other.Root) };
        await watched.ShellAsync("exec mkdir empty/inside", swap);
        Assert.True(Directory.Exists(other.At("inside")));
        Assert.True(Directory.Exists(copy.At("empty.aside")));
    }

    private static CollectionCopy Folder()
    {
        var copy = CollectionCopy.Empty();
        copy.Write("here", "some words");
        Directory.CreateDirectory(copy.At("empty"));
        return copy;
    }

    private static Dictionary<string, string> Files(CollectionCopy copy) =>
        Directory.GetFiles(copy.Root).ToDictionary(file => file, File.ReadAllText, StringComparer.Ordinal);
}
