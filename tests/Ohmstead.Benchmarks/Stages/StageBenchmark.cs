using System.Diagnostics;
using System.Globalization;
using System.Text;
using Ohmstead.Synthetic;
using Ohmstead.Synthetic.Files;

namespace Ohmstead.Benchmarks.Stages;

/// <summary>Measures each stage on one thread of this process.</summary>
public static class StageBenchmark
{
    private const int Records = 2_000;
    private const int Passes = 5;

    /// <summary>Measures and prints.</summary>
    public static void Run(TextWriter writer)
    {
        var stages = Stage.All();
        var plan = new CollectionPlan(Records);
        var records = Enumerable
            .Range(1, Records)
            .Select(number =>
                (
                    Path: $"boards/{CollectionPlan.BoardId(number)}.md",
                    Bytes: Encoding.UTF8.GetBytes(SyntheticCollection.Board(plan, number))
                )
            )
            .ToList();

        // The first pass compiles; the best of the others is the one least disturbed by whatever else the machine does.
        Pass(stages, records);
        var passes = Enumerable.Range(0, Passes).Select(_ => Pass(stages, records)).ToList();
        var table = new Table("stage, one thread", "ms a record", "KiB allocated a record");
        var (sumTime, sumBytes) = (0.0, 0.0);
        for (var at = 0; at < stages.Count; at++)
        {
            var time = passes.Min(pass => pass.Ticks[at]) * 1000.0 / Stopwatch.Frequency / Records;
            var bytes = passes.Min(pass => pass.Bytes[at]) / 1024.0 / Records;
            table.Add(stages[at].Name, Table.Number(time, 3), Table.Number(bytes, 1));
            sumTime += stages[at].IsPartOfNext ? 0 : time;
            sumBytes += stages[at].IsPartOfNext ? 0 : bytes;
        }

        table.Add("sum", Table.Number(sumTime, 3), Table.Number(sumBytes, 1));
        var size = records.Average(record => record.Bytes.Length) / 1024.0;
        writer.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{Records} records of {size:0.0} KiB, best of {Passes} passes"));
        table.Print(writer);
    }

    // Each record goes through all stages before the next, as in the product: nothing is kept, so the collector's work is the real one.
    private static (long[] Ticks, long[] Bytes) Pass(IReadOnlyList<Stage> stages, IReadOnlyList<(string Path, byte[] Bytes)> records)
    {
        var (ticks, bytes) = (new long[stages.Count], new long[stages.Count]);
        foreach (var (path, content) in records)
        {
            var sample = new Sample(path, content);
            for (var at = 0; at < stages.Count; at++)
            {
                var allocated = GC.GetAllocatedBytesForCurrentThread();
                var start = Stopwatch.GetTimestamp();
                stages[at].Run(sample);
                ticks[at] += Stopwatch.GetTimestamp() - start;
                bytes[at] += GC.GetAllocatedBytesForCurrentThread() - allocated;
            }
        }

        return (ticks, bytes);
    }
}
