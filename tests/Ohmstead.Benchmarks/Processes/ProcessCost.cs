namespace Ohmstead.Benchmarks.Processes;

/// <summary>What one run of a program cost.</summary>
/// <param name="Wall">From before its start until its end.</param>
/// <param name="Cpu">Processor time of it and of the children it waited for, or null where the system does not tell. Steps of 10
/// ms.</param>
/// <param name="PeakBytes">The largest resident memory of any one process of it, or null where the system does not tell.</param>
/// <param name="ExitCode">Its exit code.</param>
/// <param name="LastLine">The last line it wrote, on either stream.</param>
public sealed record ProcessCost(TimeSpan Wall, TimeSpan? Cpu, long? PeakBytes, int ExitCode, string LastLine)
{
    /// <summary>How many bytes it left behind, or null where nobody counted them.</summary>
    public long? BytesWritten { get; init; }

    /// <summary>The run with the median wall time, with the largest peak of all.</summary>
    public static ProcessCost Median(IReadOnlyList<ProcessCost> runs) =>
        runs.OrderBy(run => run.Wall).ElementAt(runs.Count / 2) with
        {
            PeakBytes = runs.Max(run => run.PeakBytes),
        };
}
