using System.Globalization;
using System.Text;
using Ohmstead.Records.Nodes;

namespace Ohmstead.Records.Tests.Reading;

/// <summary>What was read, in words: two readings are the same when these are.</summary>
internal static class WrittenNodes
{
    /// <summary>Everything a reading holds, with every place.</summary>
    internal static string Of(NodeReading reading)
    {
        var text = new StringBuilder();
        Write(text, reading.Root);
        text.Append(CultureInfo.InvariantCulture, $"\n{reading.BodyLine}\n{reading.Body}\n");
        text.AppendJoin('\n', reading.Findings.Select(finding => $"{finding.Place} {finding.Check} {finding.Message}"));
        return text.ToString();
    }

    private static void Write(StringBuilder text, Node? node)
    {
        text.Append(CultureInfo.InvariantCulture, $"<{node?.Spot.Line}:{node?.Spot.Column}+{node?.Spot.Length} ");
        switch (node)
        {
            case ScalarNode scalar:
                text.Append(CultureInfo.InvariantCulture, $"{scalar.Style} '{scalar.Text}'");
                break;
            case SequenceNode sequence:
                text.Append(sequence.IsFlow ? "[" : "-");
                foreach (var item in sequence.Items)
                {
                    Write(text, item);
                }

                break;
            case MappingNode mapping:
                text.Append(mapping.IsFlow ? "{" : ":");
                foreach (var entry in mapping.Entries)
                {
                    text.Append(
                        CultureInfo.InvariantCulture,
                        $"\n{entry.KeySpot.Line}:{entry.KeySpot.Column}+{entry.KeySpot.Length} {entry.Key}="
                    );
                    Write(text, entry.Value);
                }

                break;
            default:
                break;
        }

        text.Append('>');
    }
}
