using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Assessment.Shelf;
using Ohmstead.Electronics;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Collection;

/// <summary>More parts of a lot were fitted and scrapped than ever came.</summary>
public sealed class LotOverdrawn : ICollectionCheck
{
    // A count that is wrong by hundreds is one mistake.
    private const int MostTakers = 6;

    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "lot-overdrawn",
            Severity.Error,
            "more parts of a lot were fitted and scrapped than ever came",
            CheckEffect.HoldsBack,
            "what sits in one of the places came from somewhere else"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CollectionUnderCheck collection)
    {
        foreach (var lot in collection.Workshop.StockFile?.Lots ?? [])
        {
            var (fitted, scrapped) = (collection.Use.Fitted(lot.Id.Value), collection.Workshop.ScrappedOf(lot.Id.Value));
            if (lot.Quantity is { } came && fitted + scrapped > came.Value)
            {
                var went =
                    scrapped == 0 ? $"and {fitted} were fitted" : $"and {fitted + scrapped} went: {fitted} fitted, {scrapped} scrapped";
                var last = Takers(collection.Use, lot.Id.Value, fitted + scrapped - came.Value);
                yield return new Finding(
                    Description.Name,
                    Description.Severity,
                    came.Spot.In(collection.Workshop.StockFile!.Path),
                    $"of lot {lot.Id.Value} {came.Value} came, {went}{last}",
                    scrapped == 0
                        ? "mend the quantity, or the lots named on the boards"
                        : "mend the quantity, the lots named on the boards, or what was scrapped"
                );
            }
        }
    }

    // Those of which one too many took a piece: as many as there were too few, and the one before them, who may be the one that is wrong.
    private static string Takers(LotUse use, string lot, long tooMany)
    {
        var fittings = use.FittingsOf(lot);
        var count = (int)Math.Min(Math.Min(tooMany + 1, fittings.Count), MostTakers);
        var takers = fittings
            .Skip(fittings.Count - count)
            .Select(fitting => $"{$"{fitting.Board} {fitting.Reference}".TrimEnd()} ({WhoAndWhen(fitting)})");
        return count == 0 ? string.Empty : $"; the last went to {string.Join(" and ", takers)}";
    }

    private static string WhoAndWhen(LotFitting fitting) =>
        fitting.By is { } by ? $"{by}, {IsoDate.Text(fitting.Date)}" : IsoDate.Text(fitting.Date);
}
