using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Collection;

/// <summary>Two designs, instruments, lots, orders or lines of one order have the same name, or names that differ by capitals
/// alone.</summary>
public sealed class NameRepeated : ICollectionCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "name-repeated",
            Severity.Error,
            "two designs, instruments, lots, orders or lines of one order have the same name, or names that differ by capitals alone",
            CheckEffect.HoldsBack,
            "which of the two is meant is not known"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CollectionUnderCheck collection)
    {
        var stock = collection.Workshop.StockFile;
        return Repeated("a design", collection.Workshop.DesignFiles.Select(design => (design.Path, design.Id)))
            .Concat(
                Repeated(
                    "an instrument",
                    (collection.Workshop.InstrumentsFile?.Instruments ?? []).Select(instrument =>
                        (collection.Workshop.InstrumentsFile!.Path, instrument.Id)
                    )
                )
            )
            .Concat(Repeated("a lot", (stock?.Lots ?? []).Select(lot => (stock!.Path, lot.Id))))
            .Concat(Repeated("an order", (stock?.Orders ?? []).Select(order => (stock!.Path, order.Id))))
            .Concat((stock?.Orders ?? []).SelectMany(order => Repeated("a line", order.Lines.Select(line => (stock!.Path, line.Id)))));
    }

    private IEnumerable<Finding> Repeated(string what, IEnumerable<(string Path, Written<string> Id)> names)
    {
        var first = new Dictionary<string, (string Path, Written<string> Id)>(StringComparer.OrdinalIgnoreCase);
        foreach (var name in names)
        {
            if (!first.TryAdd(name.Id.Value, name))
            {
                var (path, id) = first[name.Id.Value];
                yield return new Finding(
                    Description.Name,
                    Description.Severity,
                    name.Id.Spot.In(name.Path),
                    $"there is already {what} '{id.Value}'"
                        + (id.Value == name.Id.Value ? string.Empty : $", which differs from '{name.Id.Value}' by capitals alone"),
                    "give one of the two another name"
                )
                {
                    Related = [new RelatedPlace(id.Spot.In(path), "first written here")],
                };
            }
        }
    }
}
