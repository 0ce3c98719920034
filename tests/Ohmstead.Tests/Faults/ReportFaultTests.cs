using System.Collections.Immutable;
using Ohmstead.Tests.Disk;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Faults;

/// <summary>A report while calls of the system fail, each of them once: the old one stands whole or the new one does, byte for byte.</summary>
public sealed class ReportFaultTests
{
    private static readonly string[] Left = ["SP-0001", "SP-0003", "SP-0004"];

    /// <summary>Each kind of call about the pages and what is beside them, and how it fails.</summary>
    public static TheoryData<CallKind, CallError> Faults { get; } = new()
    {
        { CallKind.Open, CallError.NoSpace },
        { CallKind.Open, CallError.TooManyOpen },
        { CallKind.Read, CallError.InputOutput },
        { CallKind.List, CallError.InputOutput },
        { CallKind.Look, CallError.InputOutput },
        { CallKind.Write, CallError.NoSpace },
        { CallKind.Write, CallError.Half },
        { CallKind.Sync, CallError.InputOutput },
        { CallKind.Rename, CallError.InputOutput },
        { CallKind.Link, CallError.NoSpace },
        { CallKind.Unlink, CallError.ReadOnly },
        { CallKind.Mkdir, CallError.NoSpace },
        { CallKind.Lock, CallError.InputOutput },
        { CallKind.Close, CallError.InputOutput },
        { CallKind.Any, CallError.NoSpace },
        { CallKind.Any, CallError.KilledBefore },
        { CallKind.Any, CallError.KilledAfter },
    };

    [Theory]
    [MemberData(nameof(Faults))]
    public async Task Whichever_call_fails_the_report_is_the_old_one_or_the_new_one_whole(CallKind kind, CallError error) =>
        await TryAsync(kind, error, lasts: false, foreign: null);

    [Theory]
    [InlineData(CallKind.Write, CallError.NoSpace)]
    [InlineData(CallKind.Open, CallError.NoSpace)]
    [InlineData(CallKind.Any, CallError.ReadOnly)]
    public async Task A_disk_that_is_full_from_some_call_on_leaves_the_old_report(CallKind kind, CallError error) =>
        await TryAsync(kind, error, lasts: true, foreign: null);

    // Somebody's folder among the pages keeps them from being swapped whole: they come one by one, and are taken back.
    [Theory]
    [InlineData(CallKind.Rename, CallError.InputOutput)]
    [InlineData(CallKind.Link, CallError.InputOutput)]
    [InlineData(CallKind.Unlink, CallError.InputOutput)]
    [InlineData(CallKind.Sync, CallError.InputOutput)]
    public async Task Pages_that_come_one_by_one_are_taken_back_when_one_fails(CallKind kind, CallError error) =>
        await TryAsync(kind, error, lasts: false, foreign: ".git/HEAD");

    private static async Task TryAsync(CallKind kind, CallError error, bool lasts, string? foreign)
    {
        Assert.SkipWhen(FaultLibrary.Path is null, FaultLibrary.Missing);
        using var records = Small();
        using var site = CollectionCopy.Empty();
        using var kept = CollectionCopy.Empty();
        var line = $"exec $ohmstead report {records.Root} --to pages --workers 1";
        Assert.Equal(0, (await Child.ShellAsync(line, site.Root)).Exit);
        site.Write("pages/notes.txt", "mine");
        if (foreign is not null)
        {
            site.Write("pages/" + foreign, "mine too");
        }

        await Copy(site.At("pages"), kept.At("old"));
        var old = Pages(site);
        records.Write("boards/SP-0003.md", records.Read("boards/SP-0003.md").Replace("spare from the boat house", "spare out of it", StringComparison.Ordinal));
        records.Write("boards/SP-0005.md", File.ReadAllText(Path.Combine(CollectionCopy.Untouched, "boards/SP-0005.md")));
        File.Delete(records.At("boards/SP-0001.md"));
        var watched = new WatchedProgram(Child.Program, site.Root);
        var whole = await watched.ShellAsync(line);
        Assert.Equal((0, string.Empty), (whole.Run.Exit, whole.Run.Error));
        var made = Pages(site);
        Assert.NotEqual(old, made);

        foreach (var at in Moments.Of(whole.Count(kind), some: kind == CallKind.Any ? 8 : 5))
        {
            Directory.Delete(site.At("pages"), recursive: true);
            await Copy(kept.At("old"), site.At("pages"));
            var run = await watched.ShellAsync(line, new(kind, at, error) { Lasts = lasts });
            var now = Pages(site);
            var words = $"{kind} {at} of {whole.Count(kind)} {error}: exit {run.Run.Exit}\n{run.Run.Out}{run.Run.Error}{string.Join('\n', Difference(old, now))}\n{string.Join('\n', Difference(made, now))}";
            Assert.True(Same(now, old) || Same(now, made), words);
            Assert.True(run.Run.Exit != 0 || Same(now, made), words);
            Assert.True(run.Run.Exit is 0 or 3 || (run.Run.Exit == 137 && error is CallError.KilledBefore or CallError.KilledAfter), words);
            Assert.DoesNotContain("   at ", run.Run.Error, StringComparison.Ordinal);

            // Whatever was left stops nobody, and is cleared away.
            Assert.Equal(0, (await Child.ShellAsync(line, site.Root)).Exit);
            Assert.Equal(made, Pages(site));
            Assert.Equal(["pages"], Directory.EnumerateFileSystemEntries(site.Root).Select(Path.GetFileName));
            Assert.Empty(Directory.GetDirectories(site.At("pages"), ".ohmstead*"));
        }
    }

    private static CollectionCopy Small()
    {
        var records = CollectionCopy.Make();
        foreach (var board in Directory.GetFiles(records.At("boards")).Where(file => !Left.Contains(Path.GetFileNameWithoutExtension(file))))
        {
            File.Delete(board);
        }

        return records;
    }

    private static async Task Copy(string from, string to) => await Child.ShellAsync($"cp -a '{from}' '{to}'", "/");

    private static bool Same(ImmutableSortedDictionary<string, string> one, ImmutableSortedDictionary<string, string> other) => one.SequenceEqual(other);

    private static IEnumerable<string> Difference(ImmutableSortedDictionary<string, string> one, ImmutableSortedDictionary<string, string> other) =>
        one.Except(other).Concat(other.Except(one)).Select(entry => entry.Key).Take(5);

    // The bytes alone; what a run that failed left for the next to clear away is no page.
    private static ImmutableSortedDictionary<string, string> Pages(CollectionCopy site) => LinkTests.Files(site.At("pages"))
        .Where(entry => entry.Value != "a folder" && !entry.Key.StartsWith(".ohmstead-new", StringComparison.Ordinal) && entry.Key is not (".ohmstead-building" or ".ohmstead-held"))
        .ToImmutableSortedDictionary(entry => entry.Key, entry => entry.Value.Split(' ')[1], StringComparer.Ordinal);
}
