using System.Collections.Immutable;
using Ohmstead.Electronics.Decimals;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Electronics.PreferredValues;

/// <summary>Today's capacitances for values that are no longer made (8, 16, 32, 50 µF).</summary>
/// <remarks>
/// All lie inside the old delivery tolerance of electrolytics (-20/+50 % or wider). A capacitor at a rectifier must not be raised freely:
/// its value bounds the peak current. Source: common practice.
/// </remarks>
public static class LegacyCapacitances
{
    /// <summary>The values to consider, the usual one first; the value itself when it is still made (E12); nothing for zero, negative and
    /// extreme values.</summary>
    public static ImmutableArray<CapacitanceReplacement> Replace(Quantity legacy)
    {
        if (legacy.Value <= 0m || ESeries.E12.Neighbours(legacy) is not { } neighbours)
            return [];
        if (neighbours.Nearest == legacy)
            return [new CapacitanceReplacement(legacy, 0m)];

        var scale = DecimalMath.PowerOfTen(DecimalMath.Exponent(legacy.Value));
        var table = Table(legacy.Value / scale, legacy);
        var values = table.IsEmpty
            ? [neighbours.Nearest, neighbours.Nearest == neighbours.Below ? neighbours.Above : neighbours.Below]
            : table.Select(figure => legacy with { Value = figure * scale });
        return [.. values.Select(value => new CapacitanceReplacement(value, (value.Value - legacy.Value) / legacy.Value))];
    }

    private static ImmutableArray<decimal> Table(decimal figure, Quantity legacy) =>
        figure switch
        {
            1.6m => [1.5m, 2.2m],
            2m => [2.2m],
            2.5m => legacy.Value >= 0.0001m ? [2.7m, 2.2m] : [2.2m, 2.7m],
            3m or 3.2m => [3.3m],
            4m => [3.9m, 4.7m],
            5m => [4.7m],
            6.4m => [6.8m],
            8m => [10m, 8.2m],
            _ => [],
        };
}
