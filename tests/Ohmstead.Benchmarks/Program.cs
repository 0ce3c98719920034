using Ohmstead.Benchmarks;
using Ohmstead.Benchmarks.Peers;
using Ohmstead.Benchmarks.Processes;
using Ohmstead.Benchmarks.Stages;

if (Options.Read(args) is not { } options)
{
    Console.Error.WriteLine($"expected {Options.Usage}");
    return 2;
}

var console = Console.Out;
Machine.Print(console);
if (!options.Peers)
{
    if (!CollectionReading.IsSound(console))
    {
        return 1;
    }

    StageBenchmark.Run(console);
    if (options.StagesOnly)
    {
        return 0;
    }
}

var folder = Directory.CreateTempSubdirectory("ohmstead-benchmark-").FullName;
try
{
    var (product, trouble) = options.Program is { } program
        ? (new Product(program, $"given as {program}"), null)
        : Product.Publish(Path.Combine(folder, "product"));
    if (product is null)
    {
        Console.Error.WriteLine(trouble);
        return 1;
    }

    if (options.Peers)
    {
        return new PeerBenchmark(product, options, folder, console).Run() ? 0 : 1;
    }

    return new ProductBenchmark(product, options, folder, console).Run() ? 0 : 1;
}
finally
{
    Directory.Delete(folder, recursive: true);
}
