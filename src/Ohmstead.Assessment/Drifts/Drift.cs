using Ohmstead.Electronics;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Electronics.Statistics;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Drifts;

/// <summary>A quantity of a part that was read on three or more days under equal conditions, and where it is going. An estimate, not a
/// promise.</summary>
/// <param name="Reference">The place of the part.</param>
/// <param name="Measured">What was read.</param>
/// <param name="Readings">How many readings.</param>
/// <param name="First">The day of the first one.</param>
/// <param name="Last">The day of the last one.</param>
/// <param name="LastSpot">Where the last one is written.</param>
/// <param name="Trend">The line through them; x in years since the first, y in the unit of the dimension.</param>
/// <param name="Dimension">The dimension of the readings.</param>
public sealed record Drift(
    string Reference,
    Measured Measured,
    int Readings,
    DateOnly First,
    DateOnly Last,
    Records.Text.Spot LastSpot,
    LinearTrend Trend,
    Dimension Dimension
)
{
    /// <summary>The confidence of every interval here.</summary>
    public const double Confidence = 0.95;

    private const double DaysPerYear = 365.25;

    /// <summary>The limit that the line goes towards, or null when none is known on that side.</summary>
    public Quantity? Limit { get; init; }

    /// <summary>True when the last reading is outside its limit already.</summary>
    public bool IsOutside { get; init; }

    /// <summary>What is not equal between the readings, or not written.</summary>
    public IReadOnlyList<string> Remarks { get; init; } = [];

    /// <summary>True when the readings rise, false when they fall.</summary>
    public bool IsRising => Trend.Slope > 0;

    /// <summary>True when the slope can be told from the scatter of the readings: its 95 % interval does not hold zero.</summary>
    public bool IsTold { get; } = Trend.SlopeInterval(Confidence).Is(out var slope, out _) && (slope.Low > 0 || slope.High < 0);

    /// <summary>The first day on which a new reading may be at the limit, by the 95 % prediction; or why none can be told.</summary>
    public Outcome<DateOnly> MeetsLimit { get; init; } = Outcome<DateOnly>.Refused("no limit is known on that side");

    /// <summary>The day on which the line itself is at the limit, or null.</summary>
    public DateOnly? LineMeetsLimit => Limit is { } limit && IsTold && Trend.LineReaches((double)limit.Value) is { } x ? DayAt(x) : null;

    /// <summary>The day that lies some years after the first reading, or null beyond the calendar.</summary>
    public DateOnly? DayAt(double years)
    {
        // What the arithmetic loses on a whole day must not cost that day.
        var days = Math.Floor((years * DaysPerYear) + 1e-6);
        return days + First.DayNumber >= 0 && days + First.DayNumber <= DateOnly.MaxValue.DayNumber ? First.AddDays((int)days) : null;
    }

    /// <summary>The years from the first reading to a day.</summary>
    public double YearsTo(DateOnly day) => YearsBetween(First, day);

    internal static double YearsBetween(DateOnly first, DateOnly day) => (day.DayNumber - first.DayNumber) / DaysPerYear;
}
