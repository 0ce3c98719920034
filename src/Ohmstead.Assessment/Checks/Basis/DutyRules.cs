using System.Globalization;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Basis;

/// <summary>Whether a board can run as its record says: a year has so many hours, and those at other temperatures are part of
/// them.</summary>
internal static class DutyRules
{
    // A leap year.
    private const int HoursOfYear = 366 * 24;

    /// <summary>What cannot be and what to do, with the hours that are too many; null when all can.</summary>
    internal static (Written<int> Hours, string Message, string NextStep)? Contradiction(Duty? duty)
    {
        if (duty?.HoursPerYear is { Value: > HoursOfYear } hours)
        {
            return (hours, Text($"{hours.Text} hours a year are more than a year has ({HoursOfYear})"), "write the hours of one year");
        }

        var parts = (duty?.AtTimes ?? []).Sum(part => (long)part.HoursPerYear.Value);
        return duty is { HoursPerYear: { } whole, AtTimes: [var first, ..] } && parts > whole.Value
            ? (
                first.HoursPerYear,
                Text($"the hours at other temperatures are {parts} together, more than the {whole.Value} hours a year they are part of"),
                "mend hours_per_year, or the hours at_times"
            )
            : null;
    }

    private static string Text(FormattableString words) => words.ToString(CultureInfo.InvariantCulture);
}
