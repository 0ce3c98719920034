using System.Buffers;
using System.Text.Encodings.Web;
using System.Text.Json;
using Ohmstead.Output;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Publishing;

/// <summary>Rows as text: of a CSV file, and of an array of a JSON file.</summary>
internal static class DataForm
{
    // What a web page or a terminal may mistake for something else is escaped: JSON says the same either way.
    private static readonly JsonWriterOptions Layout = new() { Encoder = JavaScriptEncoder.Default };

    /// <summary>Writes the head line of a CSV file.</summary>
    public static void CsvHead(IBufferWriter<byte> lines, Shape row) => CsvRows.Append(lines, [.. row.Keys.Select(key => key.Name)]);

    /// <summary>Writes rows of a CSV file.</summary>
    public static void Csv(IBufferWriter<byte> lines, IEnumerable<string?[]> rows)
    {
        foreach (var row in rows)
        {
            CsvRows.Append(lines, row);
        }
    }

    /// <summary>The names of the keys of a shape, ready to be written a million times.</summary>
    public static JsonEncodedText[] Names(Shape shape) => [.. shape.Keys.Select(key => JsonEncodedText.Encode(key.Name))];

    /// <summary>Rows as JSON objects, a line for each, with commas between; absent cells are left out.</summary>
    /// <param name="bytes">Where to.</param>
    /// <param name="shape">What the objects hold.</param>
    /// <param name="names">The names of its keys, from <see cref="Names"/>.</param>
    /// <param name="rows">The rows.</param>
    /// <param name="skipped">How many cells at the start of each row the shape does not name.</param>
    public static void Json(IBufferWriter<byte> bytes, Shape shape, JsonEncodedText[] names, IEnumerable<string?[]> rows, int skipped = 0)
    {
        using var json = new Utf8JsonWriter(bytes, Layout);
        var isFirst = true;
        foreach (var row in rows)
        {
            bytes.Write(isFirst ? "\n"u8 : ",\n"u8);
            isFirst = false;
            json.Reset();
            json.WriteStartObject();
            for (var key = 0; key < names.Length; key++)
            {
                Cell(json, shape.Keys[key].Kind, names[key], row[key + skipped]);
            }

            json.WriteEndObject();
            json.Flush();
        }
    }

    /// <summary>A text as a JSON string, quotes included.</summary>
    public static string Quoted(string text) => $"\"{JavaScriptEncoder.Default.Encode(text)}\"";

    private static void Cell(Utf8JsonWriter json, ValueKind kind, JsonEncodedText name, string? cell)
    {
        if (string.IsNullOrWhiteSpace(cell))
        {
            return;
        }

        if (kind is ValueKind.Count or ValueKind.Number)
        {
            // Written by this program a moment ago, as JSON wants it.
            json.WritePropertyName(name);
            json.WriteRawValue(cell, skipInputValidation: true);
        }
        else
        {
            json.WriteString(name, cell);
        }
    }
}
