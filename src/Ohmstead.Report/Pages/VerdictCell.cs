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
            VerdictMark.Write(html, verdict);
            html.Text(" ");
            html.Open(Tag.Span).Text(VerdictWords.Of(verdict.Measured));
            html.Text(" ");
            PageFrame.Aligned(html, Tag.B, verdict.Reading.Text);
            html.Text(" ");
            html.Open(Tag.Span, ClassName.Limit).Text(verdict.Limit is { } limit ? InShort(limit.Interval) : string.Empty);
            html.Text(" ");
            html.Open(Tag.Span, ClassName.Distance).Text(verdict.Deviation is { } deviation ? VerdictWords.Percent(deviation) : string.Empty);
        }

        Working(html, verdict);
    }

    // One unit is enough where both limits have the same: 37.6 … 56.4 µF.
    private static string InShort(Interval limits)
    {
        var words = VerdictWords.Range(limits);
        if (limits is not { Lower: { } lower, Upper: { } upper })
        {
            return words;
        }

        var (low, high) = VerdictWords.Ends(lower, upper);
        var unit = low.IndexOf(' ', StringComparison.Ordinal);
        return unit > 0 && high.EndsWith(low[unit..], StringComparison.Ordinal) ? $"{low[..unit]} … {high}" : words;
    }

    private static void Working(HtmlWriter html, Verdict verdict)
    {
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
