using Ohmstead.Report.Html;

namespace Ohmstead.Report.Frame;

/// <summary>A column of a table: its heading, and what stands under it in each row.</summary>
/// <remarks>A heading among headings heads its column, and one that begins a row heads the row: HTML says so, and no cell has to.</remarks>
internal sealed class Column<TRow>
{
    private readonly Action<HtmlWriter, TRow> content;

    /// <summary>A column of anything.</summary>
    /// <param name="heading">Its heading.</param>
    /// <param name="content">Writes what stands in the cell of a row.</param>
    public Column(string heading, Action<HtmlWriter, TRow> content) => (Heading, this.content) = (heading, content);

    /// <summary>A column of words; null is an empty cell.</summary>
    /// <param name="heading">Its heading.</param>
    /// <param name="words">The words in the cell of a row.</param>
    public Column(string heading, Func<TRow, string?> words)
        : this(heading, (html, row) => html.Text(words(row))) { }

    /// <summary>A column of counts, which stand to the right.</summary>
    /// <param name="heading">Its heading.</param>
    /// <param name="count">The count in the cell of a row.</param>
    public Column(string heading, Func<TRow, int> count)
        : this(heading, (html, row) => html.Text(count(row))) => IsNumber = true;

    /// <summary>What heads it.</summary>
    public string Heading { get; }

    /// <summary>True when it holds numbers of one unit: they stand to the right.</summary>
    public bool IsNumber { get; init; }

    /// <summary>True when it holds words that are never broken over lines. A day and a name with a hyphen are not anyway.</summary>
    public bool IsShort { get; init; }

    /// <summary>True when its cells explain themselves and need no name before them where the table is too narrow for columns.</summary>
    public bool IsPlain { get; init; }

    /// <summary>The number by which the rows are sorted where the words of the cells do not sort as they should; or null.</summary>
    public Func<TRow, int>? Order { get; init; }

    /// <summary>Writes the cell that heads the column.</summary>
    public void WriteHeading(HtmlWriter html)
    {
        var cell = html.Open(Tag.Th);
        (IsNumber ? cell.With(ClassName.Number) : cell).Text(Heading);
    }

    /// <summary>Writes the cell of a row.</summary>
    /// <param name="html">The page.</param>
    /// <param name="row">The row.</param>
    /// <param name="isHead">True for the cell that heads its row.</param>
    public void WriteCell(HtmlWriter html, TRow row, bool isHead)
    {
        var cell = isHead ? Head(html) : Body(html);
        if (Order is not null)
        {
            cell.With(NumberAttribute.Order, Order(row));
        }

        content(html, row);
        cell.Close();
    }

    private Element Head(HtmlWriter html)
    {
        var cell = html.Open(Tag.Th);
        return IsShort ? cell.With(ClassName.Short) : cell;
    }

    private Element Body(HtmlWriter html)
    {
        var cell = html.Open(Tag.Td);
        if (IsNumber)
        {
            cell.With(ClassName.Number);
        }
        else if (IsShort)
        {
            cell.With(ClassName.Short);
        }

        return IsPlain ? cell : cell.With(TextAttribute.Column, Heading);
    }
}
