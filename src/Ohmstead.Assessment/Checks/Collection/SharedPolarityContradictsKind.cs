using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Collection;

/// <summary>A part of a design, or a lot, is written as having no polarity although its kind has one.</summary>
public sealed class SharedPolarityContradictsKind : ICollectionCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "shared-polarity-contradicts-kind",
            Severity.Error,
            "a part of a design, or a lot, is written as having no polarity although its kind has one"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CollectionUnderCheck collection)
    {
        foreach (var (path, name, values) in collection.SharedParts)
        {
            if (PolarityRules.Contradiction(name, values) is var (polarity, message, next))
            {
                yield return new Finding(Description.Name, Description.Severity, polarity.Spot.In(path), message, next);
            }
        }
    }
}
