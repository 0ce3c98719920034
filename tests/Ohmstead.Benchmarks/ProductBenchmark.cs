using Ohmstead.Benchmarks.Processes;
using Ohmstead.Synthetic;
using Ohmstead.Synthetic.Files;

namespace Ohmstead.Benchmarks;

/// <summary>Measures the product as a process on collections of several sizes.</summary>
/// <param name="product">The product.</param>
/// <param name="options">What is asked.</param>
/// <param name="folder">An empty folder to work in.</param>
/// <param name="writer">Where the tables go.</param>
public sealed class ProductBenchmark(Product product, Options options, string folder, TextWriter writer)
{
    private const int SingleRuns = 10;
    private readonly List<Measurement> measurements = [];

    /// <summary>Measures and prints everything; true when every target that applies is kept.</summary>
    public bool Run()
    {
        if (RefusesABrokenRecord() is { } trouble)
        {
            writer.WriteLine(trouble);
            return false;
        }

        foreach (var size in options.Sizes)
        {
            var collection = Path.Combine(folder, "collection");
            SyntheticCollection.Write(new CollectionPlan(size), collection);
            Measure("check", size, options.Runs, _ => product.Check(collection));
            Measure("report", size, options.Runs, run => product.Report(collection, Output(run)));
            if (size == options.Sizes[0])
            {
                Measure("check of one record", 1, SingleRuns, _ =>
                    product.Check(Path.Combine(collection, "boards", CollectionPlan.BoardId(1) + ".md"))
                );
            }

            if (options.Compare is { } line)
            {
                PairedRuns
                    .Of(run => Product(collection, run).Run(), run => Other(line, collection, run).Run(), options.Runs)
                    .Print($"{options.Against} of {size} boards", "other", writer);
            }

            Directory.Delete(collection, recursive: true);
        }

        Print();
        Linearity.Print(measurements, writer);
        return Target.Print(measurements, writer);
    }

    private Command Product(string collection, int run) =>
        options.Against == "check" ? product.Check(collection) : product.Report(collection, Output(run));

    private Command Other(string line, string collection, int run) =>
        Command.Shell(line.Replace("{dir}", collection, StringComparison.Ordinal).Replace("{out}", Output(run), StringComparison.Ordinal));

    private void Measure(string name, int records, int runs, Func<int, Command> command)
    {
        var costs = Enumerable.Range(0, runs).Select(run => command(run).Run()).ToList();
        measurements.Add(new Measurement(name, records, ProcessCost.Median(costs)));
    }

    // A fresh folder each time: writing over an old report is another job than writing one.
    private string Output(int run)
    {
        var output = Path.Combine(folder, $"output-{run}");
        if (Directory.Exists(output))
        {
            Directory.Delete(output, recursive: true);
        }

        return output;
    }

    // A command that does nothing is fast. Before anything is timed it has to notice a record that cannot be read, and to write a page.
    private string? RefusesABrokenRecord()
    {
        var broken = Path.Combine(folder, "broken");
        SyntheticCollection.Write(new CollectionPlan(3), broken);
        var output = Output(0);
        var report = product.Report(broken, output).Run();
        var pages = Directory.Exists(output) ? Directory.GetFiles(output, "*.html", SearchOption.AllDirectories).Length : 0;
        File.WriteAllText(Path.Combine(broken, "boards", CollectionPlan.BoardId(2) + ".md"), "no front matter\n");
        var check = product.Check(broken).Run();
        return check.ExitCode == 0 ? "the product's check takes a broken record for sound: nothing is timed"
            : pages < 3 ? $"the product's report wrote {pages} pages for 3 boards (exit code {report.ExitCode}): nothing is timed"
            : null;
    }

    private void Print()
    {
        var table = new Table("command", "records", "wall s", "ms a record", "CPU s", "peak MB", "exit code");
        foreach (var (name, records, cost) in measurements)
        {
            table.Add(
                name,
                Table.Number(records, 0),
                Table.Number(cost.Wall.TotalSeconds),
                Table.Number(cost.Wall.TotalMilliseconds / records),
                cost.Cpu is { } cpu ? Table.Number(cpu.TotalSeconds) : "-",
                cost.PeakBytes is { } peak ? Table.Number(peak / 1e6, 0) : "-",
                Table.Number(cost.ExitCode, 0)
            );
        }

        writer.WriteLine($"the program: {product.Kind}");
        table.Print(writer);
    }
}
