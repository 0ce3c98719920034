using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Collection;

/// <summary>An incoming reading says not of which lot, gives no value, or one that parts of its lot do not have.</summary>
public sealed class IncomingIncomplete : ICollectionCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "incoming-incomplete",
            Severity.Warning,
            "an incoming reading says not of which lot, gives no value, or one that parts of its lot do not have",
            CheckEffect.Told,
            "a reading that counts for no lot leaves the obligation to have measured the very piece open"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CollectionUnderCheck collection) =>
        collection.Workshop.StockFile is not { } stock
            ? []
            : stock
                .Bench.SelectMany(visit => visit.Readings)
                .SelectMany(reading => reading.Lot is { } lot ? OfLot(collection, stock, reading, lot) : [WithoutLot(stock, reading)]);

    private Finding WithoutLot(StockFile stock, Reading reading) =>
        Told(
            stock,
            reading.Part?.Spot ?? reading.Point?.Spot ?? reading.Spot,
            "this reading in the stock does not say of which lot",
            reading.Part is { } part ? $"write lot: {part.Value}, or move the reading to the board of that part" : "add lot: L-031"
        );

    private IEnumerable<Finding> OfLot(CollectionUnderCheck collection, StockFile stock, Reading reading, Written<string> name)
    {
        if (reading.Values.Length == 0 && reading.Result is null && reading.Frequency is null)
        {
            yield return Told(
                stock,
                reading.Spot,
                "this reading gives no value",
                "add the value with its unit, such as capacitance: 391 µF, or result: pass"
            );
        }

        if (!collection.Workshop.Lots.TryGetValue(name.Value, out var lot))
        {
            yield break;
        }

        foreach (var value in reading.Values.Where(value => !lot.Values.Kind.Value.MayGive(value.Measured)))
        {
            yield return Told(
                stock,
                value.Value.Spot,
                $"{VerdictWords.Describe(value.Measured)} was read of {name.Value}, which is of kind '{lot.Values.Kind.Text}'",
                "mend the lot, or the name of the quantity"
            );
        }
    }

    private Finding Told(StockFile stock, Records.Text.Spot spot, string message, string next) =>
        new(Description.Name, Description.Severity, spot.In(stock.Path), message, next);
}
