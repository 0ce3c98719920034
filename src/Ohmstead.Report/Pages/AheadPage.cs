using System.Globalization;
using Ohmstead.Assessment.Ahead;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;
using Ohmstead.Report.Tables;

namespace Ohmstead.Report.Pages;

/// <summary>The page of the year ahead: what is overdue, then what falls due, the nearest first.</summary>
public static class AheadPage
{
    private const int MostRows = 100;

    /// <summary>The calendar beside it.</summary>
    public const string CalendarName = "ahead.ics";

    /// <summary>Writes the page.</summary>
    /// <param name="buffer">Where to.</param>
    /// <param name="context">What every page knows.</param>
    /// <param name="items">What falls due, in order of date.</param>
    /// <param name="until">The last day that was looked at.</param>
    public static void Write(PageBuffer buffer, ReportContext context, IReadOnlyList<DueItem> items, DateOnly until) =>
        PageFrame.Write(
            buffer,
            context,
            new(SiteAddress.Ahead, "The year ahead", Lead(context, items, until)),
            (context, items, until),
            static (html, page) => Content(html, page.context, page.items, page.until)
        );

    private static string Lead(ReportContext context, IReadOnlyList<DueItem> items, DateOnly until)
    {
        var (overdue, coming) = Parted(context, items);
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{coming.Length} {(coming.Length == 1 ? "date" : "dates")} from {context.Today:yyyy-MM-dd} to {until:yyyy-MM-dd}, "
                + $"{overdue.Length} overdue."
        );
    }

    /// <summary>Writes the pages on which its tables go on.</summary>
    public static void WriteRest(IReportFiles files, ReportContext context, IReadOnlyList<DueItem> items)
    {
        var (overdue, coming) = Parted(context, items);
        var tables = new AheadTable(context);
        tables.Overdue.WritePages(files, context, overdue, MostRows);
        tables.Coming.WritePages(files, context, coming, MostRows);
    }

    private static (DueItem[] Overdue, DueItem[] Coming) Parted(ReportContext context, IReadOnlyList<DueItem> items) =>
        ([.. items.Where(item => item.IsOverdueOn(context.Today))], [.. items.Where(item => !item.IsOverdueOn(context.Today))]);

    private static void Content(HtmlWriter html, ReportContext context, IReadOnlyList<DueItem> items, DateOnly until)
    {
        var (overdue, coming) = Parted(context, items);
        using (html.Open(Tag.Header, ClassName.Opening))
        {
            html.Open(Tag.H1).Text("The year ahead");
            using var content = html.Open(Tag.Div, ClassName.Content);
            html.Open(Tag.P, ClassName.Lead).Text(Lead(context, items, until));
            using var link = html.Open(Tag.P);
            html.Text("The same for a calendar: ");
            html.Open(Tag.A).To(LocalLink.ToFile(CalendarName)).Text(CalendarName);
        }

        var tables = new AheadTable(context);
        Dates(html, "overdue", tables.Overdue, overdue);
        Dates(html, "coming", tables.Coming, coming);
    }

    private static void Dates(HtmlWriter html, string id, LongTable<DueItem> table, DueItem[] items)
    {
        if (items.Length == 0)
        {
            return;
        }

        using var section = Section.Open(
            html,
            id,
            table.Heading,
            items.Length == 1 ? null : string.Create(CultureInfo.InvariantCulture, $"{items.Length} dates")
        );
        table.WriteStart(html, items, MostRows);
    }
}
