using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Collection;

/// <summary>What came of a line of an order became a lot of another kind than the line asked for, and nothing says why.</summary>
public sealed class LotNotAsOrdered : ICollectionCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "lot-not-as-ordered",
            Severity.Warning,
            "what came of a line of an order became a lot of another kind than the line asked for, and nothing says why",
            CheckEffect.Told,
            "no board is judged by what was ordered; a lot is judged by its own kind and readings"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CollectionUnderCheck collection)
    {
        if (collection.Workshop.StockFile is not { } stock)
        {
            yield break;
        }

        foreach (var order in stock.Orders)
        {
            foreach (var came in order.Came)
            {
                if (
                    came is { Lot: { } name, Note: null }
                    && collection.Workshop.Lots.GetValueOrDefault(name.Value)?.Values.Kind is { } kind
                    && order.Lines.FirstOrDefault(line => line.Id.Value == came.Line.Value)?.Values?.Kind is { } asked
                    && kind.Value != asked.Value
                )
                {
                    yield return new Finding(
                        Description.Name,
                        Description.Severity,
                        name.Spot.In(stock.Path),
                        $"lot {name.Value} is of kind '{kind.Text}', and line {came.Line.Value} of order {order.Id.Value} asked for kind "
                            + $"'{asked.Text}'",
                        "write the line or the lot that is meant; where another kind was sent and kept, say so in note of what came"
                    ) with
                    {
                        Related =
                        [
                            new RelatedPlace(asked.Spot.In(stock.Path), "what was asked for"),
                            new RelatedPlace(kind.Spot.In(stock.Path), "what the lot is"),
                        ],
                    };
                }
            }
        }
    }
}
