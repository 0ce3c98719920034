using System.Globalization;
using System.Text;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Text;
using Ohmstead.Yaml;

namespace Ohmstead.Fuzz.Targets;

/// <summary>The reader of plain records says what the library's reader says, and each finding lies in the file.</summary>
internal static class ReadersTarget
{
    public static void Try(byte[] input)
    {
        foreach (var form in (FileForm[])[FileForm.Markdown, FileForm.Yaml])
        {
            var usual = NodeReaders.ForWorker(0).Read("a.md", input, form, ReadingLimits.Usual);
            var library = new YamlNodeReader().Read("a.md", input, form, ReadingLimits.Usual);
            FaultFoundException.Unless(Told(usual) == Told(library), "the two readers read different things");
            FaultFoundException.Unless(usual.Root is not null || usual.Findings.Length > 0, "nothing was read and nothing is said");
            var lines = new SourceText("a.md", Encoding.UTF8.GetString(input));
            foreach (var finding in usual.Findings)
            {
                Place[] places = [finding.Place, .. finding.Related.Select(related => related.Place)];
                FaultFoundException.Unless(
                    places.All(place => place.Line >= 1 && place.Line <= lines.LineCount && place.Column >= 1),
                    $"a finding lies outside the file: {finding}"
                );
                FaultFoundException.Unless(finding.Message.Length > 0, "a finding says nothing");
            }
        }
    }

    private static string Told(NodeReading reading)
    {
        var told = new StringBuilder();
        Tell(told, reading.Root);
        foreach (var finding in reading.Findings)
        {
            told.Append(finding.Check).Append(' ').Append(finding.Place).Append(' ').AppendLine(finding.Message);
        }

        return told.ToString();
    }

    private static void Tell(StringBuilder told, Node? node)
    {
        switch (node)
        {
            case null:
                told.Append("nothing");
                break;
            case ScalarNode scalar:
                told.Append(CultureInfo.InvariantCulture, $"{scalar.Spot} '{scalar.Text}'");
                break;
            case SequenceNode list:
                told.Append(CultureInfo.InvariantCulture, $"{list.Spot} [");
                foreach (var item in list.Items)
                {
                    Tell(told, item);
                    told.Append(',');
                }

                told.Append(']');
                break;
            case MappingNode map:
                told.Append(CultureInfo.InvariantCulture, $"{map.Spot} {{");
                foreach (var entry in map.Entries)
                {
                    told.Append(entry.Key).Append('=');
                    Tell(told, entry.Value);
                    told.Append(',');
                }

                told.Append('}');
                break;
            default:
                throw new FaultFoundException($"a node of an unknown kind: {node.GetType().Name}");
        }
    }
}
