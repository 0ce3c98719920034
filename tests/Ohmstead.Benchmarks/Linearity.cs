namespace Ohmstead.Benchmarks;

/// <summary>Whether ten times the records cost ten times the time.</summary>
public static class Linearity
{
    // Start-up would hide a growing cost in a plain ratio of times, so the cost of one record more is compared instead.
    private const double Allowed = 1.25;

    /// <summary>Prints what one record more costs from size to size; needs three sizes.</summary>
    public static void Print(IReadOnlyList<Measurement> measurements, TextWriter writer)
    {
        var table = new Table("command", "ms for one record more, first step", "last step", "ratio", "linear");
        var isEmpty = true;
        foreach (var group in measurements.GroupBy(item => item.Name, StringComparer.Ordinal))
        {
            var sizes = group.OrderBy(item => item.Records).ToList();
            if (sizes.Count < 3)
            {
                continue;
            }

            var first = Slope(sizes[0], sizes[1]);
            var last = Slope(sizes[^2], sizes[^1]);
            table.Add(
                group.Key,
                Table.Number(first, 3),
                Table.Number(last, 3),
                Table.Number(last / first),
                last / first <= Allowed ? "yes" : "no"
            );
            isEmpty = false;
        }

        if (!isEmpty)
        {
            table.Print(writer);
        }
    }

    private static double Slope(Measurement small, Measurement large) =>
        (large.Cost.Wall - small.Cost.Wall).TotalMilliseconds / (large.Records - small.Records);
}
