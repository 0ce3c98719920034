using System.Globalization;
using System.Text;
using Ohmstead.Assessment.Boards;
using Ohmstead.Collections;
using Ohmstead.Electronics;
using Ohmstead.Records.Shapes;

namespace Ohmstead.Publishing;

/// <summary>Writes the tables while boards are read, in order of path whatever worker is first: of the rows nothing is kept.</summary>
internal sealed class DataFiles : IDisposable
{
    /// <summary>Everything in one file.</summary>
    public const string JsonName = "data.json";

    /// <summary>The schema of that file.</summary>
    public const string SchemaName = "report-data";

    private readonly Lock gate = new();
    private readonly Dictionary<string, int> places;
    private readonly SortedDictionary<int, TableBytes[]> early = [];
    private readonly ReportFolder folder;
    private readonly TableFile[] tables;
    private int next;

    /// <summary>Starts the files.</summary>
    /// <param name="folder">Where to.</param>
    /// <param name="boards">The paths of all boards in their order.</param>
    public DataFiles(ReportFolder folder, IEnumerable<string> boards)
    {
        this.folder = folder;
        places = boards.Index().ToDictionary(pair => pair.Item, pair => pair.Index, StringComparer.Ordinal);
        tables = [.. DataShapes.All.Select(table => new TableFile(folder, table.Name, table.Row))];
    }

    /// <summary>The CSV file of a table, from the root of the report.</summary>
    public static string CsvName(string table) => table + ".csv";

    /// <summary>Takes the rows of a board. Called from several workers.</summary>
    public void Add(BoardAssessment board)
    {
        TableBytes[] rows = [TableBytes.Of(DataShapes.Parts, DataRows.Parts(board)), TableBytes.Of(DataShapes.Readings, DataRows.Readings(board)), TableBytes.Of(DataShapes.Bench, DataRows.Bench(board))];
        lock (gate)
        {
            early[places[board.Board.Path]] = rows;
            while (early.Remove(next, out var ready))
            {
                Write(ready);
                next++;
            }
        }
    }

    /// <summary>Writes the other tables and puts all files by.</summary>
    public void Finish(RunResult result, DateOnly today)
    {
        // A board that could not be read left a gap; those behind it waited.
        foreach (var rows in early.Values)
        {
            Write(rows);
        }

        var designs = result.Workshop.Designs;
        Table(DataShapes.Boards).Write(TableBytes.Of(DataShapes.Boards, result.Boards.Select(board => DataRows.Board(board, board.Maker ?? (board.Design is { } name ? designs.GetValueOrDefault(name)?.Maker?.Value : null)))));
        Table(DataShapes.Designs).Write(TableBytes.Of(DataShapes.Designs, DataRows.Designs(result)));
        Table(DataShapes.Lots).Write(TableBytes.Of(DataShapes.Lots, DataRows.Lots(result)));
        Table(DataShapes.Findings).Write(TableBytes.Of(DataShapes.Findings, DataRows.Findings(result.Findings)));
        var json = folder.Start(JsonName);
        Text(json, string.Create(CultureInfo.InvariantCulture, $"{{\"version\":1,\"collection\":{DataForm.Quoted(result.Workshop.Collection.Name)},\"as_of\":\"{IsoDate.Text(today)}\""));
        foreach (var table in tables)
        {
            Text(json, $",\n\"{table.Name}\":[\n");
            table.Finish(json);
            Text(json, "]");
        }

        Text(json, "}\n");
        folder.Put(JsonName, json);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        foreach (var table in tables)
        {
            table.Dispose();
        }
    }

    private TableFile Table(Shape row) => tables.Single(table => ReferenceEquals(table.Row, row));

    private void Write(TableBytes[] rows)
    {
        Table(DataShapes.Parts).Write(rows[0]);
        Table(DataShapes.Readings).Write(rows[1]);
        Table(DataShapes.Bench).Write(rows[2]);
    }

    private static void Text(Stream target, string text) => target.Write(Encoding.UTF8.GetBytes(text));
}
