using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Ohmstead.Records.Model;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Records.Schemas;

/// <summary>Writes the JSON schema (draft-07) of a file from its shape, for editors and other validators.</summary>
/// <remarks>
/// Only keywords that every validator honours are used. A schema accepts every file that the reader accepts and refuses most of what it
/// refuses: units, names and dates are examined by lenient patterns, what the values mean is left to the reader. The same shape gives the
/// same bytes.
/// </remarks>
public static class SchemaWriter
{
    private static readonly JsonWriterOptions Layout = new()
    {
        Indented = true,
        IndentSize = 2,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>The schema of a file, with one line end at the end.</summary>
    /// <param name="file">The shape of the whole file, one of <see cref="FileShapes.All"/>.</param>
    public static string Write(Shape file)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, Layout))
        {
            json.WriteStartObject();
            json.WriteString("$schema", "http://json-schema.org/draft-07/schema#");
            WriteMapping(json, file);
            WriteDefinitions(json, file);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(buffer.WrittenSpan) + "\n";
    }

    private static void WriteDefinitions(Utf8JsonWriter json, Shape file)
    {
        var inner = new List<Shape>();
        Collect(file, inner);
        if (inner.Count == 0)
        {
            return;
        }

        json.WriteStartObject("definitions");
        foreach (var shape in inner.OrderBy(shape => shape.Name, StringComparer.Ordinal))
        {
            json.WriteStartObject(NameOf(shape));
            WriteMapping(json, shape);
            json.WriteEndObject();
        }

        json.WriteEndObject();
    }

    private static void Collect(Shape shape, List<Shape> found)
    {
        foreach (var key in shape.Keys)
        {
            if (key.Inner is { } inner && !found.Contains(inner))
            {
                found.Add(inner);
                Collect(inner, found);
            }
        }
    }

    private static void WriteMapping(Utf8JsonWriter json, Shape shape)
    {
        json.WriteString("title", shape.Name);
        json.WriteString("description", shape.Description);
        json.WriteString("type", "object");
        json.WriteStartObject("properties");
        foreach (var key in shape.Keys)
        {
            json.WriteStartObject(key.Name);
            json.WriteString("description", Description(key));
            json.WriteStartArray("examples");
            SchemaExample.Write(json, key);
            json.WriteEndArray();
            WriteValue(json, key);
            json.WriteEndObject();
        }

        json.WriteEndObject();
        if (shape.Keys.Any(key => key.IsNeeded))
        {
            WriteTexts(json, "required", shape.Keys.Where(key => key.IsNeeded).Select(key => key.Name));
        }

        json.WriteBoolean("additionalProperties", false);
    }

    // Loaders of YAML 1.1 read a bare date as a moment in time and a bare yes as true; whoever uses one must be told where it happens.
    private static string Description(Key key) =>
        key.Kind switch
        {
            ValueKind.Date or ValueKind.RoughDate => key.Description
                + " Quote it, or tell the loader to keep dates as text, where a file is read as YAML 1.1.",
            _ => key.Description,
        };

    private static void WriteValue(Utf8JsonWriter json, Key key)
    {
        switch (key.Kind)
        {
            case ValueKind.Text:
                WriteTyped(json, SchemaPatterns.Text, "string", "number", "boolean");
                break;
            case ValueKind.Id:
                WriteTyped(json, SchemaPatterns.Id, "string", "number", "boolean");
                break;
            case ValueKind.Address:
                WriteTyped(json, SchemaPatterns.Address, "string");
                break;
            case ValueKind.AddressOfRecords:
                WriteTyped(json, SchemaPatterns.AddressOfRecords, "string");
                break;
            case ValueKind.Word when ReferenceEquals(key.Words, Vocabulary.YesNo):
                json.WriteStartArray("anyOf");
                WriteWordItem(json, key);
                WriteTypeItem(json, "boolean");
                json.WriteEndArray();
                break;
            case ValueKind.Word:
                WriteWord(json, key);
                break;
            case ValueKind.Words:
                WriteWords(json, key);
                break;
            case ValueKind.Quantity when SchemaExample.MayBeBare(key.Dimension):
                WriteTyped(json, SchemaPatterns.Quantity(key.Dimension), "string", "number");
                break;
            case ValueKind.Quantity:
                WriteTyped(json, SchemaPatterns.Quantity(key.Dimension), "string");
                break;
            case ValueKind.Indication when SchemaExample.MayBeBare(key.Dimension):
                WriteTyped(json, SchemaPatterns.Indication(key.Dimension), "string", "number");
                break;
            case ValueKind.Indication:
                WriteTyped(json, SchemaPatterns.Indication(key.Dimension), "string");
                break;
            case ValueKind.AnyQuantity:
                WriteTyped(json, SchemaPatterns.AnyQuantity, "string", "number");
                break;
            case ValueKind.Tolerance:
                WriteTyped(json, SchemaPatterns.Tolerance, "string");
                break;
            case ValueKind.Date:
                WriteTyped(json, SchemaPatterns.Day, "string");
                break;
            case ValueKind.RoughDate:
                WriteTyped(json, SchemaPatterns.RoughDay, "string", "integer");
                break;
            case ValueKind.Number:
                WriteTyped(json, SchemaPatterns.PlainNumber, "string", "number");
                break;
            case ValueKind.Count:
                WriteTyped(json, SchemaPatterns.Count, "string", "integer");
                break;
            default:
                WriteInner(json, key);
                break;
        }
    }

    private static void WriteTyped(Utf8JsonWriter json, string pattern, params ReadOnlySpan<string> types)
    {
        if (types.Length == 1)
        {
            json.WriteString("type", types[0]);
        }
        else
        {
            json.WriteStartArray("type");
            foreach (var type in types)
            {
                json.WriteStringValue(type);
            }

            json.WriteEndArray();
        }

        json.WriteString("pattern", pattern);
    }

    private static void WriteWord(Utf8JsonWriter json, Key key)
    {
        json.WriteString("type", "string");
        WriteTexts(json, "enum", key.Words);
    }

    private static void WriteWordItem(Utf8JsonWriter json, Key key)
    {
        json.WriteStartObject();
        WriteWord(json, key);
        json.WriteEndObject();
    }

    private static void WriteTypeItem(Utf8JsonWriter json, string type)
    {
        json.WriteStartObject();
        json.WriteString("type", type);
        json.WriteEndObject();
    }

    private static void WriteWords(Utf8JsonWriter json, Key key)
    {
        json.WriteStartArray("anyOf");
        WriteWordItem(json, key);
        json.WriteStartObject();
        json.WriteString("type", "array");
        json.WriteStartObject("items");
        WriteWord(json, key);
        json.WriteEndObject();
        json.WriteEndObject();
        json.WriteEndArray();
    }

    // A key with nothing behind it is an empty list or an absent mapping, as the reader has it.
    private static void WriteInner(Utf8JsonWriter json, Key key)
    {
        var reference = "#/definitions/" + NameOf(key.Inner!);
        if (key.Kind == ValueKind.List)
        {
            WriteTexts(json, "type", ["array", "null"]);
            json.WriteStartObject("items");
            json.WriteString("$ref", reference);
            json.WriteEndObject();
            return;
        }

        json.WriteStartArray("anyOf");
        json.WriteStartObject();
        json.WriteString("$ref", reference);
        json.WriteEndObject();
        WriteTypeItem(json, "null");
        json.WriteEndArray();
    }

    private static void WriteTexts(Utf8JsonWriter json, string name, IEnumerable<string> texts)
    {
        json.WriteStartArray(name);
        foreach (var text in texts)
        {
            json.WriteStringValue(text);
        }

        json.WriteEndArray();
    }

    private static string NameOf(Shape shape) => shape.Name.Replace(' ', '-');
}
