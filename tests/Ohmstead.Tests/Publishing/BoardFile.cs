using System.Text.Json;

namespace Ohmstead.Tests.Publishing;

/// <summary>The file of a board, read as its schema tells: by nothing that wrote it.</summary>
internal sealed class BoardFile
{
    private readonly JsonElement root;

    private BoardFile(JsonElement root) => this.root = root;

    /// <summary>Reads it.</summary>
    public static BoardFile Read(string text)
    {
        using var file = JsonDocument.Parse(text);
        return new(file.RootElement.Clone());
    }

    /// <summary>The rows of a table, each as what it says by key; a key is not there where there is nothing to say.</summary>
    public IEnumerable<Dictionary<string, JsonElement>> Rows(string table)
    {
        var shared = root.GetProperty("shared");
        var columns = Columns(root.GetProperty(table));
        foreach (var row in root.GetProperty(table).GetProperty("rows").EnumerateArray())
        {
            var said = new Dictionary<string, JsonElement>(StringComparer.Ordinal) { ["board"] = root.GetProperty("board") };
            foreach (var (column, cell) in columns.Zip(row.EnumerateArray()))
            {
                if (cell.ValueKind == JsonValueKind.Null)
                {
                    continue;
                }

                if (!shared.TryGetProperty(column, out var once))
                {
                    said.Add(column, cell);
                }
                else if (once.ValueKind == JsonValueKind.Array)
                {
                    said.Add(column, once[cell.GetInt32()]);
                }
                else
                {
                    foreach (var (name, one) in Columns(once).Zip(once.GetProperty("rows")[cell.GetInt32()].EnumerateArray()))
                    {
                        if (one.ValueKind != JsonValueKind.Null)
                        {
                            said.Add(name, one);
                        }
                    }
                }
            }

            yield return said;
        }
    }

    private static string[] Columns(JsonElement table) =>
        [.. table.GetProperty("columns").EnumerateArray().Select(column => column.GetString()!)];
}
