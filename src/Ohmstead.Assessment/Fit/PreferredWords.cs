using System.Globalization;
using Ohmstead.Electronics;
using Ohmstead.Electronics.PreferredValues;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Assessment.Fit;

/// <summary>Which preferred values come nearest to a value, and which of them may be taken.</summary>
internal static class PreferredWords
{
    /// <summary>Where the series come from.</summary>
    internal static Source Source { get; } = new("IEC 60063:2015", null, SourceBasis.Memory);

    /// <summary>The value's own series; or the values made today in its place that lie in the range; or the nearest of the finest
    /// series.</summary>
    internal static string Describe(Quantity value, Interval range)
    {
        if (ESeries.All.FirstOrDefault(series => series.Contains(value)) is { } own && own.Count <= ESeries.E24.Count)
        {
            return $"{QuantityText.Format(value)} is a preferred value ({own.Name})";
        }

        if (value.Dimension == Dimension.Capacitance)
        {
            CapacitanceReplacement[] made = [.. LegacyCapacitances.Replace(value).Where(one => range.Contains(one.Value))];
            if (made.Length > 0)
            {
                return $"{QuantityText.Format(value)} is no preferred value: take {CapacitorNeed.List([.. made.Select(Words)], " or ")}";
            }
        }

        foreach (var series in ESeries.All.Where(series => series.Count >= ESeries.E24.Count))
        {
            if (series.Neighbours(value) is { } neighbours && range.Contains(neighbours.Nearest))
            {
                return $"{QuantityText.Format(value)}: nearest preferred value {QuantityText.Format(neighbours.Nearest)} ({series.Name})";
            }
        }

        return $"no preferred value lies in the range: choose one by measuring, or put two together";
    }

    private static string Words(CapacitanceReplacement one) =>
        $"{QuantityText.Format(one.Value)} ({(one.Deviation * 100m).ToString("+0.#;-0.#;0", CultureInfo.InvariantCulture)} %)";
}
