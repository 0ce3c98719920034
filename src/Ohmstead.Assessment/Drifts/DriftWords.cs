using System.Globalization;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Electronics.Statistics;

namespace Ohmstead.Assessment.Drifts;

/// <summary>The words in which a drift is told, the same in the terminal, in findings and on the pages.</summary>
public static class DriftWords
{
    /// <summary>What every foretold day must stand beside.</summary>
    public const string Estimate = "estimate, not a promise";

    private const int Figures = 3;

    /// <summary>How fast it goes: "falls by 9.8 µF a year"; or that it does not.</summary>
    public static string Pace(Drift drift) =>
        drift.Trend.Slope == 0 || !drift.IsTold
            ? "no drift can be told from the scatter"
            : $"{(drift.IsRising ? "rises" : "falls")} by {Quantity(Math.Abs(drift.Trend.Slope), drift.Dimension)} a year";

    /// <summary>When it meets its limit: "meets 376 µF from 2027-05-02 on, the line itself on 2028-01-30"; or why no day can be
    /// told.</summary>
    public static string Meeting(Drift drift)
    {
        if (drift.IsOutside)
        {
            return "is outside its limit already";
        }

        if (!drift.MeetsLimit.Is(out var day, out var refusal))
        {
            return refusal;
        }

        var limit = VerdictWords.Short(drift.Limit!.Value);
        return day <= drift.Last
            ? $"a new reading may be at {limit} already"
            : $"may meet {limit} from {IsoDate.Text(day)} on"
                + (drift.LineMeetsLimit is { } line ? $", the line itself does on {IsoDate.Text(line)}" : string.Empty);
    }

    /// <summary>The whole in one sentence.</summary>
    public static string Sentence(Drift drift)
    {
        var readings = string.Create(
            CultureInfo.InvariantCulture,
            $"{VerdictWords.Describe(drift.Measured)} of {drift.Readings} like readings, {IsoDate.Text(drift.First)} to "
                + $"{IsoDate.Text(drift.Last)}"
        );
        return drift.IsTold ? $"{readings}: {Pace(drift)}; {Meeting(drift)}; {Estimate}" : $"{readings}: {Pace(drift)}";
    }

    /// <summary>The working, line by line, with the source.</summary>
    /// <param name="drift">The drift.</param>
    /// <param name="look">The day of the next look, or null.</param>
    public static IEnumerable<string> Working(Drift drift, DateOnly? look)
    {
        var trend = drift.Trend;
        var (slope, start) = (Quantity(Math.Abs(trend.Slope), drift.Dimension), Quantity(trend.Intercept, drift.Dimension));
        yield return $"line: {start} {(trend.Slope < 0 ? "-" : "+")} {slope} x t, t in years since {IsoDate.Text(drift.First)}, by "
            + $"least squares; readings lie {Quantity(trend.ResidualDeviation, drift.Dimension)} about it (standard deviation, n - 2)";
        if (trend.SlopeInterval(Drift.Confidence).Is(out var interval, out _))
        {
            yield return $"slope with 95 %: {Signed(interval.Low, drift.Dimension)} to {Signed(interval.High, drift.Dimension)} a year";
        }

        if (
            drift.IsTold
            && look is { } day
            && day > drift.Last
            && trend.Prediction(drift.YearsTo(day), Drift.Confidence).Is(out var next, out _)
        )
        {
            yield return $"expected at the next inspection on {IsoDate.Text(day)}: {Quantity(next.Low, drift.Dimension)} to "
                + $"{Quantity(next.High, drift.Dimension)} (95 %), line ± t(n-2) s sqrt(1 + 1/n + (t - mean)²/Sxx)";
        }

        if (
            drift.IsTold
            && drift.DayAt(2 * drift.YearsTo(drift.Last)) is { } far
            && drift.MeetsLimit.Is(out var meets, out _)
            && meets > far
        )
        {
            yield return "the day lies further ahead than the readings reach back: a guess";
        }

        foreach (var remark in drift.Remarks)
        {
            yield return remark;
        }

        yield return $"source: {LinearTrend.Source}";
    }

    private static string Signed(double value, Dimension dimension) => (value > 0 ? "+" : string.Empty) + Quantity(value, dimension);

    private static string Quantity(double value, Dimension dimension) =>
        Math.Abs(value) is > 1e-24 and < 1e24
            ? QuantityText.Format(new Quantity((decimal)value, dimension), Figures)
            : QuantityText.Format(new Quantity(0m, dimension));
}
