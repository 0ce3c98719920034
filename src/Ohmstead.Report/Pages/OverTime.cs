using System.Collections.Immutable;
using System.Globalization;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Drifts;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics;
using Ohmstead.Records.Model;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Drawings;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;
using Ohmstead.Report.Tables;

namespace Ohmstead.Report.Pages;

/// <summary>Parts that were read in the same way on two days or more: each a drawing, and beside it the readings it draws.</summary>
internal static class OverTime
{
    // A page that draws dozens of parts is neither read nor loaded quickly.
    private const int Most = 8;
    private static readonly Column[] Columns = [new("Day", IsShort: true), new("Reading", IsPlain: true), new("Verdict", IsPlain: true)];

    /// <summary>Writes the section, or nothing.</summary>
    public static void Write(HtmlWriter html, BoardAssessment board, ImmutableArray<Drift> drifts, ReadingAnchors anchors)
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
                .SeriesOf(board)
                .OrderByDescending(series => DriftOf(known, series) is { IsTold: true })
                .ThenByDescending(series => series.Readings.Count),
        ];
        if (all.Length == 0)
        {
            return;
        }

        using var entry = Entry.Open(html, "time", "Over time", "parts read in the same way on two days or more");
        foreach (var series in all.AsSpan(0, Math.Min(all.Length, Most)))
        {
            One(html, series, DriftOf(known, series), anchors);
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

    private static void One(HtmlWriter html, ReadingSeries series, Drift? drift, ReadingAnchors anchors)
    {
        using var figure = html.Open(Tag.Figure);
        using (html.Open(Tag.FigCaption))
        {
            html.Open(Tag.A).To(ElementId.Of(IdPrefix.Part, series.Reference)).Text(series.Reference);
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

        using var table = Ledger.Open(
            html,
            $"{series.Reference} {VerdictWords.Describe(series.Measured)} over time",
            Columns,
            isCompact: true
        );
        using var body = html.Open(Tag.TBody);
        foreach (var reading in series.Readings)
        {
            using var row = html.Open(Tag.Tr);
            table.Head().Text(IsoDate.Text(reading.Day));
            using (table.Cell(1))
            {
                if (anchors.Of(reading.Verdict) is { } anchor)
                {
                    html.Open(Tag.A).To(anchor).Text(reading.Verdict.Reading.Text);
                }
                else
                {
                    html.Text(reading.Verdict.Reading.Text);
                }
            }

            using var cell = table.Cell(2);
            html.Open(Tag.Span, VerdictMark.ToneOf(reading.Verdict.Outcome)).Text(VerdictWords.Describe(reading.Verdict.Outcome));
        }
    }
}
