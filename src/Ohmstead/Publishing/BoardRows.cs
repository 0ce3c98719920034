using Ohmstead.Publishing.Tables;

namespace Ohmstead.Publishing;

/// <summary>The rows of a board, each written as JSON into the board's file and as CSV for the tables of the collection. A worker has its
/// own and uses it again.</summary>
internal sealed class BoardRows : IRowTaker, IDisposable
{
    private readonly BothForms both;

    /// <summary>Empty.</summary>
    /// <param name="target">Whose files they become.</param>
    public BoardRows(ReportFolder target)
    {
        Json = new(target);
        Csv = new(target);
        both = new(new(Json.Buffer), Csv.Buffer);
    }

    /// <summary>The file of the board.</summary>
    public Draft Json { get; }

    /// <summary>The lines of the table that was started last.</summary>
    public Draft Csv { get; }

    /// <summary>Starts a table.</summary>
    public void Start(DataTable table)
    {
        Csv.Buffer.Clear();
        both.Start(table);
    }

    /// <inheritdoc/>
    public void Take(params ReadOnlySpan<string?> cells) => both.Take(cells);

    /// <summary>Ends the table.</summary>
    public void End() => both.End();

    /// <inheritdoc/>
    public void Dispose()
    {
        Json.Dispose();
        Csv.Dispose();
    }
}
