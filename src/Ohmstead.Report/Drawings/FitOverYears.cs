using System.Globalization;
using System.Text;
using Ohmstead.Assessment.Years;
using Ohmstead.Electronics;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Drawings;

/// <summary>How many boards were there and how many of them fit to run, at the end of each period: a column for the boards, filled as far
/// as they are fit.</summary>
internal static class FitOverYears
{
    private const decimal Left = 34m;
    private const decimal Right = 352m;
    private const decimal Top = 20m;
    private const decimal Bottom = 112m;
    private const decimal BaseLine = 128m;

    // How much room the name of a year takes with the space behind it.
    private const decimal NameWidth = 34m;

    /// <summary>Writes the drawing.</summary>
    public static void Write(HtmlWriter html, IReadOnlyList<PastPoint> points)
    {
        const decimal quarter = 0.25m;
        var most = Math.Max(1, points.Max(point => point.Boards));
        var wide = (Right - Left) / points.Count;
        using var drawing = Plot.Open(html, "0 0 360 134", "The collection through the years", Words(points));
        var strokes = new StringBuilder(string.Create(CultureInfo.InvariantCulture, $"M{Left} {Top}V{Bottom}H{Right}"));
        for (var at = 0; at < points.Count; at++)
        {
            var (from, to) = (Left + ((at + quarter) * wide), Left + ((at + 1 - quarter) * wide));
            var high = Up(points[at].Boards, most);
            if (points[at].Fit > 0)
            {
                Plot.Room(html, Short(from), Up(points[at].Fit, most), Short(to), Bottom);
            }

            strokes.Append(CultureInfo.InvariantCulture, $"M{Short(from)} {Bottom}V{high}H{Short(to)}V{Bottom}");
        }

        Plot.Strokes(html, strokes.ToString(), ClassName.Band);
        Plot.LabelBefore(html, Left - 4m, Top + 4m, most.ToString(CultureInfo.InvariantCulture));
        Plot.LabelBefore(html, Left - 4m, Bottom + 4m, "0");
        Names(html, points, wide);
    }

    // A column that begins a year is named by it, and the last one is today.
    private static void Names(HtmlWriter html, IReadOnlyList<PastPoint> points, decimal wide)
    {
        const decimal fifth = 0.2m;
        decimal At(int point) => Short(Left + ((point + fifth) * wide));
        var now = points.Count - 1;
        Plot.Label(html, At(now), BaseLine, "now");
        var free = Left;
        for (var at = 0; at < now; at++)
        {
            var begins = at == 0 || points[at].Day.Year != points[at - 1].Day.Year;
            if (begins && At(at) >= free && At(at) + NameWidth <= At(now))
            {
                Plot.Label(html, At(at), BaseLine, points[at].Day.Year.ToString("0000", CultureInfo.InvariantCulture));
                free = At(at) + NameWidth;
            }
        }
    }

    private static decimal Up(int count, int most) => Short(Bottom - ((Bottom - Top) * count / most));

    private static decimal Short(decimal at) => StripScale.Short(at);

    private static string Words(IReadOnlyList<PastPoint> points)
    {
        var (first, last) = (points[0], points[^1]);
        return $"At the end of {IsoDate.Text(first.Day)} {Told(first)}; on {IsoDate.Text(last.Day)} {Told(last)}. "
            + "Each column is as high as there are boards and filled as far as they are fit to run.";
    }

    private static string Told(PastPoint point) =>
        string.Create(CultureInfo.InvariantCulture, $"{point.Fit} of {point.Boards} {(point.Boards == 1 ? "board" : "boards")} fit to run");
}
