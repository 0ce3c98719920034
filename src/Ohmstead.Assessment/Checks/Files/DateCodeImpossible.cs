using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Assessment.Markings;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Files;

/// <summary>A date code has no reading that the dates of its record allow.</summary>
public sealed class DateCodeImpossible : IFileCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "date-code-impossible",
            Severity.Warning,
            "a date code has no reading that the dates of its record allow",
            CheckEffect.Told,
            "a print says how old a part is, not whether it works"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(FileUnderCheck file)
    {
        foreach (var part in file.Parts)
        {
            if (part.Values.DateCode is { } code && file.MadeWithin(part) is { } window && PartDates.Fault(code.Value, window) is { } fault)
            {
                yield return file.Finding(Description, code.Spot, $"{part.Name}: {fault}", PartDates.NextStep);
            }
        }
    }
}
