using Ohmstead.Assessment.Notes;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Drawings;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Tables;

/// <summary>A verdict in full: strip, outcome, reading, limit, distance; behind a fold the reason, the arithmetic and the source.</summary>
internal static class VerdictCell
{
    /// <summary>Writes one verdict.</summary>
    /// <param name="html">Where it goes.</param>
    /// <param name="working">What the verdicts of the page have in common.</param>
    /// <param name="verdict">The verdict.</param>
    /// <param name="here">Where it stands, for those who are led to its working; or null.</param>
    /// <param name="anchor">The lasting address of the reading, or null where its address is elsewhere.</param>
    /// <param name="before">The verdict on the part that sat there before, or null.</param>
    /// <param name="isReasonTold">True where the reason stands above its table.</param>
    public static void Write(
        HtmlWriter html,
        SharedWorking working,
        Verdict verdict,
        PageAnchor? here = null,
        ElementId? anchor = null,
        Verdict? before = null,
        bool isReasonTold = false
    )
    {
        using var fold = Anchored(html.Open(Tag.Details).Toned(ClassName.Verdict, verdict.Outcome), anchor);
        using (html.Open(Tag.Summary))
        {
            Spans(html, verdict, before);
        }

        using var told = html.Open(Tag.P);
        var sentences = new Sentences(html);
        Working(ref sentences, working, verdict, here, isReasonTold);
        sentences.End();
    }

    /// <summary>Writes a verdict that decides nothing, with its working and without a strip: on a scale it would look as if it
    /// counted.</summary>
    /// <param name="html">Where it goes.</param>
    /// <param name="working">What the verdicts of the page have in common.</param>
    /// <param name="verdict">The verdict.</param>
    /// <param name="here">Where it stands, for those who are led to its working; or null.</param>
    /// <param name="anchor">The lasting address of the reading, or null.</param>
    /// <param name="isReasonTold">True where the reason stands above its table.</param>
    public static void Open(HtmlWriter html, SharedWorking working, Verdict verdict, PageAnchor? here, ElementId? anchor, bool isReasonTold)
    {
        using var line = Anchored(html.Open(Tag.P).Toned(ClassName.Told, verdict.Outcome), anchor);
        html.Text($"{VerdictWords.Describe(verdict.Outcome)}: {VerdictWords.Describe(verdict.Measured)} ");
        html.Open(Tag.B).Text(verdict.Reading.Text);
        var sentences = new Sentences(html);
        sentences.Next();
        if (verdict.LimitInWords is { } limit)
        {
            html.Text(", ");
            InShort(html, limit);
        }

        Working(ref sentences, working, verdict, here, isReasonTold);
        sentences.End();
    }

    private static void Working(ref Sentences sentences, SharedWorking working, Verdict verdict, PageAnchor? here, bool isReasonTold)
    {
        if (!isReasonTold && Reason(verdict) is { } beyond)
        {
            working.Once(ref sentences, beyond.Text, here);
        }

        if (verdict.Limit is { } limit)
        {
            working.Limit(ref sentences, limit, here);
        }

        working.Decision(ref sentences, verdict);
        if (PartNotes.Frequency(verdict) is { } note)
        {
            sentences.Next(note.Line);
        }

        foreach (var remark in verdict.Remarks)
        {
            working.Remark(ref sentences, remark, verdict, here);
        }
    }

    /// <summary>Writes a verdict that still stands and so is drawn and told in the row of its part.</summary>
    /// <param name="html">Where it goes.</param>
    /// <param name="verdict">The verdict.</param>
    public static void Line(HtmlWriter html, Verdict verdict)
    {
        using var line = html.Open(Tag.P).Toned(ClassName.Told, verdict.Outcome);
        html.Text($"{VerdictWords.Describe(verdict.Outcome)} {VerdictWords.Describe(verdict.Measured)} {verdict.Reading.Text}");
    }

    /// <summary>Writes the values inside a limit, with one unit where both ends have the same: 37.6 … 56.4 µF.</summary>
    internal static void InShort(HtmlWriter html, ReadOnlySpan<char> limits)
    {
        const string between = " … ";
        if (
            limits.IndexOf(between, StringComparison.Ordinal) is > 0 and var end
            && limits.IndexOf(' ') is var unit
            && unit < end
            && limits.EndsWith(limits[unit..end], StringComparison.Ordinal)
        )
        {
            html.Text(limits[..unit]);
            limits = limits[end..];
        }

        html.Text(limits);
    }

    private static Element Anchored(Element element, ElementId? anchor) => anchor is null ? element : element.With(anchor);

    private static void Spans(HtmlWriter html, Verdict verdict, Verdict? before)
    {
        ReadingStrip.Write(html, verdict, before);
        html.Text($"{VerdictWords.Describe(verdict.Outcome)} ");
        html.Open(Tag.I).Text(VerdictWords.Describe(verdict.Measured));
        html.Text(" ");
        Figure(html, verdict.Reading.Text);
        if (verdict.LimitInWords is { } limit)
        {
            html.Text(" ");
            using var range = html.Open(Tag.I);
            InShort(html, limit);
        }

        if (verdict.Deviation is { } deviation)
        {
            html.Text(" ");
            html.Open(Tag.I).Text(VerdictWords.Percent(deviation));
        }
    }

    // Three characters before the point are the usual, and say nothing of it.
    private static void Figure(HtmlWriter html, string number)
    {
        using var figure = html.Open(Tag.B);
        if (ClassName.Whole(number) is var whole && whole != ClassName.Whole3)
        {
            figure.With(whole ?? ClassName.Whole4);
        }

        html.Text(number);
    }

    // Reading, limit and outcome stand in the line above already: only what goes beyond them is told.
    private static LazyText? Reason(Verdict verdict) =>
        verdict.Limit is null && verdict.Outcome != VerdictOutcome.NoLimit ? verdict.Why : verdict.Reason;
}
