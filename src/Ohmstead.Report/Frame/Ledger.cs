using Ohmstead.Report.Html;

namespace Ohmstead.Report.Frame;

/// <summary>A table whose cells carry the name of their column, so that a narrow screen can show every cell on a line of its own.</summary>
/// <param name="columns">Its columns, in order; the first one heads the rows.</param>
internal sealed class Ledger<TRow>(params Column<TRow>[] columns)
{
    /// <summary>What a row is found by on its page; or null.</summary>
    public Func<TRow, ElementId?>? Anchor { get; init; }

    /// <summary>True for a table that is narrow enough to stay one on every screen.</summary>
    public bool IsCompact { get; init; }

    /// <summary>Writes the table.</summary>
    /// <param name="html">The page.</param>
    /// <param name="name">What it holds, for those who do not see it.</param>
    /// <param name="rows">Its rows.</param>
    public void Write(HtmlWriter html, string name, IEnumerable<TRow> rows)
    {
        using var table = Open(html, name);
        using var body = html.Open(Tag.TBody);
        foreach (var row in rows)
        {
            WriteRow(html, row);
        }
    }

    /// <summary>Writes the table with its rows in groups, each under a line of its own.</summary>
    /// <param name="html">The page.</param>
    /// <param name="name">What it holds, for those who do not see it.</param>
    /// <param name="groups">The groups, in order.</param>
    /// <param name="head">Writes what the rows of a group have in common.</param>
    public void WriteGroups<TKey>(HtmlWriter html, string name, IEnumerable<IGrouping<TKey, TRow>> groups, Action<HtmlWriter, TKey> head)
    {
        using var table = Open(html, name);
        foreach (var group in groups)
        {
            using var body = html.Open(Tag.TBody);
            using (html.Open(Tag.Tr))
            {
                using var cell = html.Open(Tag.Th).With(FixedAttribute.ScopeRowGroup).With(NumberAttribute.ColSpan, columns.Length);
                head(html, group.Key);
            }

            foreach (var row in group)
            {
                WriteRow(html, row);
            }
        }
    }

    /// <summary>Writes the table with rows that were written before.</summary>
    /// <param name="html">The page.</param>
    /// <param name="name">What it holds, for those who do not see it.</param>
    /// <param name="rows">What <see cref="WriteRow"/> wrote.</param>
    /// <param name="all">The file that holds all rows, when more than these are there.</param>
    public void WriteWritten(HtmlWriter html, string name, ReadOnlySpan<byte> rows, string all)
    {
        using var table = Open(html, name, all);
        using var body = html.Open(Tag.TBody);
        html.Unescaped(rows);
    }

    /// <summary>Writes one row.</summary>
    public void WriteRow(HtmlWriter html, TRow row)
    {
        var line = html.Open(Tag.Tr);
        if (Anchor?.Invoke(row) is { } anchor)
        {
            line.With(anchor);
        }

        for (var at = 0; at < columns.Length; at++)
        {
            columns[at].WriteCell(html, row, isHead: at == 0);
        }

        line.Close();
    }

    private Element Open(HtmlWriter html, string name, string? all = null)
    {
        var table = html.Open(Tag.Table, IsCompact ? ClassName.Compact : ClassName.Ledger).With(TextAttribute.AriaLabel, name);
        if (all is not null)
        {
            table.With(TextAttribute.Rows, all);
        }

        using (html.Open(Tag.THead))
        {
            using var row = html.Open(Tag.Tr);
            foreach (var column in columns)
            {
                column.WriteHeading(html);
            }
        }

        return table;
    }
}
