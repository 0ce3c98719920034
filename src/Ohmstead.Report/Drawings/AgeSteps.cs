using System.Globalization;
using System.Text;
using Ohmstead.Assessment.Families;
using Ohmstead.Assessment.Families.Statistics;
using Ohmstead.Electronics.Statistics;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Drawings;

/// <summary>The share of a family that has failed by each age: flat where nothing failed, a room where something failed at an age nobody
/// saw, and a dotted curve for a Weibull life where one can be told.</summary>
internal static class AgeSteps
{
    private const decimal Left = 44m;
    private const decimal Right = 352m;
    private const decimal Top = 24m;
    private const decimal Bottom = 128m;
    private const decimal BaseLine = 144m;
    private const decimal NameLine = 160m;

    /// <summary>Writes the drawing; nothing where no age is known.</summary>
    public static void Write(HtmlWriter html, FamilyStatistics family, IntervalCensoredEstimate estimate)
    {
        var last = Last(estimate);
        if (last <= 0)
        {
            return;
        }

        var across = ValueScale.For([0m, (decimal)last], Left, Right);
        using var drawing = Plot.Open(
            html,
            "0 0 360 166",
            $"{family.Name.Text}: share failed by age",
            Words(estimate, family.Ages.Life.Is(out _, out _))
        );
        var steps = Steps(html, estimate, across);
        Axes(html, across);
        Plot.Strokes(html, steps);
        if (family.Ages.Life.Is(out var life, out _))
        {
            Curve(html, life.Fit.Life, across);
        }
    }

    /// <summary>Writes what the strokes of the drawings mean, once for all of them.</summary>
    public static void WriteKey(HtmlWriter html)
    {
        const decimal middle = 10m;
        using var drawing = Plot.Open(
            html,
            "0 0 360 62",
            "Key of the drawings by age",
            "A line: the share failed, where it is known. A filled room: parts failed within these ages, and nobody saw when. A dotted "
                + "curve: the Weibull life."
        );
        Plot.Strokes(html, string.Create(CultureInfo.InvariantCulture, $"M0 {middle}h36"));
        Plot.Label(html, 46m, middle + 4m, "share failed, where it is known");
        Plot.Room(html, 0m, 24m, 36m, 36m);
        Plot.Label(html, 46m, 34m, "failed within these ages; nobody saw when");
        Plot.Strokes(html, "M0 56C14 54 24 50 36 46", ClassName.Dotted);
        Plot.Label(html, 46m, 56m, "Weibull life, where one can be told");
    }

    /// <summary>Where a share stands, zero at the bottom.</summary>
    public static decimal Up(double share) => StripScale.Short(Bottom - ((Bottom - Top) * (decimal)Math.Clamp(share, 0, 1)));

    private static string Steps(HtmlWriter html, IntervalCensoredEstimate estimate, ValueScale across)
    {
        var path = new StringBuilder(string.Create(CultureInfo.InvariantCulture, $"M{Left} {Bottom}"));
        var together = 0.0;
        foreach (var mass in estimate.Masses)
        {
            if (double.IsInfinity(mass.By) || mass.Probability < FamilyAges.LeastShown)
            {
                continue;
            }

            var (after, by) = (across.At((decimal)mass.After), across.At((decimal)mass.By));
            path.Append(CultureInfo.InvariantCulture, $"H{after}");
            var before = Up(together);
            together += mass.Probability;
            if (by > after)
            {
                Plot.Room(html, after, before, by, Up(together));
            }

            path.Append(CultureInfo.InvariantCulture, $"{(by > after ? 'M' : 'L')}{by} {Up(together)}");
        }

        return path.Append(CultureInfo.InvariantCulture, $"H{Right}").ToString();
    }

    private static void Axes(HtmlWriter html, ValueScale across)
    {
        const decimal half = 4m;
        var strokes = new StringBuilder(
            string.Create(CultureInfo.InvariantCulture, $"M{Left} {Top}V{Bottom}H{Right}M{Left - half} {Top}h4M{Left - half} {Up(0.5)}h4")
        );
        foreach (var tick in across.Ticks)
        {
            strokes.Append(CultureInfo.InvariantCulture, $"M{across.At(tick)} {Bottom}v4");
        }

        Plot.Strokes(html, strokes.ToString(), ClassName.Band);
        Plot.LabelBefore(html, Left - (2m * half), Top + half, "100 %");
        Plot.LabelBefore(html, Left - (2m * half), Up(0.5) + half, "50 %");
        foreach (var tick in across.Ticks)
        {
            Plot.Label(html, across.At(tick) - half, BaseLine, tick.ToString(CultureInfo.InvariantCulture));
        }

        Plot.Label(html, 0m, Top - 12m, "share failed");
        Plot.LabelBefore(html, Right, NameLine, "age in years");
    }

    private static void Curve(HtmlWriter html, Weibull life, ValueScale across)
    {
        const int steps = 24;
        var path = new StringBuilder();
        for (var step = 0; step <= steps; step++)
        {
            var age = across.High * step / steps;
            path.Append(CultureInfo.InvariantCulture, $"{(step == 0 ? 'M' : 'L')}{across.At(age)} {Up(1 - life.Survival((double)age))}");
        }

        Plot.Strokes(html, path.ToString(), ClassName.Dotted);
    }

    private static double Last(IntervalCensoredEstimate estimate)
    {
        var last = 0.0;
        foreach (var mass in estimate.Masses)
        {
            last = Math.Max(last, double.IsInfinity(mass.By) ? mass.After : mass.By);
        }

        return last;
    }

    private static string Words(IntervalCensoredEstimate estimate, bool hasCurve)
    {
        var failed = 0.0;
        foreach (var mass in estimate.Masses)
        {
            failed += double.IsInfinity(mass.By) ? 0 : mass.Probability;
        }

        return $"The share failed rises to {FamilyWords.Percent(Math.Min(failed, 1))}; a filled room where parts failed at an age that "
            + $"nobody saw{(hasCurve ? ", dotted the Weibull life" : string.Empty)}. The table says the same in numbers.";
    }
}
