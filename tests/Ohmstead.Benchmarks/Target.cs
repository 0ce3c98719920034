namespace Ohmstead.Benchmarks;

/// <summary>What the product promises.</summary>
/// <param name="Command">The command.</param>
/// <param name="Records">On how many records.</param>
/// <param name="Seconds">Within how long.</param>
/// <param name="PeakMegabytes">Within how much resident memory.</param>
public sealed record Target(string Command, int Records, double Seconds, double PeakMegabytes)
{
    private static readonly IReadOnlyList<Target> All =
    [
        new("check", 10_000, 10, 300),
        new("report", 10_000, 15, 300),
        new("check of one record", 1, 0.3, 300),
    ];

    /// <summary>Prints each target with what was measured; true when all that were measured are kept.</summary>
    public static bool Print(IReadOnlyList<Measurement> measurements, TextWriter writer)
    {
        var table = new Table("target", "records", "seconds allowed", "measured", "MB allowed", "measured", "kept");
        var allKept = true;
        foreach (var target in All)
        {
            var found = measurements.FirstOrDefault(item => item.Name == target.Command && item.Records == target.Records);
            var (seconds, peak) = (found?.Cost.Wall.TotalSeconds, found?.Cost.PeakBytes / 1e6);
            var isKept = !(seconds > target.Seconds) && !(peak > target.PeakMegabytes);
            allKept &= isKept;
            table.Add(
                target.Command,
                Table.Number(target.Records, 0),
                Table.Number(target.Seconds, 1),
                seconds is { } time ? Table.Number(time) : "-",
                Table.Number(target.PeakMegabytes, 0),
                peak is { } size ? Table.Number(size, 0) : "-",
                found is null ? "not measured"
                    : isKept ? "yes"
                    : "no"
            );
        }

        table.Print(writer);
        return allKept;
    }
}
