using Ohmstead.Assessment.Years;
using Ohmstead.Electronics;
using Ohmstead.Report.Drawings;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Pages;

/// <summary>The collection through the years: a drawing, and beside it the counts that it draws.</summary>
internal static class YearsSection
{
    private static readonly Ledger<PastPoint> Table = new(
        new("Until", point => IsoDate.Text(point.Day)) { IsShort = true },
        new("Boards", point => point.Boards),
        new("Fit to run", point => point.Fit),
        // Narrow enough for every screen; visits and readings are told by the command.
        new("Work", point => point.Work.Done)
    )
    {
        IsCompact = true,
    };

    /// <summary>Writes the section; nothing where there is no past to tell of.</summary>
    public static void Write(HtmlWriter html, IReadOnlyList<PastPoint> points)
    {
        if (points.Count < 2)
        {
            return;
        }

        using var section = Section.Open(
            html,
            "years",
            "Through the years",
            "by what had happened until each day and the rules of today; pieces of work since the line above"
        );
        using var figure = html.Open(Tag.Figure);
        FitOverYears.Write(html, points);
        Table.Write(html, "The collection through the years", points);
    }
}
