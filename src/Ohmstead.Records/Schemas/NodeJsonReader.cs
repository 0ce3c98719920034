using Newtonsoft.Json;
using Newtonsoft.Json.Linq;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Text;

namespace Ohmstead.Records.Schemas;

/// <summary>Reads nodes as JSON, so that every token carries the line and column that it has in the record.</summary>
internal sealed class NodeJsonReader : JsonReader, IJsonLineInfo
{
    private readonly List<(JsonToken Token, object? Value, Spot Spot)> steps = [];
    private int at = -1;

    private NodeJsonReader(Node root)
    {
        MaxDepth = null;
        Add(root, root.Spot);
    }

    /// <inheritdoc/>
    public int LineNumber => steps[Math.Max(at, 0)].Spot.Line;

    /// <inheritdoc/>
    public int LinePosition => steps[Math.Max(at, 0)].Spot.Column;

    /// <summary>The tokens of a node.</summary>
    internal static JToken Load(Node root)
    {
        using var reader = new NodeJsonReader(root);
        return JToken.Load(reader, new JsonLoadSettings { LineInfoHandling = LineInfoHandling.Load });
    }

    /// <inheritdoc/>
    public bool HasLineInfo() => true;

    /// <inheritdoc/>
    public override bool Read()
    {
        if (++at >= steps.Count)
        {
            at = steps.Count - 1;
            SetToken(JsonToken.None);
            return false;
        }

        SetToken(steps[at].Token, steps[at].Value);
        return true;
    }

    // Where nothing is written there is no place either: such a value stands where its key does.
    private void Add(Node node, Spot keySpot)
    {
        switch (node)
        {
            case MappingNode mapping:
                steps.Add((JsonToken.StartObject, null, mapping.Spot));
                foreach (var entry in mapping.Entries)
                {
                    steps.Add((JsonToken.PropertyName, entry.Key, entry.KeySpot));
                    Add(entry.Value, entry.KeySpot);
                }

                steps.Add((JsonToken.EndObject, null, mapping.Spot));
                break;
            case SequenceNode sequence:
                steps.Add((JsonToken.StartArray, null, sequence.Spot));
                foreach (var item in sequence.Items)
                {
                    Add(item, item.Spot);
                }

                steps.Add((JsonToken.EndArray, null, sequence.Spot));
                break;
            case ScalarNode scalar:
                AddScalar(CoreSchema.Resolve(scalar), scalar.Spot.Length == 0 ? keySpot : scalar.Spot);
                break;
            default:
                break;
        }
    }

    private void AddScalar(object? value, Spot spot) =>
        steps.Add(
            value switch
            {
                null => (JsonToken.Null, null, spot),
                bool => (JsonToken.Boolean, value, spot),
                long => (JsonToken.Integer, value, spot),

                // To JSON Schema 1e3 and 16.0 are integers, which the library in use overlooks unless they are held as such.
                double real when double.IsInteger(real) && Math.Abs(real) < 1e15 => (JsonToken.Integer, (long)real, spot),
                double => (JsonToken.Float, value, spot),
                _ => (JsonToken.String, value, spot),
            }
        );
}
