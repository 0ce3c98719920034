using System.Text;
using Ohmstead.Records.Binding;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Nodes;
using Ohmstead.Synthetic;
using Ohmstead.Synthetic.Files;
using Ohmstead.Yaml;

namespace Ohmstead.Benchmarks.Stages;

/// <summary>Whether the invented records are records: a file that is refused early would cost nothing and count as fast.</summary>
public static class CollectionReading
{
    private const int Boards = 300;

    /// <summary>Reads a collection of five kinds of file, and prints the first finding if there is any.</summary>
    public static bool IsSound(TextWriter writer)
    {
        var reader = new YamlNodeReader();
        foreach (var (path, text) in SyntheticCollection.Files(new CollectionPlan(Boards)))
        {
            var form = path.EndsWith(".md", StringComparison.Ordinal) ? FileForm.Markdown : FileForm.Yaml;
            var nodes = reader.Read(path, Encoding.UTF8.GetBytes(text), form, ReadingLimits.Usual);
            if (nodes.Findings.Concat(Bind(path, nodes)).FirstOrDefault() is { } finding)
            {
                writer.WriteLine($"{finding.Place}: {finding.Message}; the invented records must be sound: nothing is timed");
                return false;
            }
        }

        return true;
    }

    private static IReadOnlyList<Finding> Bind(string path, NodeReading nodes) =>
        path switch
        {
            "collection.yaml" => FileBinding.Collection(path, nodes).Findings,
            "instruments.yaml" => FileBinding.Instruments(path, nodes).Findings,
            "stock.yaml" => FileBinding.Stock(path, nodes).Findings,
            _ when path.StartsWith("designs/", StringComparison.Ordinal) => FileBinding.Design(path, nodes).Findings,
            _ => FileBinding.Board(path, nodes).Findings,
        };
}
