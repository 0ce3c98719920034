using System.Text;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Text;
using Ohmstead.Yaml;

namespace Ohmstead.Records.Tests.Reading;

/// <summary>Short ways to read a text and to say what came of it.</summary>
internal static class ReadText
{
    internal static NodeReading Markdown(string text, ReadingLimits? limits = null) => Markdown(Encoding.UTF8.GetBytes(text), limits);

    internal static NodeReading Markdown(byte[] bytes, ReadingLimits? limits = null) =>
        new YamlNodeReader().Read("boards/sp-0007.md", bytes, FileForm.Markdown, limits ?? ReadingLimits.Usual);

    internal static NodeReading Yaml(string text) =>
        new YamlNodeReader().Read("collection.yaml", Encoding.UTF8.GetBytes(text), FileForm.Yaml, ReadingLimits.Usual);

    /// <summary>Reads lines as front matter, so that the first of them is line 2 of the file.</summary>
    internal static NodeReading FrontMatter(string yaml, ReadingLimits? limits = null) => Markdown($"---\n{yaml}\n---\n", limits);

    /// <summary>The findings as <c>line:column check</c>, a warning with its severity, several parted by a comma.</summary>
    internal static string Found(this NodeReading reading) => string.Join(", ", reading.Findings.Select(Short));

    /// <summary>Where a finding stands, as an editor counts, with its length: <c>3:5+2</c>.</summary>
    internal static string At(this Finding finding) => At(finding.Place);

    internal static string At(Place place) => $"{place.Line}:{place.Column}+{place.Length}";

    internal static string At(Spot spot) => $"{spot.Line}:{spot.Column}+{spot.Length}";

    /// <summary>The value of a key at the top.</summary>
    internal static Node Value(this NodeReading reading, string key) => reading.Root!.Entries.Single(entry => entry.Key == key).Value;

    internal static string Text(this Node node) => ((ScalarNode)node).Text;

    /// <summary>The whole tree on one line, every scalar in quotes.</summary>
    internal static string Shape(this Node? node) =>
        node switch
        {
            ScalarNode scalar => $"'{scalar.Text}'",
            SequenceNode list => $"[{string.Join(", ", list.Items.Select(Shape))}]",
            MappingNode mapping => $"{{{string.Join(", ", mapping.Entries.Select(entry => $"{entry.Key}: {entry.Value.Shape()}"))}}}",
            _ => "nothing",
        };

    private static string Short(Finding finding) =>
        $"{finding.Place.Line}:{finding.Place.Column} "
        + $"{finding.Check}{(finding.Severity == Severity.Error ? string.Empty : $" ({finding.Severity})")}";
}
