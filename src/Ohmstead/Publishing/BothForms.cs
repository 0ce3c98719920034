using Ohmstead.Output;
using Ohmstead.Publishing.Tables;
using Ohmstead.Report.Html;

namespace Ohmstead.Publishing;

/// <summary>Writes each row as a JSON object and as a line of CSV.</summary>
/// <param name="objects">Where the objects go.</param>
/// <param name="lines">Where the lines go.</param>
internal sealed class BothForms(JsonRows objects, PageBuffer lines) : IRowTaker
{
    /// <summary>Starts a table.</summary>
    public void Start(DataTable table) => objects.Start(table);

    /// <inheritdoc/>
    public void Take(params ReadOnlySpan<string?> cells)
    {
        objects.Take(cells);
        CsvRows.Append(lines, cells);
    }

    /// <summary>Ends it.</summary>
    public void End() => objects.End();
}
