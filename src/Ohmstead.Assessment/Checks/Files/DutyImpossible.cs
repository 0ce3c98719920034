using System.Globalization;
using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Files;

/// <summary>A board runs more hours than a year has, or more at other temperatures than it runs.</summary>
public sealed class DutyImpossible : IFileCheck
{
    // A leap year.
    private const int HoursOfYear = 366 * 24;

    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "duty-impossible",
            Severity.Warning,
            "a board runs more hours than a year has, or more at other temperatures than it runs",
            CheckEffect.Told,
            "how long a part lasts is an estimate; nothing is judged by it"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(FileUnderCheck file)
    {
        var duty = file.Duty;
        if (duty?.HoursPerYear is { Value: > HoursOfYear } hours)
        {
            yield return file.Finding(
                Description,
                hours.Spot,
                string.Create(CultureInfo.InvariantCulture, $"{hours.Text} hours a year are more than a year has ({HoursOfYear})"),
                "write the hours of one year"
            );
            yield break;
        }

        var parts = (duty?.AtTimes ?? []).Sum(part => (long)part.HoursPerYear.Value);
        if (duty is { HoursPerYear: { } whole, AtTimes: [var first, ..] } && parts > whole.Value)
        {
            yield return file.Finding(
                Description,
                first.HoursPerYear.Spot,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"the hours at other temperatures are {parts} together, more than the {whole.Value} hours a year they are part of"
                ),
                "mend hours_per_year, or the hours at_times"
            );
        }
    }
}
