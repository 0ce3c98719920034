using Ohmstead.Electronics;
using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Limits;

/// <summary>
/// Leakage of an electrolytic read warm or cold: above its limit, what its warmth alone may explain does not decide; inside it, what the
/// cold alone may have brought there does not.
/// </summary>
internal static class LeakageWarmth
{
    private static readonly LazyText BelowFreezing =
        "it was read in the frost, where leakage falls by how much nobody tells: read it again at 20 °C";

    /// <summary>Whether a reading was taken so warm or so cold that it must be said.</summary>
    internal static bool Speaks(ReadingConditions how) => how.AwayFrom20 is not null;

    /// <summary>The limit with what the temperature of the reading takes from it.</summary>
    internal static Limit Adjust(Limit limit, IMarkedPart part, ReadingConditions how) =>
        how.AwayFrom20 is not { } read || limit.Interval.Upper is not { } upper ? limit
        : read.Value > LeakageTemperature.ReferenceCelsius ? Warm(limit, upper, part, read)
        : Cold(limit, read);

    private static Limit Warm(Limit limit, Quantity upper, IMarkedPart part, Quantity warm)
    {
        if (!MostTimes(part.Kind.Value, warm.Value).Is(out var most, out _))
        {
            return limit with
            {
                Remarks =
                [
                    .. limit.Remarks,
                    new LazyText(() =>
                        $"read at {QuantityText.Format(warm)}; leakage rises with warmth and its limit holds at 20 °C: read it again there"
                    ),
                ],
            };
        }

        var upTo = upper with { Value = upper.Value * most.Value };
        return limit with
        {
            Explained = (
                upTo,
                new(() =>
                    $"it was read at {QuantityText.Format(warm)}, and warmth alone explains up to {QuantityText.Format(upTo, 3)}: let "
                    + "it cool to 20 °C and read again"
                )
            ),
            Remarks =
            [
                .. limit.Remarks,
                new LazyText(() =>
                    $"read at {QuantityText.Format(warm)}, where leakage is up to {most.Arithmetic} times that at 20 °C "
                    + $"({most.Source.Text}): above {QuantityText.Format(upTo, 3)} warmth does not explain it"
                ),
            ],
        };
    }

    private static Limit Cold(Limit limit, Quantity cold) =>
        !LeakageTemperature.ShareCold(cold.Value).Is(out var share, out _)
            ? limit with
            {
                ProvesOnlyOutside = BelowFreezing,
            }
            : limit.ProvedFromShare(
                share.Value,
                new(() =>
                    $"it was read at {QuantityText.Format(cold)}, where leakage is down to {share.Arithmetic} of that at 20 °C "
                    + $"({share.Source.Text}): warm it and read again"
                )
            );

    private static Outcome<Worked<decimal>> MostTimes(PartKind kind, decimal celsius) =>
        kind.DriesOut ? LeakageTemperature.GreatestFactor(celsius)
        : kind == PartKinds.Tantalum ? Tantalum.WarmLeakageFactor(celsius)
        : Outcome<Worked<decimal>>.Refused("no factor is known for this kind");
}
