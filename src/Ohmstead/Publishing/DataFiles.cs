using System.Text;
using Ohmstead.Assessment.Boards;
using Ohmstead.Collections;
using Ohmstead.Electronics;
using Ohmstead.Output;
using Ohmstead.Publishing.Tables;
using Ohmstead.Records.Schemas;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Html;

namespace Ohmstead.Publishing;

/// <summary>Writes the tables while boards are read, in order of path whatever worker is first: of the rows nothing is kept.</summary>
internal sealed class DataFiles : IDisposable
{
    /// <summary>The file of the collection.</summary>
    public const string JsonName = "data.json";

    /// <summary>The schema of that file.</summary>
    public const string SchemaName = "report-data";

    /// <summary>The schema of the file of a board.</summary>
    public const string BoardSchemaName = "report-board";

    private static readonly Action<JudgedBoard, IRowTaker>[] RowsOfEachBoard =
    [
        static (board, rows) => PartsTable.Columns.Write(PartsTable.Rows(board), rows),
        static (board, rows) => ReadingsTable.Columns.Write(ReadingsTable.Rows(board), rows),
        static (board, rows) => BenchTable.Columns.Write(BenchTable.Rows(board), rows),
        static (board, rows) => ObligationsTable.Columns.Write(ObligationsTable.Rows(board), rows),
    ];

    private readonly Lock gate = new();
    private readonly Dictionary<string, int> places;
    private readonly SortedDictionary<int, Drafted[]> early = [];
    private readonly ReportFolder folder;
    private readonly CsvFile[] tables;
    private int next;

    /// <summary>Starts the files.</summary>
    /// <param name="folder">Where to.</param>
    /// <param name="boards">The paths of all boards in their order.</param>
    public DataFiles(ReportFolder folder, IEnumerable<string> boards)
    {
        this.folder = folder;
        places = boards.Index().ToDictionary(pair => pair.Item, pair => pair.Index, StringComparer.Ordinal);
        tables = [.. DataShapes.OfEachBoard.Select(table => new CsvFile(folder, table.Name, table.Row))];
    }

    /// <summary>The CSV file of a table, from the root of the report.</summary>
    public static string CsvName(string table) => table + ".csv";

    /// <summary>Takes the rows of a board. Called from several workers.</summary>
    /// <param name="board">The board.</param>
    /// <param name="rows">Room for its rows, of the worker's own.</param>
    public void Add(JudgedBoard board, BoardRows rows)
    {
        var number = board.Board.Id.Value;
        rows.Begin(number);
        var lines = new Drafted[RowsOfEachBoard.Length];
        for (var i = 0; i < lines.Length; i++)
        {
            rows.Start(DataShapes.OfOneBoard[i], DataShapes.OfEachBoard[i].Row.Keys.Count);
            RowsOfEachBoard[i](board, rows);
            rows.End();
            lines[i] = rows.Csv.Taken();
        }

        rows.Finish();
        rows.Json.Put(SiteAddress.BoardData(number));
        lock (gate)
        {
            early[places[board.Board.Path]] = lines;
            while (early.Remove(next, out var ready))
            {
                Write(ready);
                next++;
            }
        }
    }

    /// <summary>Writes the other tables and puts all files by.</summary>
    /// <param name="result">The run.</param>
    /// <param name="today">The day that was taken for today.</param>
    /// <param name="draft">Room for the file of the collection.</param>
    public void Finish(RunResult result, DateOnly today, Draft draft)
    {
        // A board that could not be read left a gap; those behind it waited.
        foreach (var rows in early.Values)
        {
            Write(rows);
        }

        foreach (var table in tables)
        {
            table.Finish();
        }

        var json = draft.Buffer;
        json.Clear();
        Text(
            json,
            $"{{\"version\":2,\"collection\":{DataForm.Quoted(result.Workshop.Collection.Name)},\"as_of\":\"{IsoDate.Text(today)}\""
        );
        Action<IRowTaker>[] all =
        [
            rows => BoardsTable.Columns.Write(result.Boards.Select(board => (board, result.Workshop)), rows),
            rows => DesignsTable.Columns.Write(DesignsTable.Rows(result), rows),
            rows => LotsTable.Columns.Write(LotsTable.Rows(result, today), rows),
            rows => OrdersTable.Columns.Write(OrdersTable.Rows(result), rows),
            rows => FindingsTable.Columns.Write(result.Findings, rows),
            rows => KindsTable.Columns.Write(KindsTable.Rows(), rows),
        ];
        using var lines = new Draft(folder);
        var both = new BothForms(new(json), lines.Buffer);
        foreach (var ((name, row), write) in DataShapes.OfAll.Zip(all))
        {
            Text(json, $",\n\"{name}\":");
            lines.Buffer.Clear();
            CsvRows.Begin(lines.Buffer);
            DataForm.CsvHead(lines.Buffer, row);
            both.Start(DataTable.For(name, row));
            write(both);
            both.End();
            lines.Put(CsvName(name));
        }

        Text(json, "}\n");
        draft.Put(JsonName);
        folder.Put(SchemaFiles.FileName(SchemaName), Encoding.UTF8.GetBytes(SchemaFiles.Read(SchemaName)));
        folder.Put(SchemaFiles.FileName(BoardSchemaName), Encoding.UTF8.GetBytes(SchemaFiles.Read(BoardSchemaName)));
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        foreach (var table in tables)
        {
            table.Dispose();
        }
    }

    private void Write(Drafted[] rows)
    {
        for (var table = 0; table < tables.Length; table++)
        {
            tables[table].Write(rows[table]);
        }
    }

    private static void Text(PageBuffer target, string text) => Encoding.UTF8.GetBytes(text, target);
}
