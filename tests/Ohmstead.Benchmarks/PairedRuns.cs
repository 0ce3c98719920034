using Ohmstead.Benchmarks.Processes;

namespace Ohmstead.Benchmarks;

/// <summary>Two commands compared by pairs of runs, one right after the other, so that both meet the same machine.</summary>
/// <param name="Ours">What each run of the product cost.</param>
/// <param name="Theirs">What the run of the other command beside it cost.</param>
public sealed record PairedRuns(IReadOnlyList<ProcessCost> Ours, IReadOnlyList<ProcessCost> Theirs)
{
    /// <summary>Runs the pairs.</summary>
    /// <param name="product">A run of the product.</param>
    /// <param name="other">A run of the other command.</param>
    /// <param name="pairs">How many pairs.</param>
    public static PairedRuns Of(Func<int, ProcessCost> product, Func<int, ProcessCost> other, int pairs)
    {
        var ours = new List<ProcessCost>();
        var theirs = new List<ProcessCost>();
        for (var run = 0; run < pairs; run++)
        {
            // Who goes first changes, because the first may warm what the second uses.
            if (run % 2 == 0)
            {
                ours.Add(product(run));
                theirs.Add(other(run));
            }
            else
            {
                theirs.Add(other(run));
                ours.Add(product(run));
            }
        }

        return new PairedRuns(ours, theirs);
    }

    /// <summary>The middle one of the ratios of the product to the other command, pair by pair; not a number where a figure is
    /// missing.</summary>
    public double Ratio(Func<ProcessCost, double?> value) => Middle(Ratios(value));

    /// <summary>Prints medians and ratios: below 1 the product needs less.</summary>
    /// <param name="what">What was done, of how many boards.</param>
    /// <param name="other">What the other command is called.</param>
    /// <param name="writer">Where the table goes.</param>
    public void Print(string what, string other, TextWriter writer)
    {
        var table = new Table($"{what}, {Ours.Count} pairs", "product", other, "ratio", "least", "most");
        Add(table, "wall s", cost => cost.Wall.TotalSeconds);
        Add(table, "CPU s", cost => cost.Cpu?.TotalSeconds);
        Add(table, "peak MB", cost => cost.PeakBytes / 1e6);
        if (Ours.Any(cost => cost.BytesWritten is not null))
        {
            Add(table, "written MB", cost => cost.BytesWritten / 1e6);
        }

        Add(table, "exit code", cost => cost.ExitCode);
        table.Print(writer);
    }

    private void Add(Table table, string name, Func<ProcessCost, double?> value)
    {
        var ratios = Ratios(value);
        table.Add(
            name,
            Table.Number(Middle(Ours.Select(cost => value(cost) ?? double.NaN))),
            Table.Number(Middle(Theirs.Select(cost => value(cost) ?? double.NaN))),
            Ratio(Middle(ratios)),
            Ratio(ratios.Min()),
            Ratio(ratios.Max())
        );
    }

    private List<double> Ratios(Func<ProcessCost, double?> value) =>
        [.. Ours.Zip(Theirs, (one, other) => (value(one) ?? double.NaN) / (value(other) ?? double.NaN))];

    private static double Middle(IEnumerable<double> values) => values.Order().ToList() is var sorted ? sorted[sorted.Count / 2] : 0;

    private static string Ratio(double value) => double.IsFinite(value) ? Table.Number(value, 3) : "-";
}
