using System.Globalization;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Drawings;

/// <summary>A life on the calendar: a line while nothing is expected of it, a room in which it may be used up, a stroke for today. All bars
/// of a table share one scale, and the row of each holds its dates.</summary>
internal static class LifeBar
{
    private const decimal Wide = 180m;

    /// <summary>The scale of a table.</summary>
    /// <param name="first">The first day of all lives.</param>
    /// <param name="last">The last day of all, today included.</param>
    public static TimeScale Scale(DateOnly first, DateOnly last) => new(first, last, 0m, Wide);

    /// <summary>Writes a bar.</summary>
    /// <param name="html">Where to.</param>
    /// <param name="scale">The scale of the table.</param>
    /// <param name="place">The place of the part.</param>
    /// <param name="start">The first day of its use.</param>
    /// <param name="earliest">The earliest day on which it may be used up.</param>
    /// <param name="latest">The latest.</param>
    /// <param name="today">The day of the report.</param>
    public static void Write(
        HtmlWriter html,
        TimeScale scale,
        string place,
        DateOnly start,
        DateOnly earliest,
        DateOnly latest,
        DateOnly today
    )
    {
        using var bar = html.Open(Tag.Svg, ClassName.Bar).With(TextAttribute.ViewBox, "0 0 180 12").With(FixedAttribute.RoleImage);
        html.Open(Tag.Title)
            .Text($"{place}: {(today > latest ? "past" : today > earliest ? "within" : "before")} the days on which it may be used up");
        var (from, early, late, now) = (scale.At(start), scale.At(earliest), scale.At(latest), scale.At(today));
        Plot.Room(html, early, 1m, late, 11m);
        Plot.Strokes(html, string.Create(CultureInfo.InvariantCulture, $"M{from} 6H{early}M{early} 1v10M{late} 1v10"));
        Plot.Strokes(html, string.Create(CultureInfo.InvariantCulture, $"M{now} 0l-3 -4h6zV12"), ClassName.Full);
    }
}
