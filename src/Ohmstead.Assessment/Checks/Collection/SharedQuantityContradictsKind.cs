using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Collection;

/// <summary>A part of a design, or a lot, is marked in a quantity that its kind does not have.</summary>
public sealed class SharedQuantityContradictsKind : ICollectionCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "shared-quantity-contradicts-kind",
            Severity.Error,
            "a part of a design, or a lot, is marked in a quantity that its kind does not have"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CollectionUnderCheck collection)
    {
        foreach (var (path, name, values) in collection.SharedParts)
        {
            if (MarkedQuantityRules.Contradiction(name, values) is var (value, message, next))
            {
                yield return new Finding(Description.Name, Description.Severity, value.Spot.In(path), message, next);
            }
        }
    }
}
