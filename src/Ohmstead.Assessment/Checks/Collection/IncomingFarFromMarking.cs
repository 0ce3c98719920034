using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Assessment.History;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Collection;

/// <summary>An incoming reading is ten or a thousand times off what it is read against: probably a slip of the unit or of a
/// zero.</summary>
public sealed class IncomingFarFromMarking : ICollectionCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "incoming-far-from-marking",
            Severity.Warning,
            "an incoming reading is ten or a thousand times off what it is read against: probably a slip of the unit or of a zero",
            CheckEffect.HoldsBack,
            "the reading of the lot that sits there is in doubt"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CollectionUnderCheck collection)
    {
        if (collection.Workshop.StockFile is not { } stock)
        {
            yield break;
        }

        var judge = new ReadingJudge(collection.Workshop);
        var incoming = collection
            .Workshop.IncomingReadings.SelectMany(lot => lot)
            .Select(pair => judge.AssessIncoming(pair.Visit, pair.Reading));
        foreach (var (verdict, message) in FarReadings.Find(incoming))
        {
            yield return new Finding(
                Description.Name,
                Description.Severity,
                verdict.Reading.Spot.In(stock.Path),
                message,
                FarReadings.NextStep(verdict)
            );
        }
    }
}
