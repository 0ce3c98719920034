using System.Globalization;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Pages;

/// <summary>A verdict in full: outcome, reading, distance, and behind a fold the limit, the arithmetic and the source.</summary>
public static class VerdictCell
{
    /// <summary>Writes one verdict.</summary>
    public static void Write(HtmlWriter html, Verdict verdict)
    {
        using var fold = html.Open(Tag.Details);
        using (html.Open(Tag.Summary))
        {
            Marks.Verdict(html, verdict.Outcome);
            html.Text(" ");
            html.Open(Tag.B).Text(verdict.Reading.Text);
            html.Text(" ");
            html.Text(VerdictWords.Of(verdict.Measured));
            if (verdict.Deviation is { } deviation)
            {
                html.Text(", ");
                html.Text(VerdictWords.Percent(deviation));
            }
        }

        using var list = html.Open(Tag.Ul, ClassName.Working);
        html.Open(Tag.Li).Text(verdict.Why);
        if (verdict.Limit is { } limit)
        {
            html.Open(Tag.Li).Text($"Limit: {VerdictWords.Range(limit.Interval)} ({VerdictWords.Of(limit.Kind)}, from {limit.Origin})");
            html.Open(Tag.Li).Text($"Arithmetic: {limit.Arithmetic}");
            html.Open(Tag.Li).Text($"Source: {limit.Source}");
        }

        if (verdict.Deviation is { } off && verdict.Limit?.Nominal is { } nominal)
        {
            html.Open(Tag.Li).Text($"{VerdictWords.Percent(off)} from nominal {QuantityText.Format(nominal)}");
        }

        if (verdict.Margin is { } margin)
        {
            html.Open(Tag.Li).Text(margin < 0 ? $"Beyond the limit by {VerdictWords.Percent(-margin)[1..]} of it" : margin == 0 ? "Exactly on the limit, which is inside" : $"Room to the limit: {VerdictWords.Percent(margin)[1..]} of it");
        }

        if (verdict.Probability is { } probability)
        {
            html.Open(Tag.Li).Text($"Inside with probability {probability.ToString("0.0000", CultureInfo.InvariantCulture)} (JCGM 106:2012, clause 7, from memory)");
        }

        foreach (var remark in verdict.Remarks)
        {
            html.Open(Tag.Li).Text(remark);
        }
    }
}
