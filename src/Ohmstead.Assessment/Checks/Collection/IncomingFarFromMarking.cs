using Ohmstead.Assessment.Boards;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Collection;

/// <summary>An incoming reading is a factor of a thousand or so off the marking of its lot: probably a slip of the unit.</summary>
public sealed class IncomingFarFromMarking : ICollectionCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new("incoming-far-from-marking", Severity.Warning, "an incoming reading is a factor of a thousand or so off the marking of its lot: probably a slip of the unit");

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CollectionUnderCheck collection)
    {
        if (collection.Workshop.StockFile is not { } stock)
        {
            yield break;
        }

        var assessor = new Assessor(collection.Workshop);
        foreach (var (visit, reading) in collection.Workshop.IncomingReadings.SelectMany(lot => lot))
        {
            foreach (var (verdict, message) in FarReadings.Of(assessor.AssessIncoming(visit, reading)))
            {
                yield return new Finding(Description.Name, Description.Severity, verdict.Reading.Spot.In(stock.Path), message, FarReadings.NextStep);
            }
        }
    }
}
