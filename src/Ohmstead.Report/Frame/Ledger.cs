using Ohmstead.Report.Html;

namespace Ohmstead.Report.Frame;

/// <summary>A column of a table.</summary>
/// <param name="Name">Its heading.</param>
/// <param name="IsNumber">True when it holds numbers of one unit: they stand to the right.</param>
/// <param name="IsShort">True when it holds dates or names that are never broken over lines.</param>
/// <param name="IsPlain">True when its cells explain themselves and need no name before them where the table is too narrow for
/// columns.</param>
internal readonly record struct Column(string Name, bool IsNumber = false, bool IsShort = false, bool IsPlain = false)
{
    /// <summary>A column of text.</summary>
    public static implicit operator Column(string name) => new(name);
}

/// <summary>A table whose cells carry the name of their column, so that a narrow screen can show every cell on a line of its own.</summary>
internal readonly ref struct Ledger
{
    private readonly HtmlWriter html;
    private readonly Column[] columns;
    private readonly Element table;

    private Ledger(HtmlWriter html, Column[] columns, Element table)
    {
        this.html = html;
        this.columns = columns;
        this.table = table;
    }

    /// <summary>Starts a table with its head row.</summary>
    /// <param name="html">The page.</param>
    /// <param name="name">What it holds, for those who do not see it.</param>
    /// <param name="columns">Its columns; the first one heads the rows.</param>
    /// <param name="isCompact">True for one that is narrow enough to stay a table on every screen.</param>
    /// <param name="rows">The file that holds all its rows, when more than these are there; or null.</param>
    public static Ledger Open(HtmlWriter html, string name, Column[] columns, bool isCompact = false, string? rows = null)
    {
        var whole = html.Open(Tag.Table, isCompact ? ClassName.Compact : ClassName.Ledger).With(TextAttribute.AriaLabel, name);
        if (rows is not null)
        {
            whole.With(TextAttribute.Rows, rows);
        }

        using (html.Open(Tag.THead))
        {
            using var row = html.Open(Tag.Tr);
            foreach (var column in columns)
            {
                var cell = html.Open(Tag.Th).With(FixedAttribute.ScopeColumn);
                if (column.IsNumber)
                {
                    cell.With(ClassName.Number);
                }

                cell.Text(column.Name);
            }
        }

        return new(html, columns, whole);
    }

    /// <summary>Rows that are put into their table later: never disposed of, since no table was opened.</summary>
    public static Ledger Rows(HtmlWriter html, Column[] columns) => new(html, columns, default);

    /// <summary>Starts the cell that heads a row.</summary>
    public Element Head()
    {
        var cell = html.Open(Tag.Th).With(FixedAttribute.ScopeRow);
        return columns[0].IsShort ? cell.With(ClassName.Short) : cell;
    }

    /// <summary>Starts a cell of a column, counted from 0.</summary>
    public Element Cell(int column)
    {
        var cell = html.Open(Tag.Td);
        if (columns[column].IsNumber)
        {
            cell.With(ClassName.Number);
        }
        else if (columns[column].IsShort)
        {
            cell.With(ClassName.Short);
        }

        return columns[column].IsPlain ? cell : cell.With(TextAttribute.Column, columns[column].Name);
    }

    /// <summary>Ends the table.</summary>
    public void Dispose() => table.Dispose();
}
