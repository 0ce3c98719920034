using Ohmstead.Publishing.Tables;
using Ohmstead.Report.Html;

namespace Ohmstead.Publishing;

/// <summary>Writes rows as JSON objects, a line for each, with commas between; absent cells are left out.</summary>
/// <param name="bytes">Where to.</param>
internal sealed class JsonRows(PageBuffer bytes) : IRowTaker
{
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
            if (cells[key] is { } cell && JsonCell.IsThere(cell))
            {
                bytes.Append(comma);
                comma = ","u8;
                bytes.Append(table.Names[key]);
                JsonCell.Append(bytes, table.Row.Keys[key].Kind, cell);
            }
        }

        bytes.Append("}"u8);
    }

    /// <summary>Ends the array.</summary>
    public void End() => bytes.Append("]"u8);
}
