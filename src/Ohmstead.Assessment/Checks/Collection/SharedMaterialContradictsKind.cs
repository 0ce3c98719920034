using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Collection;

/// <summary>A part of a design, or a lot, is written as made of something that its kind is not made of.</summary>
public sealed class SharedMaterialContradictsKind : ICollectionCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "shared-material-contradicts-kind",
            Severity.Error,
            "a part of a design, or a lot, is written as made of something that its kind is not made of"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CollectionUnderCheck collection)
    {
        foreach (var (path, name, values) in collection.SharedParts)
        {
            if (MaterialRules.Contradiction(name, values) is var (material, message, next))
            {
                yield return new Finding(Description.Name, Description.Severity, material.Spot.In(path), message, next);
            }
        }
    }
}
