using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Collection;

/// <summary>A part of a design, or a lot, is written as made of something that its kind is not made of.</summary>
public sealed class SharedMaterialContradictsKind : ICollectionCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new("shared-material-contradicts-kind", Severity.Error, "a part of a design, or a lot, is written as made of something that its kind is not made of");

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CollectionUnderCheck collection)
    {
        var stock = collection.Workshop.StockFile;
        IEnumerable<(string Path, string Name, PartValues Values)> written =
        [
            .. collection.Workshop.DesignFiles.SelectMany(design => design.Parts.Select(part => (design.Path, part.Ref.Value, part.Values))),
            .. (stock?.Lots ?? []).Select(lot => (stock!.Path, "lot " + lot.Id.Value, lot.Values)),
        ];
        foreach (var (path, name, values) in written)
        {
            if (MaterialRules.Contradiction(name, values) is var (material, message, next))
            {
                yield return new Finding(Description.Name, Description.Severity, material.Spot.In(path), message, next);
            }
        }
    }
}
