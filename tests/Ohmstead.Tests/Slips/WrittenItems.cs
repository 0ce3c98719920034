using System.Text;
using Ohmstead.Records.Nodes;
using Ohmstead.Yaml;

namespace Ohmstead.Tests.Slips;

/// <summary>How many items the lists of a file hold: parts, visits, readings, work. What is lost is missing here.</summary>
internal static class WrittenItems
{
    /// <summary>The items of all lists; 0 when the file cannot be read.</summary>
    public static int Count(string path, string text)
    {
        var form = path.EndsWith(".md", StringComparison.Ordinal) ? FileForm.Markdown : FileForm.Yaml;
        var reading = new YamlNodeReader().Read(path, Encoding.UTF8.GetBytes(text), form, new ReadingLimits());
        return reading.Root is { } root ? Count(root) : 0;
    }

    private static int Count(Node node) =>
        node switch
        {
            MappingNode mapping => mapping.Entries.Sum(entry => Count(entry.Value)),
            SequenceNode list => list.Items.Length + list.Items.Sum(Count),
            _ => 0,
        };
}
