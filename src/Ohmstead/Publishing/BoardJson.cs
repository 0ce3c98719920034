using System.Globalization;
using System.Text;
using Ohmstead.Electronics.Decimals;
using Ohmstead.Publishing.Tables;
using Ohmstead.Report.Html;

namespace Ohmstead.Publishing;

/// <summary>
/// Writes the tables of a board: columns are named once, a row is an array, and what many rows say together stands once in a table under
/// <c>shared</c>. A column that has the name of such a table holds numbers of its rows, from zero; nothing else in the file is a number
/// of a row. Where one thing alone is told once, its table is a list. A worker has its own and uses it again.
/// </summary>
/// <param name="bytes">Where to.</param>
internal sealed class BoardJson(PageBuffer bytes) : IRowTaker, IDisposable
{
    /// <summary>The version of this form. The one before had a mapping for each row.</summary>
    public const string Version = "4";

    // Written in order of their names, so that the order of columns may change.
    private readonly SortedDictionary<string, SharedRows> shared = new(StringComparer.Ordinal);
    private readonly StringBuilder together = new();
    private BoardTable table = DataShapes.OfOneBoard[0];
    private bool isFirst;

    /// <summary>Starts the file of a board.</summary>
    public void Begin(string board)
    {
        bytes.Clear();
        foreach (var rows in shared.Values)
        {
            rows.Clear();
        }

        bytes.Append("{\"version\":"u8);
        Ascii(Version);
        bytes.Append(",\"board\":"u8);
        JsonCell.Text(bytes, board);
    }

    /// <summary>Starts a table.</summary>
    public void Start(BoardTable next)
    {
        table = next;
        isFirst = true;
        bytes.Append(",\n"u8);
        Head(next.Name, next.Columns.Select(column => column.Name));
    }

    /// <inheritdoc/>
    public void Take(params ReadOnlySpan<string?> cells)
    {
        bytes.Append(isFirst ? "\n["u8 : ",\n["u8);
        isFirst = false;
        var absent = 0;
        var written = 0;
        for (var at = 0; at < table.Columns.Count; at++)
        {
            var places = table.Places[at];
            if (!IsThere(cells, places))
            {
                absent++;
                continue;
            }

            // What is absent is written only where something stands behind it.
            for (; absent > 0; absent--)
            {
                bytes.Append(written++ == 0 ? "null"u8 : ",null"u8);
            }

            bytes.Append(written++ == 0 ? ""u8 : ","u8);
            if (table.Columns[at].IsOnce)
            {
                Ascii(DecimalText.Format(NumberOf(table.Columns[at], cells, places)));
            }
            else
            {
                JsonCell.AppendShort(bytes, table.Keys[places[0]].Kind, cells[places[0]]!);
            }
        }

        bytes.Append("]"u8);
    }

    /// <summary>Ends the table.</summary>
    public void End() => bytes.Append("]}"u8);

    /// <summary>Writes what was told once and ends the file.</summary>
    public void Finish()
    {
        bytes.Append(",\n\"shared\":{"u8);
        var comma = ""u8;
        foreach (var (name, rows) in shared)
        {
            // A board before this one had something to say once.
            if (rows.Numbers.Count == 0)
            {
                continue;
            }

            bytes.Append(comma);
            comma = ","u8;
            bytes.Append("\n"u8);
            if (rows.IsList)
            {
                JsonCell.Text(bytes, name);
                bytes.Append(":["u8);
                bytes.Append(rows.Written.Written);
                bytes.Append("]"u8);
                continue;
            }

            Head(name, rows.Column.Keys);
            bytes.Append(rows.Written.Written);
            bytes.Append("]}"u8);
        }

        bytes.Append("}}\n"u8);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        foreach (var rows in shared.Values)
        {
            rows.Written.Dispose();
        }
    }

    private static bool IsThere(ReadOnlySpan<string?> cells, int[] places)
    {
        foreach (var place in places)
        {
            if (JsonCell.IsThere(cells[place]))
            {
                return true;
            }
        }

        return false;
    }

    private int NumberOf(BoardColumn column, ReadOnlySpan<string?> cells, int[] places)
    {
        if (!shared.TryGetValue(column.Name, out var rows))
        {
            shared[column.Name] = rows = new(column);
        }

        var said = cells[places[0]];
        if (places.Length > 1)
        {
            // Each with its length before it: cells hold any character, and no two rows may look alike.
            together.Clear();
            foreach (var place in places)
            {
                together.Append(CultureInfo.InvariantCulture, $"{cells[place]?.Length ?? -1}:{cells[place]}");
            }

            said = together.ToString();
        }

        if (!rows.Numbers.TryGetValue(said!, out var number))
        {
            number = rows.Numbers.Count;
            rows.Numbers.Add(said!, number);
            rows.Add(table, cells, places);
        }

        return number;
    }

    private void Head(string name, IEnumerable<string> columns)
    {
        JsonCell.Text(bytes, name);
        bytes.Append(":{\"columns\":["u8);
        var comma = ""u8;
        foreach (var column in columns)
        {
            bytes.Append(comma);
            comma = ","u8;
            JsonCell.Text(bytes, column);
        }

        bytes.Append("],\"rows\":["u8);
    }

    private void Ascii(string text) => Encoding.ASCII.GetBytes(text, bytes);

    // What stands once, as far as it was told.
    private sealed class SharedRows(BoardColumn column)
    {
        public BoardColumn Column => column;

        public bool IsList => column.Keys.Count == 1;

        public Dictionary<string, int> Numbers { get; } = new(StringComparer.Ordinal);

        public PageBuffer Written { get; } = new();

        public void Clear()
        {
            Numbers.Clear();
            Written.Clear();
        }

        public void Add(BoardTable table, ReadOnlySpan<string?> cells, int[] places)
        {
            Written.Append(Numbers.Count == 1 ? "\n"u8 : ",\n"u8);
            if (IsList)
            {
                JsonCell.AppendShort(Written, table.Keys[places[0]].Kind, cells[places[0]]!);
                return;
            }

            Written.Append("["u8);
            var last = places.Length - 1;
            while (!JsonCell.IsThere(cells[places[last]]))
            {
                last--;
            }

            for (var at = 0; at <= last; at++)
            {
                Written.Append(at == 0 ? ""u8 : ","u8);
                if (cells[places[at]] is { } cell && JsonCell.IsThere(cell))
                {
                    JsonCell.AppendShort(Written, table.Keys[places[at]].Kind, cell);
                }
                else
                {
                    Written.Append("null"u8);
                }
            }

            Written.Append("]"u8);
        }
    }
}
