using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Collection;

/// <summary>The file of a design has a name that some systems cannot keep.</summary>
public sealed class DesignFileNameUnusable : ICollectionCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new("design-file-name-unusable", Severity.Warning, "the file of a design has a name that some systems cannot keep");

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CollectionUnderCheck collection)
    {
        foreach (var design in collection.Workshop.DesignFiles)
        {
            if (KeptNames.FaultIn(design.Path) is { } fault)
            {
                yield return new(
                    Description.Name,
                    Description.Severity,
                    design.Id.Spot.In(design.Path),
                    KeptNames.Say(design.Path, fault),
                    KeptNames.NextStep
                );
            }
        }
    }
}
