using System.Collections.Immutable;
using System.Globalization;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Drifts;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics;
using Ohmstead.Records.Model;
using Ohmstead.Report.Drawings;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;
using Ohmstead.Report.Tables;

namespace Ohmstead.Report.Pages;

/// <summary>Parts that were read in the same way on two days or more: each a drawing, and beside it the readings it draws.</summary>
/// <param name="page">The board on its page.</param>
internal sealed class OverTime(BoardOnPage page)
{
    // A page that draws dozens of parts is neither read nor loaded quickly.
    private const int Most = 8;
    private readonly HtmlWriter html = page.Html;

    /// <summary>Writes the section, or nothing.</summary>
    /// <param name="drifts">The drifts of the board.</param>
    public void Write(ImmutableArray<Drift> drifts)
    {
        // What drifts comes first, then what was read most often.
        var known = new Dictionary<(string, Measured, DateOnly), Drift>();
        foreach (var drift in drifts)
        {
            known.TryAdd((drift.Reference, drift.Measured, drift.Last), drift);
        }

        ReadingSeries[] all =
        [
            .. BoardDrifts
                .SeriesOf(page.Board)
                .OrderByDescending(series => DriftOf(known, series) is { IsTold: true })
                .ThenByDescending(series => series.Readings.Count),
        ];
        if (all.Length == 0)
        {
            return;
        }

        using var section = Section.Open(html, "time", "Over time", "parts read in the same way on two days or more");
        foreach (var series in all.AsSpan(0, Math.Min(all.Length, Most)))
        {
            One(series, DriftOf(known, series));
        }

        if (all.Length > Most)
        {
            html.Open(Tag.P, ClassName.Fine)
                .Text(
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"{all.Length - Most} more are not drawn; their readings stand below, day by day."
                    )
                );
        }
    }

    private static Drift? DriftOf(Dictionary<(string, Measured, DateOnly), Drift> drifts, ReadingSeries series) =>
        drifts.GetValueOrDefault((series.Reference, series.Measured, series.Readings[^1].Day));

    private void One(ReadingSeries series, Drift? drift)
    {
        using var figure = html.Open(Tag.Figure);
        using (html.Open(Tag.FigCaption))
        {
            html.Open(Tag.A).To(ElementId.For(IdPrefix.Part, series.Reference)).Text(series.Reference);
            html.Text($" {VerdictWords.Describe(series.Measured)}");
            if (series.Readings[^1].Verdict.LimitInWords is { } limits)
            {
                html.Text(", limits ");
                VerdictCell.InShort(html, limits.Text);
            }
        }

        ReadingsOverTime.Write(html, series, drift);
        if (series.WithoutFigure > 0)
        {
            html.Open(Tag.P, ClassName.Fine).Text(BoardDrifts.LeftOut(series.WithoutFigure) + ".");
        }

        new Ledger<ReadOnDay>(
            new("Day", reading => IsoDate.Text(reading.Day)) { IsShort = true },
            new("Reading", (_, reading) => Reading(reading.Verdict)) { IsPlain = true },
            new("Verdict", (_, reading) => Outcome(reading.Verdict)) { IsPlain = true }
        )
        {
            IsCompact = true,
        }.Write(html, $"{series.Reference} {VerdictWords.Describe(series.Measured)} over time", series.Readings);
    }

    private void Reading(Verdict verdict)
    {
        if (page.Anchors.Find(verdict) is { } anchor)
        {
            html.Open(Tag.A).To(anchor).Text(verdict.Reading.Text);
        }
        else
        {
            html.Text(verdict.Reading.Text);
        }
    }

    private void Outcome(Verdict verdict) =>
        html.Open(Tag.Span, VerdictMark.ToneOf(verdict.Outcome)).Text(VerdictWords.Describe(verdict.Outcome));
}
