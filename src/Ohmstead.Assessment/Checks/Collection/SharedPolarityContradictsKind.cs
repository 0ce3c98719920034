using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Collection;

/// <summary>A part of a design, or a lot, is written as having no polarity although its kind has one.</summary>
public sealed class SharedPolarityContradictsKind : ICollectionCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new("shared-polarity-contradicts-kind", Severity.Error, "a part of a design, or a lot, is written as having no polarity although its kind has one");

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
            if (PolarityRules.Contradiction(name, values) is var (polarity, message, next))
            {
                yield return new Finding(Description.Name, Description.Severity, polarity.Spot.In(path), message, next);
            }
        }
    }
}
