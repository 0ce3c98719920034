using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Collection;

/// <summary>A reading or scrapped pieces in the stock file name a lot that is not in the drawer.</summary>
public sealed class StockLotUnknown : ICollectionCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "stock-lot-unknown",
            Severity.Warning,
            "an incoming reading or scrapped pieces name a lot that is not in the drawer",
            CheckEffect.Told,
            "no board has a part of a lot that is not there; one that names such a lot is held back by that"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CollectionUnderCheck collection)
    {
        if (collection.Workshop.StockFile is not { } stock)
        {
            yield break;
        }

        KnownNames? known = null;
        var named = stock.Bench.SelectMany(visit =>
            visit.Readings.Select(reading => reading.Lot).Concat(visit.Scrapped.Select(scrap => scrap.Lot))
        );
        foreach (var lot in named)
        {
            if (lot is null || collection.Workshop.Lots.ContainsKey(lot.Value) || stock.UnreadLots.MayHold(lot.Value))
            {
                continue;
            }

            yield return new UnknownName("lot", $"add lot {lot.Value} under lots").In(
                stock.Path,
                Description,
                lot,
                $"there is no lot '{lot.Value}' in the drawer",
                known ??= new(collection.Workshop.Lots.Keys)
            );
        }
    }
}
