using Ohmstead.Electronics.Markings;

namespace Ohmstead.Assessment.Markings;

/// <summary>What the date code of a part says, held against what the record knows of its time.</summary>
public static class PartDates
{
    /// <summary>What to do about a code that cannot be.</summary>
    public const string NextStep = "read the print again; if it is no date code, leave date_code out and put the print into note";

    // Wide enough for every code that is read, so that one outside its window can be told from one that is no date code at all.
    private static readonly YearRange AnyYear = new(1900, 2099);

    /// <summary>All dates that a code can mean inside a window, the earliest first; empty when it is no code that is known.</summary>
    public static IReadOnlyList<MarkingReading<ManufactureDate>> Plausible(string code, DateWindow window) =>
        [.. All(code).Where(date => window.Holds(date.Value)).OrderBy(date => date.Value.First)];

    /// <summary>Why a code cannot be right, or null when it can, or when it is of a kind that is not known.</summary>
    public static string? Fault(string code, DateWindow window)
    {
        // Nearly every code can be right, and then nothing is said of it.
        var dates = DateCode.Dates(code, AnyYear);
        for (var at = 0; at < dates.Count; at++)
        {
            if (window.Holds(dates[at]))
            {
                return null;
            }
        }

        var all = All(code);
        return all.Count == 0 ? (IsYearAndWeek(code) ? $"date code '{code}' has no week of 1 to 53 in it" : null)
            : all.Any(date => window.Holds(date.Value)) ? null
            : $"date code '{code}' can mean {Dates(Near(all, window))}, which cannot be, since {window.Why}";
    }

    /// <summary>The dates in words: 1978-W34, or 1975-05 or 1995-05.</summary>
    public static string Dates(IEnumerable<MarkingReading<ManufactureDate>> dates) =>
        string.Join(" or ", dates.Select(date => date.Value.ToString()).Distinct(StringComparer.Ordinal));

    private static List<MarkingReading<ManufactureDate>> All(string code) =>
        [
            .. DateCode.Parse(code, AnyYear).Is(out var dates, out _) ? dates.Readings : [],
            .. SourceDateCode.Parse(code, AnyYear).Is(out var source, out _)
                ? source.Readings.Select(reading => new MarkingReading<ManufactureDate>(
                    reading.Value.Date,
                    $"maker {reading.Value.MakerNumber}, {reading.Rule}",
                    reading.Source
                ))
                : [],
        ];

    private const int Century = 100;

    // A reading of the next century helps nobody who looks for the digit that was misread.
    private static IReadOnlyList<MarkingReading<ManufactureDate>> Near(List<MarkingReading<ManufactureDate>> all, DateWindow window) =>
        all.Where(date => date.Value.Year <= window.Last.Year + Century / 2).ToArray() is { Length: > 0 } near ? near : all;

    // Four digits that are nothing else; makers' own codes have other lengths or letters.
    private static bool IsYearAndWeek(string code) => code.Length == 4 && code.All(char.IsAsciiDigit);
}
