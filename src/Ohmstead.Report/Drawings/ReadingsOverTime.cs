using System.Globalization;
using System.Text;
using Ohmstead.Assessment.Drifts;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Drawings;

/// <summary>Like readings of one part over the years, against the limits of the last one, with the line through them where a drift can be
/// told.</summary>
internal static class ReadingsOverTime
{
    private const decimal Left = 66m;
    private const decimal Right = 352m;
    private const decimal Top = 8m;
    private const decimal Bottom = 112m;
    private const decimal BaseLine = 128m;

    // The line is drawn until it meets its limit, as long as that is not further ahead than the readings reach back, twice.
    private const int SpansAhead = 2;

    /// <summary>Writes the drawing; nothing where a value is of a size that no bench knows.</summary>
    public static void Write(HtmlWriter html, ReadingSeries series, Drift? drift)
    {
        var last = series.Readings[^1].Verdict;
        var limits = last.Limit?.Interval ?? default;
        var values = Values(series, limits);
        if (!ValueScale.Holds(values))
        {
            return;
        }

        var up = ValueScale.For(values, Bottom, Top);
        var time = Time(series, drift);
        using var drawing = Plot.Open(
            html,
            "0 0 360 134",
            $"{series.Reference} {VerdictWords.Describe(series.Measured)} over time",
            Words(series, last, drift, up)
        );
        Axes(html, up, time, last.Reading.Value.Dimension);
        Limits(html, up, limits);
        if (drift is { IsTold: true })
        {
            Line(html, up, time, drift);
        }

        foreach (var reading in series.Readings)
        {
            if (reading.Verdict.Exact is not { } read)
            {
                continue;
            }

            var (x, y) = (time.At(reading.Day), up.At(read.Value));
            if (reading.Verdict.Uncertainty is { } u && Reach(up, read.Value, u.Value) is { Length: > 0 } reach)
            {
                Plot.Strokes(html, string.Create(CultureInfo.InvariantCulture, $"M{x} {reach}"));
            }

            html.Open(Tag.Use, VerdictMark.ToneOf(reading.Verdict.Outcome))
                .Using(ReadingStrip.ShapeOf(reading.Verdict.Outcome))
                .With(NumberAttribute.X, x)
                .With(NumberAttribute.Y, y - (StripScale.High / 2m))
                .Close();
        }
    }

    /// <summary>The days that are drawn: from the first reading to the last, or to where the line meets its limit, with a little room at
    /// both ends.</summary>
    public static TimeScale Time(ReadingSeries series, Drift? drift)
    {
        var (first, last) = (series.Readings[0].Day, series.Readings[^1].Day);
        var span = last.DayNumber - first.DayNumber;
        var end =
            drift is { IsTold: true, LineMeetsLimit: { } meets } && meets > last && meets.DayNumber - last.DayNumber <= SpansAhead * span
                ? meets
                : last;
        var room = Math.Max(1, (end.DayNumber - first.DayNumber) / 20);
        return new(
            first.AddDays(-Math.Min(room, first.DayNumber)),
            end.AddDays(Math.Min(room, DateOnly.MaxValue.DayNumber - end.DayNumber)),
            Left,
            Right
        );
    }

    private static List<decimal> Values(ReadingSeries series, Interval limits)
    {
        var values = new List<decimal>(series.Readings.Count + 2);
        foreach (var reading in series.Readings)
        {
            if (reading.Verdict.Exact is { } read)
            {
                values.Add(read.Value);
            }
        }

        if (limits.Lower is { } lower)
        {
            values.Add(lower.Value);
        }

        if (limits.Upper is { } upper)
        {
            values.Add(upper.Value);
        }

        return values;
    }

    private static void Axes(HtmlWriter html, ValueScale up, TimeScale time, Dimension dimension)
    {
        const decimal half = 4m;
        var strokes = new StringBuilder(string.Create(CultureInfo.InvariantCulture, $"M{Left} {Top}V{Bottom}H{Right}"));
        foreach (var tick in up.Ticks)
        {
            strokes.Append(CultureInfo.InvariantCulture, $"M{Left - half} {up.At(tick)}h4");
        }

        foreach (var year in time.Years())
        {
            strokes.Append(CultureInfo.InvariantCulture, $"M{time.At(year)} {Bottom}v4");
        }

        Plot.Strokes(html, strokes.ToString(), ClassName.Band);
        foreach (var tick in up.Ticks)
        {
            Plot.LabelBefore(html, Left - (2m * half), up.At(tick) + half, VerdictWords.Short(new Quantity(tick, dimension)));
        }

        var years = time.Years();
        foreach (var year in years)
        {
            Plot.Label(
                html,
                Math.Min(time.At(year) - (3m * half), Right - (6m * half)),
                BaseLine,
                year.Year.ToString(CultureInfo.InvariantCulture)
            );
        }

        if (years.Count == 0)
        {
            Plot.Label(html, Left, BaseLine, IsoDate.Text(time.First));
            Plot.LabelBefore(html, Right, BaseLine, IsoDate.Text(time.Last));
        }
    }

    private static void Limits(HtmlWriter html, ValueScale up, Interval limits)
    {
        if (limits.Lower is null && limits.Upper is null)
        {
            return;
        }

        var (low, high) = (limits.Lower is { } lower ? up.At(lower.Value) : Bottom, limits.Upper is { } upper ? up.At(upper.Value) : Top);
        Plot.Room(html, Left + 1m, high, Right, low);
        var strokes =
            (limits.Lower is null ? string.Empty : string.Create(CultureInfo.InvariantCulture, $"M{Left} {low}H{Right}"))
            + (limits.Upper is null ? string.Empty : string.Create(CultureInfo.InvariantCulture, $"M{Left} {high}H{Right}"));
        Plot.Strokes(html, strokes, ClassName.Band);
    }

    // On a scale of decades a straight drift is a curve; a few points show it.
    private static void Line(HtmlWriter html, ValueScale up, TimeScale time, Drift drift)
    {
        const int steps = 8;
        var days = time.Last.DayNumber - drift.First.DayNumber;
        var path = new StringBuilder();
        for (var step = 0; step <= steps; step += up.IsDecades ? 1 : steps)
        {
            var day = drift.First.AddDays(days * step / steps);
            var value = drift.Trend.At(drift.YearsTo(day));
            path.Append(
                CultureInfo.InvariantCulture,
                $"{(step == 0 ? 'M' : 'L')}{time.At(day)} {up.At((decimal)Math.Clamp(value, -1e20, 1e20))}"
            );
        }

        Plot.Strokes(html, path.ToString(), ClassName.Dotted);
    }

    private static string Reach(ValueScale up, decimal value, decimal uncertainty)
    {
        const decimal shape = 10m;
        var (low, high) = (up.At(value - uncertainty), up.At(value + uncertainty));
        return low - high <= shape ? string.Empty : string.Create(CultureInfo.InvariantCulture, $"{low}V{high}");
    }

    private static string Words(ReadingSeries series, Verdict last, Drift? drift, ValueScale up)
    {
        var (first, end) = (series.Readings[0], series.Readings[^1]);
        var words = new StringBuilder(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{series.Readings.Count} readings, {first.Verdict.Reading.Text} on {IsoDate.Text(first.Day)} to "
                    + $"{end.Verdict.Reading.Text} on {IsoDate.Text(end.Day)}; limits: {last.LimitInWords ?? "none known"}"
            )
        );
        if (drift is not null)
        {
            words.Append(CultureInfo.InvariantCulture, $"; {DriftWords.Pace(drift)}");
        }

        return words
            .Append(
                up.IsDecades ? "; upwards each stroke a factor of ten."
                : up.Low == 0m ? "; upwards from zero."
                : "; the scale does not start from zero."
            )
            .ToString();
    }
}
