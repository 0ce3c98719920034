using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Collection;

/// <summary>More parts of a lot were fitted and scrapped than ever came.</summary>
public sealed class LotOverdrawn : ICollectionCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "lot-overdrawn",
            Severity.Error,
            "more parts of a lot were fitted and scrapped than ever came",
            CheckEffect.HoldsBack,
            "what sits in one of the places came from somewhere else"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CollectionUnderCheck collection)
    {
        foreach (var lot in collection.Workshop.StockFile?.Lots ?? [])
        {
            var (fitted, scrapped) = (collection.Use.Fitted(lot.Id.Value), collection.Workshop.ScrappedOf(lot.Id.Value));
            if (lot.Quantity is { } came && fitted + scrapped > came.Value)
            {
                var went =
                    scrapped == 0 ? $"and {fitted} were fitted" : $"and {fitted + scrapped} went: {fitted} fitted, {scrapped} scrapped";
                yield return new Finding(
                    Description.Name,
                    Description.Severity,
                    came.Spot.In(collection.Workshop.StockFile!.Path),
                    $"of lot {lot.Id.Value} {came.Value} came, {went}",
                    scrapped == 0
                        ? "mend the quantity, or the lots named on the boards"
                        : "mend the quantity, the lots named on the boards, or what was scrapped"
                );
            }
        }
    }
}
