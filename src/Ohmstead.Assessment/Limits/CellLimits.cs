using Ohmstead.Electronics;
using Ohmstead.Electronics.Parts;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Limits;

/// <summary>The voltage under which a cell or a pack counts as spent, by its chemistry.</summary>
public static class CellLimits
{
    private static readonly LazyText WithoutLoad = "a voltage without load says little of the charge left: read it under its load";
    private static readonly LazyText CellsUnknown = "the record does not say how many cells: held against one cell only, write cells: to decide";

    /// <summary>The limit, or null when the chemistry is not written or has no figure.</summary>
    public static Limit? Spent(IMarkedPart part)
    {
        if (part.Material is not { } material || CellChemistry.Find(material.Value) is not { } chemistry)
        {
            return null;
        }

        var counted = part.Cells?.Value ?? (part.RatedVoltage is { } rated ? chemistry.CellsIn(rated.Value.Value) : null);
        return !chemistry.SpentPack(counted ?? 1).Is(out var spent, out _) ? null : new Limit(
            LimitKind.EndOfLife,
            new Interval(new Quantity(spent.Value, Dimension.Voltage), null),
            new(() => $"the type's usual limit ({chemistry.Name}, end-point voltage)"),
            spent.Arithmetic,
            new(() => chemistry.Source.Text))
        {
            ProvesOnlyOutside = counted is null ? CellsUnknown : null,
            Remarks = [WithoutLoad],
        };
    }
}
