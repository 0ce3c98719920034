using Ohmstead.Report.Html;

namespace Ohmstead.Report.Sheets;

/// <summary>A table of a bench sheet. Its heads come again on every page, and with them the number of the board.</summary>
internal readonly ref struct SheetTable
{
    private readonly Element table;

    private SheetTable(Element table) => this.table = table;

    /// <summary>Starts a table with its head row.</summary>
    public static SheetTable Open(HtmlWriter html, string board, string heading, params ReadOnlySpan<string> columns)
    {
        html.Open(Tag.H2).Text(heading);
        var whole = html.Open(Tag.Table).With(TextAttribute.AriaLabel, heading);
        using var head = html.Open(Tag.THead);
        using var row = html.Open(Tag.Tr);
        for (var i = 0; i < columns.Length; i++)
        {
            html.Open(Tag.Th).With(FixedAttribute.ScopeColumn).Text(i == 0 ? $"{board} {columns[i]}" : columns[i]);
        }

        return new(whole);
    }

    /// <summary>Ends it.</summary>
    public void Dispose() => table.Dispose();
}
