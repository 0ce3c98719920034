using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Assessment.Markings;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Collection;

/// <summary>A date code of a lot, or of a part of a design, has no reading that its dates allow.</summary>
public sealed class SharedDateCodeImpossible : ICollectionCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "shared-date-code-impossible",
            Severity.Warning,
            "a date code of a lot, or of a part of a design, has no reading that its dates allow"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CollectionUnderCheck collection)
    {
        foreach (var design in collection.Workshop.DesignFiles)
        {
            foreach (var part in design.Parts)
            {
                if (
                    part.Values.DateCode is { } code
                    && PartDates.Fault(code.Value, DateWindow.OfDesign(design, collection.Today)) is { } fault
                )
                {
                    yield return new Finding(
                        Description.Name,
                        Description.Severity,
                        code.Spot.In(design.Path),
                        $"{part.Ref.Value}: {fault}",
                        PartDates.NextStep
                    );
                }
            }
        }

        if (collection.Workshop.StockFile is { } stock)
        {
            foreach (var lot in stock.Lots)
            {
                if (lot.Values.DateCode is { } code && PartDates.Fault(code.Value, DateWindow.OfLot(lot, collection.Today)) is { } fault)
                {
                    yield return new Finding(
                        Description.Name,
                        Description.Severity,
                        code.Spot.In(stock.Path),
                        $"lot {lot.Id.Value}: {fault}",
                        PartDates.NextStep
                    );
                }
            }
        }
    }
}
