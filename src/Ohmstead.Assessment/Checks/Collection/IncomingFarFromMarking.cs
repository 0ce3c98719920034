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
        var incoming = collection.Workshop.IncomingReadings.SelectMany(lot => lot).Select(pair => assessor.AssessIncoming(pair.Visit, pair.Reading));
        foreach (var (verdict, message) in FarReadings.Of(incoming))
        {
            yield return new Finding(Description.Name, Description.Severity, verdict.Reading.Spot.In(stock.Path), message, FarReadings.NextStep);
        }
    }
}
