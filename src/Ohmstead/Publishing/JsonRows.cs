using System.Text;
using Ohmstead.Publishing.Tables;
using Ohmstead.Records.Shapes;
using Ohmstead.Report.Html;

namespace Ohmstead.Publishing;

/// <summary>Writes rows as JSON objects, a line for each, with commas between; absent cells are left out.</summary>
/// <param name="bytes">Where to.</param>
internal sealed class JsonRows(PageBuffer bytes) : IRowTaker
{
    // What the escapes of these files leave as it is: nearly every cell, which then is looked at once.
    private static readonly PlainCharacters Plain = new(c => !DataForm.Escapes.WillEncode(c));

    private DataTable table;
    private bool isFirst;

    /// <summary>Starts the array of a table.</summary>
    public void Start(DataTable next)
    {
        table = next;
        isFirst = true;
        bytes.Append("["u8);
    }

    /// <inheritdoc/>
    public void Take(params ReadOnlySpan<string?> cells)
    {
        bytes.Append(isFirst ? "\n{"u8 : ",\n{"u8);
        isFirst = false;
        var comma = ReadOnlySpan<byte>.Empty;
        for (var key = 0; key < table.Names.Length; key++)
        {
            if (cells[key + table.Skipped] is { } cell && !string.IsNullOrWhiteSpace(cell))
            {
                bytes.Append(comma);
                comma = ","u8;
                bytes.Append(table.Names[key]);
                Cell(table.Row.Keys[key].Kind, cell);
            }
        }

        bytes.Append("}"u8);
    }

    /// <summary>Ends the array.</summary>
    public void End() => bytes.Append("]"u8);

    private void Cell(ValueKind kind, string cell)
    {
        if (kind is ValueKind.Count or ValueKind.Number)
        {
            // Written by this program a moment ago, as JSON wants it.
            Encoding.UTF8.GetBytes(cell, bytes);
            return;
        }

        bytes.Append("\""u8);
        var rest = cell.AsSpan();
        while ((rest = rest[bytes.AppendPlain(rest, Plain)..]).Length > 0)
        {
            rest = rest[Escaped(rest)..];
        }

        bytes.Append("\""u8);
    }

    // Escapes the character at the start and says how many UTF-16 units it took.
    private int Escaped(ReadOnlySpan<char> text)
    {
        const int longest = 16;
        Span<char> escape = stackalloc char[longest];
        DataForm.Escapes.Encode(
            text[..(char.IsHighSurrogate(text[0]) && text.Length > 1 && char.IsLowSurrogate(text[1]) ? 2 : 1)],
            escape,
            out var taken,
            out var length
        );
        Encoding.UTF8.GetBytes(escape[..length], bytes);
        return taken;
    }
}
