using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Collection;

/// <summary>More parts of a lot were fitted than ever came.</summary>
public sealed class LotOverdrawn : ICollectionCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new("lot-overdrawn", Severity.Error, "more parts of a lot were fitted than ever came");

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CollectionUnderCheck collection)
    {
        foreach (var lot in collection.Workshop.StockFile?.Lots ?? [])
        {
            if (lot.Quantity is { } came && collection.Fitted.TryGetValue(lot.Id.Value, out var fitted) && fitted > came.Value)
            {
                yield return new Finding(
                    Description.Name, Description.Severity, came.Spot.In(collection.Workshop.StockFile!.Path), $"of lot {lot.Id.Value} {came.Value} came, and {fitted} were fitted", "mend the quantity, or the lots named on the boards");
            }
        }
    }
}
