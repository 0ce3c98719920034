using Ohmstead.Electronics;
using Ohmstead.Electronics.Parts;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Limits;

/// <summary>The usual limit of a crystal whose tolerance is not written: that of the clock of logic.</summary>
public static class CrystalLimits
{
    private const decimal Million = 1_000_000m;

    private const decimal WatchHertz = 32_768m;

    private static readonly LazyText KeepsTime =
        "a clock that keeps the time of day needs ±20 ppm, 1.7 s a day: this limit is not for that";

    private static readonly LazyText AtItsLoad = "it holds at the crystal's load capacitance; a colour subcarrier needs ±30 to 50 ppm";

    /// <summary>The limit, or null when a tolerance or no frequency is written.</summary>
    public static Limit? Usual(IMarkedPart part)
    {
        if (part is not { Tolerance: null, Frequency: { Value: var nominal } })
        {
            return null;
        }

        var known = CrystalLimit.All[0];
        var interval = Tolerance.Relative(known.PartsPerMillion / Million).Apply(nominal);
        return new Limit(
            LimitKind.EndOfLife,
            interval,
            new(() => $"the type's usual limit ({known.Use}), since no tolerance is written"),
            new(() =>
                $"{QuantityText.Format(nominal)} ±{QuantityText.Format(new Quantity(known.PartsPerMillion, Dimension.Number))} ppm "
                + $"allows {interval}"
            ),
            new(() => CrystalLimit.Source.Text)
        )
        {
            Nominal = nominal,
            Remarks = nominal.Value == WatchHertz ? [AtItsLoad, KeepsTime] : [AtItsLoad],
        };
    }
}
