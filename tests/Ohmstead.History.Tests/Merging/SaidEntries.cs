using System.Text;
using Ohmstead.Records.Nodes;
using Ohmstead.Yaml;

namespace Ohmstead.History.Tests.Merging;

/// <summary>What a record says as plain lines to compare: each entry with all that its visit adds to it. It knows nothing of how the
/// program merges.</summary>
internal static class SaidEntries
{
    /// <summary>All of them in alphabetical order.</summary>
    public static IReadOnlyList<string> Of(string path, string text)
    {
        var reading = new YamlNodeReader().Read(
            path,
            Encoding.UTF8.GetBytes(text),
            path.EndsWith(".md", StringComparison.Ordinal) ? FileForm.Markdown : FileForm.Yaml,
            ReadingLimits.Usual
        );
        Assert.NotNull(reading.Root);
        Assert.Empty(reading.Findings);
        var said = new List<string>();
        foreach (var entry in reading.Root.Entries)
        {
            if (entry.Value is not SequenceNode list)
            {
                said.Add($"{entry.Key}: {Text(entry.Value)}");
                continue;
            }

            foreach (var item in list.Items)
            {
                said.AddRange(entry.Key == "bench" && item is MappingNode visit ? OfVisit(visit) : [$"{entry.Key}: {Text(item)}"]);
            }
        }

        // What is said twice is said twice: a second visit of a day alone is no more than the first.
        return
        [
            .. said.GroupBy(line => line, StringComparer.Ordinal)
                .SelectMany(same =>
                    same.Select((line, at) => at == 0 ? line : $"{line} ({at + 1})")
                        .Take(same.Key.Contains(':', StringComparison.Ordinal) ? int.MaxValue : 1)
                )
                .Order(StringComparer.Ordinal),
        ];
    }

    private static IEnumerable<string> OfVisit(MappingNode visit)
    {
        string? Head(string key) => (visit.ValueOf(key) as ScalarNode)?.Text;
        var who = $"{Head("date")} {Head("by")}";
        yield return who;
        foreach (var list in visit.Entries)
        {
            // What a reading is judged by.
            var how = list.Key is "readings" or "proof" ? $" {Head("temperature")}, {Head("powered")}" : string.Empty;
            foreach (var entry in ((list.Value as SequenceNode)?.Items ?? []).OfType<MappingNode>())
            {
                var meter = how.Length == 0 || entry.ValueOf("instrument") is not null ? string.Empty : $", {Head("instrument")}";
                yield return $"{who}{how}{meter}: {list.Key}: {Text(entry)}";
            }
        }
    }

    private static string Text(Node node) =>
        node switch
        {
            ScalarNode scalar => scalar.Text,
            SequenceNode list => $"[{string.Join(", ", list.Items.Select(Text))}]",
            MappingNode mapping => $"{{{string.Join(", ", mapping.Entries.Select(entry => $"{entry.Key}: {Text(entry.Value)}"))}}}",
            _ => string.Empty,
        };
}
