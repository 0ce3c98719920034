using Ohmstead.Records.Shapes;

namespace Ohmstead.Publishing.Tables;

/// <summary>A column of a table for programs: its key, and what stands under it in a row; null where there is nothing to say.</summary>
internal sealed record DataColumn<TRow>(Key Key, Func<TRow, string?> Cell);

/// <summary>The columns of a table for programs. The JSON files, the CSV file and the published schemas all follow them, so they cannot
/// disagree.</summary>
/// <param name="name">What a row is called in the schema.</param>
/// <param name="description">What a row holds.</param>
/// <param name="example">A row, for the schema.</param>
/// <param name="columns">The columns, in order.</param>
internal sealed class DataColumns<TRow>(string name, string description, string example, params DataColumn<TRow>[] columns)
{
    private readonly DataColumn<TRow>[] all = columns;

    /// <summary>What a row holds.</summary>
    public Shape Row { get; } = new(name, description, example, [.. columns.Select(column => column.Key)]);

    /// <summary>Columns behind the others that the file of a board has alone: what is the same in most rows is told once there, and in a
    /// table of the collection a million times.</summary>
    public DataColumn<TRow>[] OfOneBoard
    {
        get => all[Row.Keys.Count..];
        init => all = [.. all, .. value];
    }

    /// <summary>Writes rows, one after the other: of a large collection there are a million, so that none is kept.</summary>
    public void Write(IEnumerable<TRow> rows, IRowTaker taker)
    {
        var cells = new string?[all.Length];
        foreach (var row in rows)
        {
            Fill(cells, row);
            taker.Take(cells);
        }
    }

    /// <summary>The cells of one row.</summary>
    public string?[] Cells(TRow row)
    {
        var cells = new string?[all.Length];
        Fill(cells, row);
        return cells;
    }

    private void Fill(string?[] cells, TRow row)
    {
        for (var at = 0; at < all.Length; at++)
        {
            cells[at] = all[at].Cell(row);
        }
    }
}
