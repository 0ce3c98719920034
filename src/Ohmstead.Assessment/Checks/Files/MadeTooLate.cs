using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Electronics;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Files;

/// <summary>A board or a design is said to be made later than today, or a board later than it was here.</summary>
public sealed class MadeTooLate : IFileCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "made-too-late",
            Severity.Warning,
            "a board or a design is said to be made later than today, or a board later than it was here",
            CheckEffect.Told,
            "no verdict follows from the year in which a board was made"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(FileUnderCheck file)
    {
        if (file.Made is not { } made || file.HereBy is not var (day, why) || made.Value.Earliest <= day)
        {
            yield break;
        }

        yield return file.Finding(
            Description,
            made.Spot,
            $"{file.Called} is said to be made {made.Text}, and {why}",
            $"mend the year: a date up to {IsoDate.Text(day)}"
        );
    }
}
