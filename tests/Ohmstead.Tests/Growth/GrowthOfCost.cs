using Ohmstead.Collections;
using Ohmstead.Publishing;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Nodes;
using Ohmstead.Running;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Growth;

/// <summary>
/// What twice as large a file costs. The cost is counted in bytes that are asked for, which are the same in each run, and never in time:
/// whoever compares each of many with each of many makes strings, lists or enumerators while doing so. What compares without making
/// anything counts its steps itself.
/// </summary>
internal static class GrowthOfCost
{
    // Twice the size may cost twice the work, and a tenth more for tables that grow by doubling. What is pooled is asked for anew now and
    // then: some hundred kilobytes that say nothing, where each of thousands with each of thousands would ask for tens of megabytes.
    public const double Most = 2.3;
    public const long Pooled = 250_000;

    // The room of a page grows by doubling too, and whether it is asked for anew depends on the pages before it: what compares each of many
    // with each of many costs four times as much.
    public const double MostOfPages = 3.2;
    public const long PooledPages = 4_000_000;

    // The pool gives its room back when the machine collects, which a run can neither ask for nor forbid: what a size costs is the least of
    // some runs. A cost that grows too fast does so in the least of them too.
    private const int Rounds = 5;

    private const int Third = 19;

    public static TheoryData<string> Names { get; } = [.. GrownRecord.All.Select(grown => grown.Name)];

    /// <summary>A third of them, and all where every moment is asked for: each is checked, and what a page or an explanation makes of it
    /// goes the same ways.</summary>
    public static TheoryData<string> SomeNames { get; } =
    [
        .. TestExtent
            .Spread(GrownRecord.All.Count, TestExtent.Times(Third, Third, whole: GrownRecord.All.Count))
            .Select(number => GrownRecord.All[number - 1].Name),
    ];

    public static void Holds(
        TheoryData<string> names,
        string name,
        int usual,
        Func<CollectionCopy, GrownRecord, long> of,
        double most,
        long pooled
    )
    {
        Assert.SkipUnless(TestExtent.Of([.. names.Select(row => row.Data)], usual).Contains(name), TestExtent.LeftOut);
        var grown = GrownRecord.All.Single(one => one.Name == name);

        // Once before it counts: what is made on first use is made.
        _ = Cost(grown, grown.First, of);
        var (once, twice, fourfold) = (long.MaxValue, long.MaxValue, long.MaxValue);
        for (var round = 0; round < Rounds; round++)
        {
            once = Math.Min(once, Cost(grown, grown.First, of));
            twice = Math.Min(twice, Cost(grown, 2 * grown.First, of));
            fourfold = Math.Min(fourfold, Cost(grown, 4 * grown.First, of));
            if (fourfold - twice <= most * Math.Max(twice - once, pooled))
            {
                return;
            }
        }

        Assert.Fail(
            $"at the least of {Rounds} runs {once} bytes for {grown.First}, {twice} for twice as many, {fourfold} for four times as many"
        );
    }

    private static long Cost(GrownRecord grown, int size, Func<CollectionCopy, GrownRecord, long> of)
    {
        using var copy = CollectionCopy.Empty();
        foreach (var (path, text) in grown.Files(size))
        {
            copy.Write(path, text);
        }

        return of(copy, grown);
    }

    public static long Report(CollectionCopy copy, GrownRecord grown)
    {
        var options = new RunOptions(new DateOnly(2026, 11, 25), IsThorough: false, Workers: 1, ReadingLimits.Usual);
        var files = CollectionFolder.Open(copy.Root);
        using var target = ReportFolder.Open(copy.At("pages"), copy.Root);
        var before = GC.GetAllocatedBytesForCurrentThread();
        using var terminal = new Terminal(TextWriter.Null, TextWriter.Null, showsProgress: false);
        var built = new ReportBuild(terminal, files, target, options, ReportWishes.None).Write();
        var cost = GC.GetAllocatedBytesForCurrentThread() - before;
        Assert.True(grown.Refused is null || built.Result.Findings.Any(finding => finding.Check == grown.Refused));
        return cost;
    }

    public static long Check(CollectionCopy copy, GrownRecord grown)
    {
        var refused = grown.Refused;
        var options = new RunOptions(new DateOnly(2026, 11, 25), IsThorough: false, Workers: 1, ReadingLimits.Usual);
        var before = GC.GetAllocatedBytesForCurrentThread();
        var result = new CollectionRun(CollectionFolder.Open(copy.Root), options).Run();
        using var text = new StringWriter();
        new Ohmstead.Output.TextFindings(int.MaxValue, int.MaxValue).Write(text, result, CollectionFolder.Open(copy.Root), 0);
        new Ohmstead.Output.JsonFindings().Write(text, result, CollectionFolder.Open(copy.Root), 0);
        var cost = GC.GetAllocatedBytesForCurrentThread() - before;

        // A record that is refused while it is read is not judged, and would say nothing of what judging costs.
        var ofReading = result
            .Findings.Select(finding => finding.Check)
            .Where(check => TextChecks.All.Contains(check) || RecordChecks.All.Contains(check));
        Assert.Equal(
            refused is null ? [] : [refused],
            ofReading.Distinct().Where(check => refused is null || check != "key-unknown" || refused == check)
        );
        return cost;
    }

    public static long Why(CollectionCopy copy, GrownRecord grown)
    {
        var before = GC.GetAllocatedBytesForCurrentThread();
        using var terminal = new Terminal(TextWriter.Null, TextWriter.Null, showsProgress: false);
        using var interruption = new Interruption();
        var exit = CommandLine.Run(["why", "SP-0001", grown.Told, "--in", copy.Root, "--as-of", "2026-11-25"], terminal, interruption);
        var cost = GC.GetAllocatedBytesForCurrentThread() - before;
        Assert.True(exit is ExitCode.Clean or ExitCode.Usage);
        return cost;
    }
}
