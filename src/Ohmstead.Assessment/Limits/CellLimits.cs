using Ohmstead.Electronics;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Limits;

/// <summary>The voltages between which a cell or a pack is neither spent nor more than full, by its chemistry.</summary>
public static class CellLimits
{
    private static readonly LazyText WithoutLoad = "a voltage without load says little of the charge left: read it under its load";
    private static readonly LazyText CellsUnknown =
        "the record does not say how many cells: held against one cell only, write cells: to decide";

    private static readonly LazyText CellsUnknownAbove =
        "the record does not say how many cells, and two in series have twice as much: write cells: to decide";

    /// <summary>The limit, or null when the chemistry is not written or has no figure.</summary>
    public static Limit? Voltage(IMarkedPart part)
    {
        if (part.Material is not { Value.Cell: { } chemistry })
        {
            return null;
        }

        var counted = part.Cells?.Value ?? (part.RatedVoltage is { } rated ? chemistry.CellsIn(rated.Value.Value) : null);
        return !chemistry.SpentPack(counted ?? 1).Is(out var spent, out _) || !chemistry.FullPack(counted ?? 1).Is(out var full, out _)
            ? null
            : new Limit(
                LimitKind.EndOfLife,
                new Interval(new Quantity(spent.Value, Dimension.Voltage), new Quantity(full.Value, Dimension.Voltage)),
                new(() => $"the type's usual limit ({chemistry.Name}, from its end point to full at rest)"),
                new(() => $"spent under {spent.Arithmetic}; more than full above {full.Arithmetic}"),
                new(() => $"{spent.Source.Text}; {full.Source.Text}")
            )
            {
                NothingAbove = counted is null ? CellsUnknownAbove : null,
                ProvesOnlyOutside = counted is null ? CellsUnknown : null,
                Remarks = [WithoutLoad],
            };
    }
}
