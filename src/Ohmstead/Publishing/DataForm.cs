using System.Buffers;
using System.Globalization;
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

    /// <summary>The head line of a CSV file.</summary>
    public static byte[] CsvHead(Shape row) => Csv([[.. row.Keys.Select(key => key.Name)]]);

    /// <summary>Rows of a CSV file.</summary>
    public static byte[] Csv(IEnumerable<string?[]> rows)
    {
        var lines = new ArrayBufferWriter<byte>(4096);
        foreach (var row in rows)
        {
            CsvRows.Append(lines, row);
        }

        return lines.WrittenSpan.ToArray();
    }

    /// <summary>Rows as JSON objects, a line for each, each followed by a comma; absent cells are left out.</summary>
    public static byte[] Json(Shape shape, IEnumerable<string?[]> rows)
    {
        JsonEncodedText[] names = [.. shape.Keys.Select(key => JsonEncodedText.Encode(key.Name))];
        var bytes = new ArrayBufferWriter<byte>(16 << 10);
        using var json = new Utf8JsonWriter(bytes, Layout);
        foreach (var row in rows)
        {
            json.Reset();
            json.WriteStartObject();
            for (var key = 0; key < shape.Keys.Count; key++)
            {
                Cell(json, shape.Keys[key].Kind, names[key], row[key]);
            }

            json.WriteEndObject();
            json.Flush();
            bytes.Write(",\n"u8);
        }

        return bytes.WrittenSpan.ToArray();
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
            json.WriteNumber(name, decimal.Parse(cell, NumberStyles.Float, CultureInfo.InvariantCulture));
        }
        else
        {
            json.WriteString(name, cell);
        }
    }
}
