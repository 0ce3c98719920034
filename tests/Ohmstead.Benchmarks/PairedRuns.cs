using Ohmstead.Benchmarks.Processes;

namespace Ohmstead.Benchmarks;

/// <summary>Compares two commands by pairs of runs, one right after the other, so that both meet the same machine.</summary>
public static class PairedRuns
{
    /// <summary>Runs the pairs and prints the ratios of the product to the other command: below 1 the product needs less.</summary>
    /// <param name="product">The product's command for a run.</param>
    /// <param name="other">The other command for a run.</param>
    /// <param name="options">How many pairs, and what they are called.</param>
    /// <param name="size">The number of boards.</param>
    /// <param name="writer">Where the table goes.</param>
    public static void Print(Func<int, Command> product, Func<int, Command> other, Options options, int size, TextWriter writer)
    {
        var ours = new List<ProcessCost>();
        var theirs = new List<ProcessCost>();
        for (var run = 0; run < options.Runs; run++)
        {
            // Who goes first changes, because the first may warm what the second uses.
            if (run % 2 == 0)
            {
                ours.Add(product(run).Run());
                theirs.Add(other(run).Run());
            }
            else
            {
                theirs.Add(other(run).Run());
                ours.Add(product(run).Run());
            }
        }

        var table = new Table($"{options.Against} of {size} boards, {options.Runs} pairs", "product", "other", "ratio", "least", "most");
        Add(table, "wall s", ours, theirs, cost => cost.Wall.TotalSeconds);
        Add(table, "CPU s", ours, theirs, cost => cost.Cpu?.TotalSeconds);
        Add(table, "peak MB", ours, theirs, cost => cost.PeakBytes / 1e6);
        Add(table, "exit code", ours, theirs, cost => cost.ExitCode);
        table.Print(writer);
    }

    private static void Add(Table table, string name, List<ProcessCost> ours, List<ProcessCost> theirs, Func<ProcessCost, double?> value)
    {
        var pairs = ours.Zip(theirs, (one, other) => (Ours: value(one) ?? double.NaN, Theirs: value(other) ?? double.NaN)).ToList();
        var ratios = pairs.Select(pair => pair.Ours / pair.Theirs).Order().ToList();
        table.Add(
            name,
            Table.Number(Middle(pairs.Select(pair => pair.Ours))),
            Table.Number(Middle(pairs.Select(pair => pair.Theirs))),
            Ratio(ratios[ratios.Count / 2]),
            Ratio(ratios[0]),
            Ratio(ratios[^1])
        );
    }

    private static double Middle(IEnumerable<double> values) => values.Order().ToList() is var sorted ? sorted[sorted.Count / 2] : 0;

    private static string Ratio(double value) => double.IsFinite(value) ? Table.Number(value) : "-";
}
