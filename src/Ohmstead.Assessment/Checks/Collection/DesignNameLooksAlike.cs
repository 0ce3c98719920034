using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Collection;

/// <summary>Two parts or points of a design have names that look the same or differ by capitals alone.</summary>
public sealed class DesignNameLooksAlike : ICollectionCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "design-name-looks-alike",
            Severity.Warning,
            "two parts or points of a design have names that look the same or differ by capitals alone"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CollectionUnderCheck collection)
    {
        foreach (var design in collection.Workshop.DesignFiles)
        {
            var alike = NameLooks
                .FindPairs(design.Parts.Select(part => part.Ref))
                .Concat(NameLooks.FindPairs(design.Points.Select(point => point.Name)));
            foreach (var (name, other) in alike)
            {
                var (message, next) = NameLooks.Say(name.Value, other.Value);
                yield return new Finding(Description.Name, Description.Severity, name.Spot.In(design.Path), message, next)
                {
                    Related = [new RelatedPlace(other.Spot.In(design.Path), "the other one")],
                };
            }
        }
    }
}
