using System.Collections.Immutable;
using Ohmstead.Tests.Support;

namespace Ohmstead.Machine.Tests.Faults;

/// <summary>A report while calls of the system fail, each of them once: the old one stands whole or the new one does, byte for
/// byte.</summary>
/// <param name="reports">The old report and the new one, made once for all.</param>
public sealed class ReportFaultTests(FaultyReports reports) : IClassFixture<FaultyReports>
{
    /// <summary>Each kind of call about the pages and what is beside them, and how it fails.</summary>
    public static TheoryData<CallKind, CallError> Faults { get; } =
        new()
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

    [Theory]
    [InlineData(CallKind.Rename, "pages")]
    [InlineData(CallKind.Link, "pages")]
    [InlineData(CallKind.Link, ".pages.ohmstead-new")]
    [InlineData(CallKind.Link, "pages/boards")]
    public async Task A_link_that_is_put_in_the_way_in_that_very_moment_leads_nowhere(CallKind kind, string path)
    {
        Assert.SkipUnless(TestExtent.IsAll, TestExtent.LeftOut);
        Assert.SkipWhen(FaultLibrary.Path is null, FaultLibrary.Missing);
        var two = await reports.PlainAsync();
        using var site = CollectionCopy.Empty();
        using var outside = CollectionCopy.Make();
        await two.PutOldAsync(site);
        var before = FilesBelow.Of(outside.Root);
        var fault = new SystemFault(kind, 1, CallError.None) { Swap = (site.At(path), outside.At("boards")) };
        var run = await new WatchedProgram(Child.Program, site.Root).ShellAsync(two.Line, fault);
        var everywhere = new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = FileAttributes.ReparsePoint };
        Assert.NotEmpty(Directory.EnumerateDirectories(site.Root, "*.aside", everywhere));
        Assert.Equal(before, FilesBelow.Of(outside.Root));
        Assert.True(run.Run.Exit is 0 or 3, run.Run.Error);
    }

    private async Task TryAsync(CallKind kind, CallError error, bool lasts, string? foreign)
    {
        // What a usual run holds: a switch of the folders that fails, and a kill in between.
        Assert.SkipUnless(
            TestExtent.IsAll
                || (
                    foreign is null
                    && !lasts
                    && (kind, error) is (CallKind.Rename, CallError.InputOutput) or (CallKind.Any, CallError.KilledAfter)
                ),
            TestExtent.LeftOut
        );
        Assert.SkipWhen(FaultLibrary.Path is null, FaultLibrary.Missing);
        var two = foreign is null ? await reports.PlainAsync() : await reports.WithAsync(foreign);
        using var site = CollectionCopy.Empty();
        var watched = new WatchedProgram(Child.Program, site.Root);
        foreach (
            var at in Moments.Of(
                two.Calls.Count(call => kind == CallKind.Any || call.Kind == kind),
                usual: 1,
                all: kind == CallKind.Any ? 4 : 2
            )
        )
        {
            await two.PutOldAsync(site);
            var run = await watched.ShellAsync(two.Line, new(kind, at, error) { Lasts = lasts });
            var now = TwoReports.Pages(site);
            var words =
                $"{kind} {at} {error}: exit "
                + $"{run.Run.Exit}\n{run.Run.Out}{run.Run.Error}{Difference(two.Old, now)}\n{Difference(two.New, now)}";
            Assert.True(now.SequenceEqual(two.Old) || now.SequenceEqual(two.New), words);
            Assert.True(run.Run.Exit != 0 || now.SequenceEqual(two.New), words);
            Assert.True(run.Run.Exit is 0 or 3 || (run.Run.Exit == 137 && error is CallError.KilledBefore or CallError.KilledAfter), words);
            Assert.DoesNotContain("   at ", run.Run.Error, StringComparison.Ordinal);

            // Whatever was left stops nobody, and is cleared away.
            if (
                TestExtent.IsWhole
                || Directory.GetFileSystemEntries(site.Root).Length > 1
                || Directory.GetDirectories(site.At("pages"), ".ohmstead*").Length > 0
            )
            {
                Assert.Equal(0, (await Child.ShellAsync(two.Line, site.Root)).Exit);
                Assert.Equal(two.New, TwoReports.Pages(site));
                Assert.Equal(["pages"], Directory.EnumerateFileSystemEntries(site.Root).Select(Path.GetFileName));
                Assert.Empty(Directory.GetDirectories(site.At("pages"), ".ohmstead*"));
            }
        }
    }

    private static string Difference(ImmutableSortedDictionary<string, string> one, ImmutableSortedDictionary<string, string> other) =>
        string.Join('\n', one.Except(other).Concat(other.Except(one)).Select(entry => entry.Key).Take(5));
}
