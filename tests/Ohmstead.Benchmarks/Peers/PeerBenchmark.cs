using Ohmstead.Benchmarks.Processes;
using Ohmstead.Synthetic;
using Ohmstead.Synthetic.Files;

namespace Ohmstead.Benchmarks.Peers;

/// <summary>Measures the product beside general-purpose programs, on the same collections and in the same minutes.</summary>
/// <param name="product">The product.</param>
/// <param name="options">What is asked.</param>
/// <param name="folder">An empty folder to work in.</param>
/// <param name="writer">Where the tables go.</param>
public sealed class PeerBenchmark(Product product, Options options, string folder, TextWriter writer)
{
    private const int LeastPairs = 5;
    private const int SingleRuns = 20;

    // One record also asks which others share its parts, so it is measured where there are few as well.
    private const int SmallCollection = 20;
    private static readonly CollectionPlan Few = new(3);

    private readonly Table wanted = new("wanted", "boards", "at most", "measured", "kept");
    private readonly int pairs = Math.Max(LeastPairs, options.Runs);

    /// <summary>Measures and prints everything; true when the peers that are there did their work.</summary>
    public bool Run()
    {
        var present = new List<Peer>();
        foreach (var peer in new PeerList(folder).All)
        {
            if (peer.Missing is { } missing)
            {
                writer.WriteLine($"{peer.Name} is left out, for it is not there: {missing}");
            }
            else if (NotDone(peer) is { } trouble)
            {
                writer.WriteLine(trouble);
                return false;
            }
            else
            {
                present.Add(peer);
            }
        }

        writer.WriteLine($"the program: {product.Kind}");
        writer.WriteLine();
        var collection = Path.Combine(folder, "collection");
        SyntheticCollection.Write(new CollectionPlan(SmallCollection), collection);
        Single(collection, SmallCollection);
        Directory.Delete(collection, recursive: true);
        foreach (var size in options.Sizes)
        {
            SyntheticCollection.Write(new CollectionPlan(size), collection);
            foreach (var peer in present)
            {
                Pairs(peer, collection, size);
            }

            Single(collection, size);
            Directory.Delete(collection, recursive: true);
        }

        wanted.Print(writer);
        return true;
    }

    private void Pairs(Peer peer, string collection, int size)
    {
        var load = Machine.Load();
        var runs = PairedRuns.Of(_ => Cost(Ours(peer.Against), collection), _ => Cost(peer.Run, collection), pairs);
        var job = peer.Against == PeerJob.Check ? "check" : "report";
        runs.Print($"{job} of {size} boards, load {Table.Number(load, 1)}", peer.Name, writer);
        foreach (var (name, atMost, value) in peer.Wanted)
        {
            var ratio = runs.Ratio(value);
            Want($"{job}, {name} beside {peer.Name}", size, Table.Number(atMost), Table.Number(ratio, 3), ratio <= atMost);
        }
    }

    private void Single(string collection, int size)
    {
        var board = CollectionPlan.BoardId(1);
        var record = Path.Combine(collection, "boards", board + ".md");
        Single("check of one record", size, 45, () => product.Check(record));

        // Each run finds the record as it was: what was entered once already is asked about instead.
        var before = File.ReadAllBytes(record);
        Single("enter of one reading", size, 65, () =>
        {
            File.WriteAllBytes(record, before);
            return product.Enter(collection, board, "R1", "3.3kohm");
        });
        File.WriteAllBytes(record, before);
        writer.WriteLine();
    }

    private void Single(string name, int size, double atMost, Func<Command> command)
    {
        var load = Machine.Load();
        var costs = Enumerable.Range(0, SingleRuns).Select(_ => command().Run()).ToList();
        var cost = ProcessCost.Median(costs);
        var wall = cost.Wall.TotalMilliseconds;
        var least = costs.Min(one => one.Wall).TotalMilliseconds;
        var what = $"{name}, load {Table.Number(load, 1)}, exit code {cost.ExitCode}";
        writer.WriteLine(
            $"{what}, {size} boards: {Table.Number(wall, 0)} ms, the middle of {SingleRuns}; {Table.Number(least, 0)} the least"
        );
        Want(what, size, $"{Table.Number(atMost, 0)} ms", $"{Table.Number(wall, 0)} ms", wall <= atMost);
    }

    private void Want(string what, int size, string atMost, string measured, bool isKept) =>
        wanted.Add(what, Table.Number(size, 0), atMost, measured, isKept ? "yes" : "no");

    private Func<string, string, Command> Ours(PeerJob job) =>
        job switch
        {
            PeerJob.Check => (collection, _) => product.Check(collection),
            PeerJob.Report => product.Report,
        };

    // A fresh folder each time, counted and taken away, so that nobody writes over pages or finds the memory full of them.
    private ProcessCost Cost(Func<string, string, Command> command, string collection)
    {
        var output = Path.Combine(folder, "output");
        var cost = command(collection, output).Run();
        if (!Directory.Exists(output))
        {
            return cost;
        }

        var written = new DirectoryInfo(output).EnumerateFiles("*", SearchOption.AllDirectories).Sum(file => file.Length);
        Directory.Delete(output, recursive: true);
        return cost with { BytesWritten = written };
    }

    // A command that does nothing is fast: who checks has to take what is sound and to notice a broken record, who
    // reports to write the pages.
    private string? NotDone(Peer peer)
    {
        var (collection, output) = (Path.Combine(folder, "few"), Path.Combine(folder, "pages"));
        SyntheticCollection.Write(Few, collection);
        var sound = peer.Run(collection, output).Run();
        var pages = Directory.Exists(output)
            ? Directory.EnumerateFiles(output, "*.html", SearchOption.AllDirectories).Count(page => IsOfBoard(File.ReadAllText(page)))
            : 0;
        File.WriteAllText(Path.Combine(collection, "boards", CollectionPlan.BoardId(2) + ".md"), "no front matter\n");
        var broken = peer.Run(collection, output).Run();
        Directory.Delete(collection, recursive: true);
        return sound.ExitCode != 0 ? $"{peer.Name} failed: {sound.LastLine}"
            : peer.Against == PeerJob.Check && broken.ExitCode == 0 ? $"{peer.Name} takes a broken record for sound"
            : peer.Against == PeerJob.Report && pages < Few.Boards ? $"{peer.Name} writes {pages} pages for {Few.Boards} boards"
            : null;
    }

    private static bool IsOfBoard(string page) => page.Contains("<th>C1</th>", StringComparison.Ordinal);
}
