using System.Globalization;
using Ohmstead.Assessment.Shelf;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Life;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Tables;

/// <summary>How old the parts of a lot are: what their date code says, how long they may lie, and how to form them again once that is
/// over.</summary>
internal static class LotAge
{
    /// <summary>Writes what is known.</summary>
    public static void Write(HtmlWriter html, LotStory lot, DateOnly today, SharedWorking working)
    {
        if (lot.Dates.Words is { } made)
        {
            html.Open(Tag.P, ClassName.Fine).Text($"made {made} (date code {lot.Lot.Values.DateCode!.Text})");
        }
        else if (lot.Dates.Fault is { } fault)
        {
            html.Open(Tag.P, ClassName.Fine).Text($"made: not known, {fault}");
        }

        if (lot.Shelf is { } shelf)
        {
            var isOver = shelf.IsOverOn(today);
            using var line = html.Open(Tag.P, ClassName.Fine);
            html.Text($"shelf life {shelf.LifeWords}, {shelf.SinceWords}: until {IsoDate.Text(shelf.Due)}");
            if (isOver)
            {
                html.Text(", ");
                html.Open(Tag.Strong).Text("over");
            }
        }

        Advice(html, lot, working);
        if (lot.Left > 0 && lot.Shelf is { } due && due.IsOverOn(today))
        {
            Forming(html, lot, working);
        }
    }

    private static void Advice(HtmlWriter html, LotStory lot, SharedWorking working)
    {
        if (lot.Ages.Count == 0)
        {
            return;
        }

        using var fold = html.Open(Tag.Details);
        html.Open(Tag.Summary).Text(string.Create(CultureInfo.InvariantCulture, $"{lot.Ages[0].Age.Years:0.0} years old"));
        using var list = html.Open(Tag.Ul);
        foreach (var (from, age) in lot.Ages)
        {
            html.Open(Tag.Li)
                .Text(string.Create(CultureInfo.InvariantCulture, $"{age.Years:0.0} years since {from:yyyy-MM-dd}; {ShelfAge.Meaning}"));
            foreach (var advice in age.Advice)
            {
                using var line = html.Open(Tag.Li);
                html.Text(advice.Says);
                working.Sources.Cite(html, advice.Source.Text);
            }
        }
    }

    private static void Forming(HtmlWriter html, LotStory lot, SharedWorking working)
    {
        if (!LotReforming.Plan(lot.Lot).Is(out var plan, out var reason))
        {
            html.Open(Tag.P).Text($"forming again: {reason}");
            return;
        }

        using var fold = html.Open(Tag.Details);
        html.Open(Tag.Summary).Text("Forming again is due: how");
        using var list = html.Open(Tag.Ul);
        html.Open(Tag.Li).Text(plan.ForParts);
        html.Open(Tag.Li)
            .Text(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"one part at a time, through {plan.SeriesOhms / 1000m:0.###} kΩ, which must bear {plan.WorstWatts:0.00} W and pass "
                        + $"{plan.WorstMilliamperes:0.0} mA should the part be shorted"
                )
            );
        foreach (var step in plan.Steps)
        {
            html.Open(Tag.Li).Text(step.Do);
        }

        html.Open(Tag.Li).Text($"give up when {string.Join(", or ", plan.StopWhen)} (common practice)");
        using (html.Open(Tag.Li))
        {
            html.Text(plan.Arithmetic);
            working.Sources.Cite(html, plan.Source.Text);
        }

        html.Open(Tag.Li).Text(ReformingPlan.Caution);
    }
}
