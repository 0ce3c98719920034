using System.Buffers;
using System.Text.Json;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Publishing;

/// <summary>Writes rows as JSON objects, a line for each, with commas between; absent cells are left out.</summary>
/// <param name="bytes">Where to.</param>
internal sealed class JsonRows(IBufferWriter<byte> bytes) : IRowTaker, IDisposable
{
    private readonly Utf8JsonWriter json = new(bytes, new() { Encoder = DataForm.Escapes, SkipValidation = true });
    private DataTable table;
    private bool isFirst;

    /// <summary>Starts the array of a table.</summary>
    public void Start(DataTable next)
    {
        table = next;
        isFirst = true;
        bytes.Write("["u8);
    }

    /// <inheritdoc/>
    public void Take(params ReadOnlySpan<string?> cells)
    {
        bytes.Write(isFirst ? "\n"u8 : ",\n"u8);
        isFirst = false;
        json.Reset();
        json.WriteStartObject();
        for (var key = 0; key < table.Names.Length; key++)
        {
            Cell(table.Row.Keys[key].Kind, table.Names[key], cells[key + table.Skipped]);
        }

        json.WriteEndObject();
        json.Flush();
    }

    /// <summary>Ends the array.</summary>
    public void End() => bytes.Write("]"u8);

    /// <inheritdoc/>
    public void Dispose() => json.Dispose();

    private void Cell(ValueKind kind, JsonEncodedText name, string? cell)
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
