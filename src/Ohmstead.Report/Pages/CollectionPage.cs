using System.Globalization;
using Ohmstead.Assessment.Boards;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;
using Ohmstead.Report.Tables;

namespace Ohmstead.Report.Pages;

/// <summary>The page of the collection: what is fit to run, what is not and why, what to do next, what waits, what to buy. What grows
/// beyond it goes on on pages of its own.</summary>
public static class CollectionPage
{
    private const int MostWaits = 20;
    private const int MostKept = 15;
    private const int MostDesigns = 40;

    // A collection that one person knows by heart is listed whole on its first page.
    private const int MostBoards = 60;

    /// <summary>Writes the page.</summary>
    public static void Write(PageBuffer buffer, ReportContext context, IReadOnlyList<BoardSummary> boards) =>
        PageFrame.Write(
            buffer,
            context,
            new(SiteAddress.Collection, context.Workshop.Collection.Name, CollectionWords.Lead(boards, "board")),
            (context, tables: new CollectionTables(context, boards)),
            static (html, page) => Content(html, page.context, page.tables)
        );

    /// <summary>Writes the pages on which its tables go on.</summary>
    public static void WriteRest(IReportFiles files, ReportContext context, IReadOnlyList<BoardSummary> boards)
    {
        var tables = new CollectionTables(context, boards);
        tables.OfBoards.WritePages(files, context, boards, MostBoards);
        tables.OfNext.WritePages(files, context, tables.Open, ActTable.MostBoards);
        tables.OfWaits.WritePages(files, context, tables.Waits, MostWaits);
        tables.OfKept.WritePages(files, context, tables.Overruled, MostKept);
        tables.OfDesigns.WritePages(files, context, tables.Designs, MostDesigns);
    }

    private static void Content(HtmlWriter html, ReportContext context, CollectionTables tables)
    {
        var boards = tables.Boards;
        ActTable acts = new(context, tables);
        Opening(html, context, tables, acts);
        acts.Write(html);
        new AheadTable(context).WriteNext(html, boards);
        Start(html, "waits", tables.OfWaits, tables.Waits, MostWaits);
        BuyingTable.Write(html, context, boards, BuyingTable.MostOnCollection);
        Start(html, "overruled", tables.OfKept, tables.Overruled, MostKept);
        Boards(html, tables);
        Start(html, "designs", tables.OfDesigns, tables.Designs, MostDesigns);
        FamiliesPage.Mention(html, boards);
        YearsSection.Write(html, context.Past);
    }

    private static void Opening(HtmlWriter html, ReportContext context, CollectionTables tables, ActTable acts)
    {
        var collection = context.Workshop.Collection;
        using var opening = html.Open(Tag.Header, ClassName.Opening);
        html.Open(Tag.H1).Text(collection.Name);
        if (
            PageFrame.Joined(collection.Place?.Value, collection.Keeper is { } keeper ? "kept by " + keeper.Value : null) is
            { Length: > 0 } where
        )
        {
            html.Open(Tag.P, ClassName.Fine).Text(where);
        }

        using var content = html.Open(Tag.Div, ClassName.Content);
        html.Open(Tag.P, ClassName.Lead).Text(CollectionWords.Lead(tables.Boards, "board"));
        using (html.Open(Tag.P))
        {
            html.Open(Tag.A).To(LocalLink.ToFile(SiteAddress.CollectionSheet)).Text("The collection on one sheet");
        }

        ChangesPage.Mention(html, context);
        new StateTiles(tables, acts, MostBoards).Write(html);
    }

    // A part of the list would answer nothing: it is there whole or elsewhere.
    private static void Boards(HtmlWriter html, CollectionTables tables)
    {
        using var section = Section.Open(html, "boards", tables.OfBoards.Heading, tables.OfBoards.Remark);
        if (tables.Boards.Count <= MostBoards)
        {
            tables.OfBoards.WriteStart(html, tables.Boards, MostBoards);
            return;
        }

        using var line = html.Open(Tag.P);
        html.Open(Tag.A)
            .To(LocalLink.ToFile(tables.OfBoards.PathOfRow(0)))
            .Text(string.Create(CultureInfo.InvariantCulture, $"All {tables.Boards.Count} boards"));
        html.Text(", with state, design, readings and dates.");
    }

    private static void Start<T>(HtmlWriter html, string id, LongTable<T> table, IReadOnlyList<T> items, int most)
    {
        if (items.Count == 0)
        {
            return;
        }

        using var section = Section.Open(html, id, table.Heading, table.Remark);
        table.WriteStart(html, items, most);
    }
}
