using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Collection;

/// <summary>A point of a design names a reservoir or an input that is not there.</summary>
public sealed class DesignPointLinkUnknown : ICollectionCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new("design-point-link-unknown", Severity.Error, "a point of a design names a reservoir or an input that is not there");

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CollectionUnderCheck collection)
    {
        foreach (var design in collection.Workshop.DesignFiles)
        {
            var parts = new KnownNames(design.Parts.Select(part => part.Ref.Value));
            var points = new KnownNames(design.Points.Select(point => point.Name.Value));
            foreach (
                var (name, message, next) in PointLinkRules
                    .Unknown(design.Points, parts, points)
                    .Where(told => !design.UnreadParts.MayHold(told.Name.Value) && !design.UnreadPoints.MayHold(told.Name.Value))
            )
            {
                yield return new Finding(Description.Name, Description.Severity, name.Spot.In(design.Path), message, next);
            }
        }
    }
}
