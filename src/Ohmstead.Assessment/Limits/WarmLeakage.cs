using Ohmstead.Electronics;
using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Limits;

/// <summary>
/// Leakage of a wet aluminium electrolytic read warm: what its warmth alone may explain does not decide, what it cannot explain stands. Other kinds are told
/// to be read at 20 °C.
/// </summary>
internal static class WarmLeakage
{
    /// <summary>Whether a reading was taken so warm that it must be said.</summary>
    internal static bool Speaks(ReadingConditions how) => how.AwayFrom20 is { } read && read.Value > LeakageTemperature.ReferenceCelsius;

    /// <summary>The limit with what the warmth of the reading takes from it.</summary>
    internal static Limit Adjust(Limit limit, IMarkedPart part, ReadingConditions how)
    {
        if (!Speaks(how) || limit.Interval.Upper is not { } upper)
        {
            return limit;
        }

        var warm = how.AwayFrom20!.Value;
        if (!part.Kind.Value.DriesOut || !LeakageTemperature.GreatestFactor(warm.Value).Is(out var most, out _))
        {
            return limit with { Remarks = [.. limit.Remarks, new LazyText(() => $"read at {QuantityText.Format(warm)}; leakage rises with warmth and its limit holds at 20 °C: read it again there")] };
        }

        var upTo = upper with { Value = upper.Value * most.Value };
        return limit with
        {
            Explained = (upTo, new(() => $"it was read at {QuantityText.Format(warm)}, and warmth alone explains up to {QuantityText.Format(upTo, 3)}: let it cool to 20 °C and read again")),
            Remarks = [.. limit.Remarks, new LazyText(() => $"read at {QuantityText.Format(warm)}, where leakage is up to {most.Arithmetic} times that at 20 °C ({most.Source.Text}): above {QuantityText.Format(upTo, 3)} warmth does not explain it")],
        };
    }
}
