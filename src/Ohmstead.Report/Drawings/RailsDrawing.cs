using System.Collections.Immutable;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Records.Model;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Drawings;

/// <summary>The rails of a board below each other, as last proved: each voltage between its limits, each ripple below its own. The table of
/// the proof holds the numbers.</summary>
internal static class RailsDrawing
{
    private const int Lane = 20;
    private const int Head = 16;
    private const decimal VoltageAt = 96m;
    private const decimal RippleAt = 232m;

    /// <summary>The rails that can be drawn: the latest proof of each point that read a voltage against limits, in order of the
    /// points.</summary>
    public static ImmutableArray<AssessedProof> Rails(BoardAssessment board)
    {
        var rails = new List<AssessedProof>();
        foreach (var point in board.Points)
        {
            if (board.ProofsAt(point.Name.Value).LastOrDefault(static proof => Find(proof, Measured.Voltage) is not null) is { } last)
            {
                rails.Add(last);
            }
        }

        return [.. rails];
    }

    /// <summary>Writes the drawing, where there are two rails or more to compare.</summary>
    public static void Write(HtmlWriter html, ImmutableArray<AssessedProof> rails)
    {
        if (rails.Length < 2)
        {
            return;
        }

        var high = Head + (Lane * rails.Length);
        using var drawing = Plot.Open(
            html,
            $"0 0 340 {Invariant.Text(high)}",
            "Rails as last proved",
            "Each rail a line: its voltage between its limits, its ripple below its limit, each on a scale of its own with equal limits "
                + "below each other. The numbers stand in the table below."
        );
        Plot.Label(html, VoltageAt + StripScale.Lower, 10m, "voltage");
        if (rails.Any(rail => Find(rail, Measured.Ripple) is not null))
        {
            Plot.Label(html, RippleAt + StripScale.Lower, 10m, "ripple");
        }

        for (var lane = 0; lane < rails.Length; lane++)
        {
            var top = Head + (Lane * lane) + 2m;
            Plot.LabelBefore(html, VoltageAt - 8m, top + 11m, rails[lane].Proof.Point.Value);
            Strip(html, Find(rails[lane], Measured.Voltage), VoltageAt, top);
            Strip(html, Find(rails[lane], Measured.Ripple), RippleAt, top);
        }
    }

    private static void Strip(HtmlWriter html, Verdict? verdict, decimal x, decimal y)
    {
        if (verdict is not { Limit: { } limit, Exact: { } read })
        {
            return;
        }

        var drawing = StripScale.For(limit.Interval, read.Value, null, null, verdict.Outcome);
        if (ReadingStrip.BandOf(drawing.Band) is { } band)
        {
            html.Open(Tag.Use).Using(band).With(NumberAttribute.X, x).With(NumberAttribute.Y, y).Close();
        }

        html.Open(Tag.Use, VerdictMark.ToneOf(verdict.Outcome))
            .Using(ReadingStrip.ShapeOf(verdict.Outcome))
            .With(NumberAttribute.X, x + drawing.At)
            .With(NumberAttribute.Y, y)
            .Close();
    }

    private static Verdict? Find(AssessedProof proof, Measured measured)
    {
        foreach (var verdict in proof.Verdicts)
        {
            if (verdict.Measured == measured && verdict.Limit is not null && verdict.Exact is not null)
            {
                return verdict;
            }
        }

        return null;
    }
}
