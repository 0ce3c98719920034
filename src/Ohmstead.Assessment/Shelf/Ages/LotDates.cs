using Ohmstead.Electronics.Markings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Shelf.Ages;

/// <summary>When the parts of a lot can have been made: every date that the code on them can mean, as far as they had not come
/// earlier.</summary>
/// <param name="Made">All plausible dates, the earliest first; empty when there is no code or it is no date.</param>
/// <param name="Fault">Why the code is no date, or null.</param>
public sealed record LotDates(IReadOnlyList<MarkingReading<ManufactureDate>> Made, string? Fault)
{
    // Date codes of these forms are younger than this: common practice.
    private const int FirstYear = 1950;

    /// <summary>True when the code can mean more than one date, so that the code alone does not decide.</summary>
    public bool IsAmbiguous => Made.Select(reading => reading.Value).Distinct().Skip(1).Any();

    /// <summary>The first day on which they can have been made, or null.</summary>
    public DateOnly? Oldest => Made.Count == 0 ? null : Made.Min(reading => reading.Value.First);

    /// <summary>The last day on which they can have been made, or null.</summary>
    public DateOnly? Youngest => Made.Count == 0 ? null : Made.Max(reading => reading.Value.Last);

    /// <summary>The dates of a lot as seen on a day.</summary>
    public static LotDates Read(Lot lot, DateOnly day)
    {
        if (lot.Values.DateCode is not { } code)
        {
            return new([], null);
        }

        var came = Came(lot, day);
        return DateCode.Parse(code.Value.Trim(), new YearRange(FirstYear, came.Year)).Is(out var marking, out var fault)
            ? new([.. marking.Readings.Where(reading => reading.Value.First <= came).OrderBy(reading => reading.Value.First)], null)
            : new([], fault.Message);
    }

    // No part was made after it came.
    internal static DateOnly Came(Lot lot, DateOnly day) =>
        lot.Received is { } received && received.Value.Latest < day ? received.Value.Latest : day;

    /// <summary>The dates in words, or null when there is none: "2025-W41", "1978-06, 1998-06 or 2018-06, the code alone does not say
    /// which".</summary>
    public string? Words
    {
        get
        {
            var dates = Made.Select(reading => reading.Value.ToString()).Distinct(StringComparer.Ordinal).ToArray();
            return dates.Length switch
            {
                0 => null,
                1 => dates[0],
                _ => $"{string.Join(", ", dates[..^1])} or {dates[^1]}, the code alone does not say which",
            };
        }
    }
}
