using Ohmstead.Output;
using Ohmstead.Publishing.Tables;

namespace Ohmstead.Publishing;

/// <summary>The rows of a board, each written as JSON into the board's file and as CSV for the tables of the collection. A worker has its
/// own and uses it again.</summary>
internal sealed class BoardRows : IRowTaker, IDisposable
{
    private readonly BoardJson json;
    private int cellsOfCsv;

    /// <summary>Empty.</summary>
    /// <param name="target">Whose files they become.</param>
    public BoardRows(ReportFolder target)
    {
        Json = new(target);
        Csv = new(target);
        json = new(Json.Buffer);
    }

    /// <summary>The file of the board.</summary>
    public Draft Json { get; }

    /// <summary>The lines of the table that was started last.</summary>
    public Draft Csv { get; }

    /// <summary>Starts the file of a board.</summary>
    public void Begin(string board) => json.Begin(board);

    /// <summary>Starts a table.</summary>
    /// <param name="table">As the file of the board tells it.</param>
    /// <param name="columnsOfCsv">How many of the cells of a row the table of the collection has.</param>
    public void Start(BoardTable table, int columnsOfCsv)
    {
        Csv.Buffer.Clear();
        cellsOfCsv = columnsOfCsv;
        json.Start(table);
    }

    /// <inheritdoc/>
    public void Take(params ReadOnlySpan<string?> cells)
    {
        json.Take(cells);
        CsvRows.Append(Csv.Buffer, cells[..cellsOfCsv]);
    }

    /// <summary>Ends the table.</summary>
    public void End() => json.End();

    /// <summary>Ends the file of the board.</summary>
    public void Finish() => json.Finish();

    /// <inheritdoc/>
    public void Dispose()
    {
        json.Dispose();
        Json.Dispose();
        Csv.Dispose();
    }
}
