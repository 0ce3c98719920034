using Ohmstead.Publishing.Tables;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Publishing;

/// <summary>A column of a table in the file of a board: a cell of its own, or the number of a row of another table in which what many rows
/// say together stands once.</summary>
/// <param name="Name">The column; where it is told once, the other table, too.</param>
/// <param name="Keys">What the cell says.</param>
/// <param name="IsOnce">Whether it is told once.</param>
internal sealed record BoardColumn(string Name, IReadOnlyList<string> Keys, bool IsOnce)
{
    /// <summary>A cell of its own.</summary>
    public static BoardColumn Own(string key) => new(key, [key], IsOnce: false);

    /// <summary>A number into a table of that key alone.</summary>
    public static BoardColumn Once(string key) => new(key, [key], IsOnce: true);

    /// <summary>A number into a table of several keys.</summary>
    public static BoardColumn Once(string name, params string[] keys) => new(name, keys, IsOnce: true);
}

/// <summary>A table in the file of a board.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Description">What a row tells.</param>
/// <param name="Columns">Its columns, in order.</param>
/// <param name="Keys">The keys of a row as it is handed over, the board's number among them.</param>
internal sealed record BoardTable(string Name, string Description, IReadOnlyList<BoardColumn> Columns, IReadOnlyList<Key> Keys)
{
    /// <summary>For each column the places of its cells in a row as it is handed over.</summary>
    public int[][] Places { get; } =
    [.. Columns.Select(column => column.Keys.Select(key => Keys.Index().First(pair => pair.Item.Name == key).Index).ToArray())];

    /// <summary>A table of such rows.</summary>
    public static BoardTable Of<TRow>(string name, DataColumns<TRow> rows, params BoardColumn[] columns) =>
        new(name, rows.Row.Description, columns, [.. rows.Row.Keys, .. rows.OfOneBoard.Select(column => column.Key)]);

    /// <summary>The key of that name.</summary>
    public Key KeyOf(string name) => Keys.First(key => key.Name == name);
}
