using Ohmstead.Electronics.Markings;

namespace Ohmstead.Assessment.Markings;

/// <summary>The date code of a part in one line, for people.</summary>
public static class DateWords
{
    /// <summary>What the code says: its dates, the rule and its source, and what follows from the dates of the board; null for a code of no
    /// known kind.</summary>
    public static string? Describe(string code, DateWindow window)
    {
        if (PartDates.Fault(code, window) is { } fault)
        {
            return fault;
        }

        var dates = PartDates.Plausible(code, window);
        if (dates.Count == 0)
        {
            return null;
        }

        var sources = string.Join("; ", dates.Select(date => date.Source.Text).Distinct(StringComparer.Ordinal));
        return $"date code '{code}' is {PartDates.Dates(dates)} "
            + $"({string.Join("; ", dates.Select(date => date.Rule).Distinct(StringComparer.Ordinal))}; {sources}){Later(dates, window)}";
    }

    private static string Later(IReadOnlyList<MarkingReading<ManufactureDate>> dates, DateWindow window) =>
        window.MadeBy is { } made && dates.All(date => date.Value.First > made)
            ? ", later than the board: an earlier repair, or the board is younger than written"
            : string.Empty;
}
