using Ohmstead.Electronics.Statistics;

namespace Ohmstead.Assessment.Families.Statistics;

/// <summary>What the readings of one part say about its life. Small, since it is kept of every part of every board that was
/// measured.</summary>
public readonly record struct ObservedLife
{
    private const int None = -1;
    private const double DaysPerYear = 365.25;
    private const double LeastSpan = 1 / DaysPerYear;

    // The number of a day takes half the room of a day that may be missing.
    private readonly int start,
        lastGood,
        failed;

    /// <summary>What was seen, on which days.</summary>
    public ObservedLife(DateOnly? start, bool isOriginal, DateOnly firstLook, DateOnly? lastGood, DateOnly? failed)
    {
        this.start = start?.DayNumber ?? None;
        IsOriginal = isOriginal;
        FirstLook = firstLook;
        this.lastGood = lastGood?.DayNumber ?? None;
        this.failed = failed?.DayNumber ?? None;
    }

    /// <summary>The day from which its age counts: when it was made, or when it was fitted; null when nothing says it.</summary>
    public DateOnly? Start => Day(start);

    /// <summary>True for the part that came with the board: its age is told in whole years. False for one that was fitted since, on a known
    /// day: its age is exact.</summary>
    public bool IsOriginal { get; }

    /// <summary>The first day on which a reading decided.</summary>
    public DateOnly FirstLook { get; }

    /// <summary>The last day on which all that was read was inside, or null.</summary>
    public DateOnly? LastGood => Day(lastGood);

    /// <summary>The day on which it was found outside, or null while it is good.</summary>
    public DateOnly? Failed => Day(failed);

    /// <summary>True when the first look that decided found it outside.</summary>
    public bool FailedAsFound => Failed == FirstLook;

    /// <summary>Its age in years when a look first decided about it; null when its start is not known or lies after the look.</summary>
    public double? AgeAtFirstLook => Start is not null && Age(FirstLook) is var age and >= 0 ? age : null;

    /// <summary>
    /// What is known of its age at failure, in years: before the first look, between two looks, or later than the last look. Null when its
    /// start is not known, lies after a look, or when it was only looked at while new.
    /// </summary>
    public LifeObservation? Observation()
    {
        var good = LastGood is { } seen ? Age(seen) : 0;
        if (Start is null || good < 0)
        {
            return null;
        }

        if (Failed is not { } day)
        {
            return good > 0 ? LifeObservation.GoodAt(good) : null;
        }

        var bad = Age(day);
        if (bad < 0)
        {
            return null;
        }

        // No failure is known more exactly than ages are told: two looks of one age still leave a span between them.
        var span = IsOriginal ? 1 : LeastSpan;
        bad = Math.Max(bad, span);
        return new LifeObservation(Math.Max(Math.Min(good, bad - span), 0), bad);
    }

    private static DateOnly? Day(int number) => number == None ? null : DateOnly.FromDayNumber(number);

    // A year of making, or a date code that says nothing about the day of fitting, makes decimals of the age a pretence. Between two known
    // days it is none.
    private double Age(DateOnly day)
    {
        if (Start is not { } start)
        {
            return 0;
        }

        var years = (day.DayNumber - start.DayNumber) / DaysPerYear;
        return IsOriginal ? Math.Round(years, 0, MidpointRounding.AwayFromZero) : years;
    }
}
