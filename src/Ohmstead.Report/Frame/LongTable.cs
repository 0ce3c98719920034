using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Frame;

/// <summary>A table that grows with the collection: its start stands on the page that is about it, and all of it on as many pages of its
/// own as keep each of them small.</summary>
/// <remarks>
/// The rows lie once more in a script of one assignment beside these pages, so that sorting and filtering go over all of them; it is loaded
/// when somebody asks for that. Rows are HTML made by <see cref="HtmlWriter"/>: what a record holds is as inert in them as on a page.
/// </remarks>
/// <param name="Path">The file of the first page without its ending, from the root of the report.</param>
/// <param name="Heading">What the table holds.</param>
/// <param name="Remark">In which order, and what else is to be said under the heading.</param>
/// <param name="Table">Its columns.</param>
/// <param name="RowsAPage">How many rows a page holds; a hundred kilobytes is the most for a page.</param>
/// <param name="Label">What a page is told by: the name or date in its first row.</param>
internal sealed record LongTable<T>(string Path, string Heading, string Remark, Ledger<T> Table, int RowsAPage, Func<T, string> Label)
{
    // Not written into a page but loaded as a file of script, where no character of a string can end it.
    private static readonly JsonWriterOptions Layout = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private int LevelsUp => Path.Count(c => c == '/');

    /// <summary>Writes what the rows show and is there once on a page, above the table; or null.</summary>
    public Action<HtmlWriter>? Above { get; init; }

    /// <summary>Writes what the rows lead to on their own page, below the table; or null.</summary>
    public Action<HtmlWriter>? Below { get; init; }

    /// <summary>The file in which a row stands when the table has pages of its own.</summary>
    public string PathOfRow(int row) => PathOf(row / RowsAPage);

    /// <summary>Writes the table, or its first rows and the way to all.</summary>
    /// <param name="html">The page.</param>
    /// <param name="items">All rows.</param>
    /// <param name="most">How many are written here.</param>
    public void WriteStart(HtmlWriter html, IReadOnlyList<T> items, int most)
    {
        Table.Write(html, Heading, items.Take(most));
        WriteRest(html, items.Count, most);
    }

    /// <summary>Writes the way to all rows, when there are more of them than stand here.</summary>
    /// <param name="html">The page.</param>
    /// <param name="count">How many there are.</param>
    /// <param name="most">More of them have pages of their own.</param>
    /// <param name="shown">How many are told here where it is not the first of them; null where it is.</param>
    public void WriteRest(HtmlWriter html, int count, int most, int? shown = null)
    {
        if (count > most)
        {
            using var line = html.Open(Tag.P);
            html.Text(
                shown == count ? string.Create(CultureInfo.InvariantCulture, $"All {count} are told here together; one by one: ")
                : shown is { } here ? string.Create(CultureInfo.InvariantCulture, $"{here} of {count} are told here: ")
                : string.Create(CultureInfo.InvariantCulture, $"The first {most} of {count}: ")
            );
            html.Open(Tag.A).To(LocalLink.ToFile(PathOf(0), LevelsUp)).Text($"{Heading}, all of them");
        }
    }

    /// <summary>Writes the pages of the table's own, when there are more rows than stand elsewhere.</summary>
    /// <param name="files">Where to.</param>
    /// <param name="context">What every page knows.</param>
    /// <param name="items">All rows.</param>
    /// <param name="most">How many rows stand on the page that is about the table.</param>
    public void WritePages(IReportFiles files, ReportContext context, IReadOnlyList<T> items, int most)
    {
        if (items.Count <= most)
        {
            return;
        }

        using var rows = new PageBuffer();
        using var buffer = new PageBuffer();
        using var script = files.Start(Path + Suffix);
        script.Write("globalThis.ohmsteadRows = ["u8);
        var labels = Enumerable.Range(0, PageCount(items.Count)).Select(page => Label(items[page * RowsAPage])).ToArray();
        var ends = new List<int>();
        for (var page = 0; page < labels.Length; page++)
        {
            // A page at a time: the memory that this takes does not grow with the table.
            rows.Clear();
            ends.Clear();
            var html = new HtmlWriter(rows);
            foreach (var item in items.Skip(page * RowsAPage).Take(RowsAPage))
            {
                Table.WriteRow(html, item);
                ends.Add(rows.Written.Length);
            }

            var title =
                labels.Length == 1
                    ? Heading
                    : string.Create(CultureInfo.InvariantCulture, $"{Heading}, page {page + 1} of {labels.Length}");
            PageFrame.Write(
                buffer,
                context,
                new(PathOf(page), title, Lead(labels, items.Count)),
                (Table: this, labels, page, items.Count, Rows: rows.WrittenMemory),
                static (html, page) => page.Table.Content(html, page.labels, page.page, page.Count, page.Rows.Span)
            );
            files.Put(PathOf(page), buffer.Written);
            Script(buffer, rows.Written, ends, page == 0);
            script.Write(buffer.Written);
        }

        script.Write("];\n"u8);
        files.Put(Path + Suffix, script);
    }

    private const string Suffix = ".rows.js";

    private int PageCount(int rows) => (rows + RowsAPage - 1) / RowsAPage;

    private string PathOf(int page) => TablePages.PathOf(Path, page);

    private string Lead(string[] labels, int count) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{count} in all{(labels.Length == 1 ? string.Empty : $", on {labels.Length} pages")}; {Remark}."
        );

    private void Content(HtmlWriter html, string[] labels, int page, int count, ReadOnlySpan<byte> rows)
    {
        Above?.Invoke(html);
        using (html.Open(Tag.Header, ClassName.Opening))
        {
            html.Open(Tag.H1).Text(Heading);
            using var content = html.Open(Tag.Div, ClassName.Content);
            html.Open(Tag.P, ClassName.Lead).Text(Lead(labels, count));
        }

        TablePages.Links(html, Path, $"Pages of {Heading}, above", labels, page);
        Table.WriteWritten(html, Heading, rows, Path[(Path.LastIndexOf('/') + 1)..] + Suffix);
        TablePages.Links(html, Path, $"Pages of {Heading}, below", labels, page);
        Below?.Invoke(html);
    }

    // Each row as a string of the list.
    private static void Script(PageBuffer buffer, ReadOnlySpan<byte> rows, List<int> ends, bool isFirst)
    {
        buffer.Clear();
        using var json = new Utf8JsonWriter(buffer, Layout);
        var from = 0;
        foreach (var end in ends)
        {
            buffer.Append(isFirst && from == 0 ? "\n"u8 : ",\n"u8);
            json.Reset();
            json.WriteStringValue(rows[from..end]);
            json.Flush();
            from = end;
        }
    }
}
