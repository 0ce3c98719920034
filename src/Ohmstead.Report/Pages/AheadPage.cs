using System.Globalization;
using Ohmstead.Assessment.Ahead;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Pages;

/// <summary>The page of the year ahead: what is overdue, then what falls due, the nearest first.</summary>
public static class AheadPage
{
    // A page that nobody can read to its end helps nobody; the calendar beside it holds everything.
    private const int MostRows = 2_000;

    /// <summary>The file, from the root of the report.</summary>
    public const string PathName = "ahead.html";

    /// <summary>The calendar beside it.</summary>
    public const string CalendarName = "ahead.ics";

    /// <summary>Writes the page.</summary>
    /// <param name="buffer">Where to.</param>
    /// <param name="context">What every page knows.</param>
    /// <param name="items">What falls due, in order of date.</param>
    /// <param name="until">The last day that was looked at.</param>
    public static void Write(PageBuffer buffer, ReportContext context, IReadOnlyList<DueItem> items, DateOnly until) =>
        PageFrame.Write(buffer, context, "The year ahead", 0, (context, items, until), static (html, page) => Content(html, page.context, page.items, page.until));

    private static void Content(HtmlWriter html, ReportContext context, IReadOnlyList<DueItem> items, DateOnly until)
    {
        DueItem[] overdue = [.. items.Where(item => item.IsOverdueOn(context.Today))];
        DueItem[] coming = [.. items.Where(item => !item.IsOverdueOn(context.Today))];
        using (html.Open(Tag.Header, ClassName.Opening))
        {
            html.Open(Tag.H1).Text("The year ahead");
            using var content = html.Open(Tag.Div, ClassName.Content);
            html.Open(Tag.P, ClassName.Lead).Text(string.Create(
                CultureInfo.InvariantCulture, $"{coming.Length} {(coming.Length == 1 ? "date" : "dates")} from {context.Today:yyyy-MM-dd} to {until:yyyy-MM-dd}, {overdue.Length} overdue."));
            using var link = html.Open(Tag.P);
            html.Text("The same for a calendar: ");
            html.Open(Tag.A).To(LocalLink.ToFile(CalendarName)).Text(CalendarName);
        }

        Section(html, context, "overdue", "Overdue", overdue);
        Section(html, context, "coming", "Coming", [.. coming.Take(Math.Max(0, MostRows - overdue.Length))]);

        if (items.Count > MostRows)
        {
            html.Open(Tag.P, ClassName.Fine).Text(string.Create(CultureInfo.InvariantCulture, $"and {items.Count - MostRows} more, all of them in the calendar"));
        }
    }

    private static void Section(HtmlWriter html, ReportContext context, string id, string heading, DueItem[] items)
    {
        if (items.Length == 0)
        {
            return;
        }

        using var entry = Entry.Open(html, id, heading, items.Length == 1 ? null : string.Create(CultureInfo.InvariantCulture, $"{items.Length} dates"));
        AheadTable.Write(html, context, heading, items.Take(MostRows));
    }
}
