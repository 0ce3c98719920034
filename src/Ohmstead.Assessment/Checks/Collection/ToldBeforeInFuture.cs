using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Electronics;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Collection;

/// <summary>The day before which boards are taken as told lies after the day of this run.</summary>
public sealed class ToldBeforeInFuture : ICollectionCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "told-before-in-future",
            Severity.Error,
            "the day before which boards are taken as told lies after the day of this run",
            CheckEffect.HoldsBack,
            "what has not begun excuses nothing"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CollectionUnderCheck collection)
    {
        if (collection.Workshop.Collection is { ToldBefore: { } told, Path: var path } && told.Value > collection.Today)
        {
            yield return new(
                Description.Name,
                Description.Severity,
                told.Spot.In(path),
                $"{told.Text} is in the future, today is {IsoDate.Text(collection.Today)}; until then every board is judged in full",
                "write the day on which the collection moved in"
            );
        }
    }
}
