using System.Globalization;
using Ohmstead.Assessment.Notes;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Report.Html;
using Ohmstead.Report.Style;

namespace Ohmstead.Report.Pages;

/// <summary>A verdict in full: outcome, reading, limit, distance; and behind a fold the reason, the arithmetic and the source.</summary>
internal static class VerdictCell
{
    /// <summary>Writes one verdict.</summary>
    public static void Write(HtmlWriter html, Verdict verdict)
    {
        using var fold = html.Open(Tag.Details, ClassName.Verdict);
        using (html.Open(Tag.Summary))
        {
            Spans(html, verdict);
        }

        Working(html, verdict);
    }

    /// <summary>Writes a verdict that stands in full elsewhere on the page, with the way there.</summary>
    /// <param name="html">Where it goes.</param>
    /// <param name="verdict">The verdict.</param>
    /// <param name="part">The part in whose row it stands in full.</param>
    public static void Line(HtmlWriter html, Verdict verdict, string part)
    {
        using var line = html.Open(Tag.P, ClassName.Verdict);
        Spans(html, verdict);
        html.Text(" ");
        html.Open(Tag.A).To(LocalLink.ToFragment(ElementId.Of(IdPrefix.Part, part))).Text("why");
    }

    private static void Spans(HtmlWriter html, Verdict verdict)
    {
        VerdictMark.Write(html, verdict);
        html.Text(" ");
        html.Open(Tag.Span).Text(VerdictWords.Of(verdict.Measured));
        html.Text(" ");
        PageFrame.Aligned(html, Tag.B, verdict.Reading.Text);
        html.Text(" ");
        html.Open(Tag.Span, ClassName.Limit).Text(verdict.LimitInWords is { } limit ? InShort(limit) : string.Empty);
        html.Text(" ");
        html.Open(Tag.Span, ClassName.Distance).Text(verdict.Deviation is { } deviation ? VerdictWords.Percent(deviation) : string.Empty);
    }

    // One unit is enough where both limits have the same: 37.6 … 56.4 µF.
    private static string InShort(string limits)
    {
        const string between = " … ";
        if (limits.IndexOf(between, StringComparison.Ordinal) is not (> 0 and var end) || limits.IndexOf(' ', StringComparison.Ordinal) is var unit && unit == end)
        {
            return limits;
        }

        return limits.EndsWith(limits[unit..end], StringComparison.Ordinal) ? limits[..unit] + limits[end..] : limits;
    }

    private static void Working(HtmlWriter html, Verdict verdict)
    {
        using var list = html.Open(Tag.Ul, ClassName.Working);
        html.Open(Tag.Li).Text(verdict.Why);
        if (verdict.Limit is { } limit)
        {
            html.Open(Tag.Li).Text($"Arithmetic: {limit.Arithmetic}");
            html.Open(Tag.Li).Text($"Source: {limit.Source}");
        }

        if (verdict.Deviation is { } off && verdict.Limit?.Nominal is { } nominal)
        {
            html.Open(Tag.Li).Text($"{VerdictWords.Percent(off)} from nominal {QuantityText.Format(nominal)}");
        }

        if (verdict.Margin is { } margin)
        {
            html.Open(Tag.Li).Text(margin < 0 ? $"Beyond the limit by {VerdictWords.Share(margin)} of it" : margin == 0 ? "Exactly on the limit, which is inside" : $"Room to the limit: {VerdictWords.Share(margin)} of it");
        }

        if (verdict.Probability is { } probability)
        {
            html.Open(Tag.Li).Text($"Inside with probability {probability.ToString("0.0000", CultureInfo.InvariantCulture)} (JCGM 106:2012, clause 7, from memory)");
        }

        if (verdict is { Rule: { } rule, Uncertainty: { } uncertainty })
        {
            html.Open(Tag.Li).Text($"Decided by: {DecisionRules.Words(rule)}; U = {QuantityText.Format(uncertainty, 3)}");
        }

        if (PartNotes.Frequency(verdict) is { } note)
        {
            html.Open(Tag.Li).Text(note.Line);
        }

        foreach (var remark in verdict.Remarks)
        {
            html.Open(Tag.Li).Text(remark);
        }
    }
}
