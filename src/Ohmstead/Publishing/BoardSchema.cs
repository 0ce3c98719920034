using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Ohmstead.Records.Shapes;
using Ohmstead.Report.Html;

namespace Ohmstead.Publishing;

/// <summary>Writes the JSON schema (draft-07) of the file of a board, from the tables that the file is written by.</summary>
internal static class BoardSchema
{
    private const string Description =
        "What the report tells of a board, for programs. Each table names its columns once, and each row holds their cells in that order; "
        + "null, or nothing at the end of a row, where there is nothing to say. What many rows say together stands once, under shared: a "
        + "column that has the name of a table there holds the numbers of its rows, from zero. A table of one column is a list.";

    private static readonly JsonWriterOptions Layout = new()
    {
        Indented = true,
        IndentSize = 2,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>The schema, with one line end at the end.</summary>
    public static string Write()
    {
        using var buffer = new PageBuffer();
        using (var json = new Utf8JsonWriter(buffer, Layout))
        {
            var tables = DataShapes.OfOneBoard;
            json.WriteStartObject();
            json.WriteString("$schema", "http://json-schema.org/draft-07/schema#");
            json.WriteString("title", "board data");
            json.WriteString("description", Description);
            json.WriteString("type", "object");
            json.WriteStartObject("properties");
            json.WriteStartObject("version");
            json.WriteString("description", "The version of this form.");
            json.WritePropertyName("const");
            json.WriteRawValue(BoardJson.Version);
            json.WriteEndObject();
            json.WriteStartObject("board");
            json.WriteString("description", Tables.SharedKeys.Board.Description);
            json.WriteString("type", "string");
            json.WriteEndObject();
            foreach (var table in tables)
            {
                Table(json, table.Name, table.Description, table.Columns.Select(column => (column.Name, Own(table, column))));
            }

            json.WriteStartObject("shared");
            json.WriteString("description", "What stands once.");
            json.WriteString("type", "object");
            json.WriteStartObject("properties");
            foreach (
                var (table, column) in tables
                    .SelectMany(table => table.Columns.Where(column => column.IsOnce).Select(column => (table, column)))
                    .DistinctBy(pair => pair.column.Name)
                    .OrderBy(pair => pair.column.Name, StringComparer.Ordinal)
            )
            {
                if (column.Keys.Count > 1)
                {
                    Table(json, column.Name, null, column.Keys.Select(key => (key, (Key?)table.KeyOf(key))));
                    continue;
                }

                json.WriteStartObject(column.Name);
                json.WriteString("type", "array");
                json.WritePropertyName("items");
                Cell(json, column.Name, table.KeyOf(column.Name));
                json.WriteEndObject();
            }

            json.WriteEndObject();
            json.WriteBoolean("additionalProperties", false);
            json.WriteEndObject();
            json.WriteEndObject();
            Names(json, "required", ["version", "board", .. tables.Select(table => table.Name), "shared"]);
            json.WriteBoolean("additionalProperties", false);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(buffer.Written) + "\n";
    }

    private static Key? Own(BoardTable table, BoardColumn column) => column.IsOnce ? null : table.KeyOf(column.Name);

    // A column without a key is one of numbers of rows.
    private static void Table(Utf8JsonWriter json, string name, string? description, IEnumerable<(string Name, Key? Key)> columns)
    {
        (string Name, Key? Key)[] all = [.. columns];
        json.WriteStartObject(name);
        if (description is not null)
        {
            json.WriteString("description", description);
        }

        json.WriteString("type", "object");
        json.WriteStartObject("properties");
        json.WriteStartObject("columns");
        Names(json, "const", all.Select(column => column.Name));
        json.WriteEndObject();
        json.WriteStartObject("rows");
        json.WriteString("type", "array");
        json.WriteStartObject("items");
        json.WriteString("type", "array");
        json.WriteStartArray("items");
        foreach (var column in all)
        {
            Cell(json, column.Name, column.Key);
        }

        json.WriteEndArray();
        json.WriteBoolean("additionalItems", false);
        json.WriteEndObject();
        json.WriteEndObject();
        json.WriteEndObject();
        Names(json, "required", ["columns", "rows"]);
        json.WriteBoolean("additionalProperties", false);
        json.WriteEndObject();
    }

    private static void Cell(Utf8JsonWriter json, string name, Key? key)
    {
        json.WriteStartObject();
        json.WriteString("title", name);
        json.WriteString("description", key?.Description ?? $"The number of a row of {name} under shared.");
        if (key is { Kind: ValueKind.Word, Words: var words })
        {
            json.WriteStartArray("enum");
            foreach (var word in words)
            {
                json.WriteStringValue(word);
            }

            json.WriteNullValue();
            json.WriteEndArray();
        }
        else
        {
            Names(
                json,
                "type",
                [
                    key?.Kind switch
                    {
                        null or ValueKind.Count => "integer",
                        ValueKind.Number => "number",
                        _ => "string",
                    },
                    "null",
                ]
            );
        }

        if (key is null)
        {
            json.WriteNumber("minimum", 0);
        }

        json.WriteEndObject();
    }

    private static void Names(Utf8JsonWriter json, string name, IEnumerable<string> names)
    {
        json.WriteStartArray(name);
        foreach (var one in names)
        {
            json.WriteStringValue(one);
        }

        json.WriteEndArray();
    }
}
