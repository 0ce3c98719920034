using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Collection;

/// <summary>A part or test point stands twice in one design.</summary>
public sealed class DesignReferenceRepeated : ICollectionCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new("design-reference-repeated", Severity.Error, "a part or test point stands twice in one design");

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CollectionUnderCheck collection) =>
        collection.Workshop.DesignFiles.SelectMany(design =>
            Repeated(design, "parts", design.Parts.Select(part => part.Ref))
                .Concat(Repeated(design, "points", design.Points.Select(point => point.Name)))
        );

    private IEnumerable<Finding> Repeated(DesignFile design, string list, IEnumerable<Written<string>> names)
    {
        var first = new Dictionary<string, Written<string>>(StringComparer.Ordinal);
        foreach (var name in names)
        {
            if (!first.TryAdd(name.Value, name))
            {
                yield return new Finding(
                    Description.Name,
                    Description.Severity,
                    name.Spot.In(design.Path),
                    $"{name.Value} is already in the {list} of this design",
                    "give it another name, or take one of the two out"
                )
                {
                    Related = [new RelatedPlace(first[name.Value].Spot.In(design.Path), "first written here")],
                };
            }
        }
    }
}
