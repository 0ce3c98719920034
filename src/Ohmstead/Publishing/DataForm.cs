using System.Buffers;
using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using CsvHelper;
using CsvHelper.Configuration;
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

    /// <summary>Rows of a CSV file (RFC 4180, UTF-8). A cell that a spreadsheet would take for a formula is made text.</summary>
    public static byte[] Csv(IEnumerable<string?[]> rows)
    {
        using var bytes = new MemoryStream();
        using (var writer = new StreamWriter(bytes, new UTF8Encoding(false)))
        using (var csv = new CsvWriter(writer, new CsvConfiguration(CultureInfo.InvariantCulture) { NewLine = "\r\n", InjectionOptions = InjectionOptions.Escape }))
        {
            foreach (var row in rows)
            {
                foreach (var cell in row)
                {
                    csv.WriteField(Printable.Of(cell ?? string.Empty));
                }

                csv.NextRecord();
            }
        }

        return bytes.ToArray();
    }

    /// <summary>Rows as JSON objects, a line for each, each followed by a comma; absent cells are left out.</summary>
    public static byte[] Json(Shape shape, IEnumerable<string?[]> rows)
    {
        var bytes = new ArrayBufferWriter<byte>();
        using var json = new Utf8JsonWriter(bytes, Layout);
        foreach (var row in rows)
        {
            json.Reset();
            json.WriteStartObject();
            for (var key = 0; key < shape.Keys.Count; key++)
            {
                Cell(json, shape.Keys[key], row[key]);
            }

            json.WriteEndObject();
            json.Flush();
            bytes.Write(",\n"u8);
        }

        return bytes.WrittenSpan.ToArray();
    }

    /// <summary>A text as a JSON string, quotes included.</summary>
    public static string Quoted(string text) => $"\"{JavaScriptEncoder.Default.Encode(text)}\"";

    private static void Cell(Utf8JsonWriter json, Key key, string? cell)
    {
        if (string.IsNullOrWhiteSpace(cell))
        {
            return;
        }

        if (key.Kind is ValueKind.Count or ValueKind.Number)
        {
            json.WriteNumber(key.Name, decimal.Parse(cell, NumberStyles.Float, CultureInfo.InvariantCulture));
        }
        else
        {
            json.WriteString(key.Name, cell);
        }
    }
}
