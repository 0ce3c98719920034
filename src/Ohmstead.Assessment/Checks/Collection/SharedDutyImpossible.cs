using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Collection;

/// <summary>The boards of a collection run more hours than a year has, or more at other temperatures than they run.</summary>
public sealed class SharedDutyImpossible : ICollectionCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "shared-duty-impossible",
            Severity.Warning,
            "the boards of a collection run more hours than a year has, or more at other temperatures than they run"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CollectionUnderCheck collection)
    {
        if (DutyRules.Contradiction(collection.Workshop.Collection.Duty) is var (hours, message, next))
        {
            yield return new Finding(
                Description.Name,
                Description.Severity,
                hours.Spot.In(collection.Workshop.Collection.Path),
                message,
                next
            );
        }
    }
}
