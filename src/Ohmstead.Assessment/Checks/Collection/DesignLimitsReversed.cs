using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Collection;

/// <summary>A lower limit of a design is above its upper limit.</summary>
public sealed class DesignLimitsReversed : ICollectionCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new("design-limits-reversed", Severity.Error, "a lower limit of a design is above its upper limit");

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CollectionUnderCheck collection)
    {
        foreach (var design in collection.Workshop.DesignFiles)
        {
            var limits = design
                .Parts.Select(part => (Name: part.Ref.Value, part.Values.Low, part.Values.High))
                .Concat(design.Points.Select(point => (Name: point.Name.Value, point.Low, point.High)));
            foreach (var (name, low, high) in limits)
            {
                if (low is not null && high is not null && IsAbove(low, high))
                {
                    yield return new Finding(
                        Description.Name,
                        Description.Severity,
                        low.Spot.In(design.Path),
                        $"the lower limit {low.Text} of {name} is above the upper limit {high.Text}",
                        "exchange the two"
                    );
                }
            }
        }
    }

    private static bool IsAbove(Written<Quantity> low, Written<Quantity> high) => low.Value.Value > high.Value.Value;
}
