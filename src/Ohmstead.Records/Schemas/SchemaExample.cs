using System.Text.Json;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Records.Schemas;

/// <summary>Turns the example of a key, written as a person writes it, into the JSON value that a loader makes of it.</summary>
internal static class SchemaExample
{
    /// <summary>Whether a quantity of the dimension may stand without a unit.</summary>
    internal static bool MayBeBare(Dimension dimension) => dimension is Dimension.Number or Dimension.Ratio;

    /// <summary>Writes the example as one JSON value.</summary>
    internal static void Write(Utf8JsonWriter json, Key key)
    {
        if (key.Inner is not { } inner)
        {
            WriteScalar(json, key, key.Example);
        }
        else if (key.Kind == ValueKind.List)
        {
            json.WriteStartArray();
            WriteMapping(json, inner);
            json.WriteEndArray();
        }
        else
        {
            WriteMapping(json, inner);
        }
    }

    // The examples of shapes are flow mappings without nesting or quotes: { at: J3, severity: minor }.
    private static void WriteMapping(Utf8JsonWriter json, Shape shape)
    {
        json.WriteStartObject();
        foreach (var pair in shape.Example.Trim('{', '}', ' ').Split(", "))
        {
            var colon = pair.IndexOf(": ", StringComparison.Ordinal);
            var key = shape.Keys[shape.PlaceOf(pair[..colon])];
            json.WritePropertyName(key.Name);
            WriteScalar(json, key, pair[(colon + 2)..]);
        }

        json.WriteEndObject();
    }

    private static void WriteScalar(Utf8JsonWriter json, Key key, string text)
    {
        var isNumeric =
            key.Kind is ValueKind.Number or ValueKind.Count or ValueKind.RoughDate
            || (key.Kind is ValueKind.Quantity or ValueKind.Indication && MayBeBare(key.Dimension));
        if (isNumeric && text.All(character => char.IsAsciiDigit(character) || character == '.'))
        {
            json.WriteRawValue(text);
        }
        else
        {
            json.WriteStringValue(text);
        }
    }
}
