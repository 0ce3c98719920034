using System.Collections.Immutable;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Capacitors;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Limits;

/// <summary>
/// Whether a reading of an electrolytic may be compared with its limits at all: they hold near 20 °C, the marked value near 100 or 120 Hz.
/// In the cold the capacitance falls and the ESR rises, in the warm the ESR falls; at a higher frequency the capacitance reads lower. What
/// such a reading seems to break or to keep by that, it does not prove.
/// </summary>
public static class ConditionLimits
{
    // Neither the cold of a shed nor a kilohertz takes half of a sound electrolytic: common practice. What reads less has failed, however
    // it was read.
    private const decimal LeastShareOfCapacitance = 0.5m;

    private const decimal HighestBoundedHertz = 1_000m;

    // IEC 60384-4, from memory: 100 Hz, or 120 Hz where the mains have 60 Hz.
    private static readonly decimal MarkingHertz = MeasuringConditions.Aluminium.Hertz;

    /// <summary>The limits with what the conditions take from them.</summary>
    public static ImmutableArray<Limit> Adjust(List<Limit> limits, IMarkedPart part, Measured measured, ReadingConditions how)
    {
        if (limits.Count == 0 || !part.Kind.Value.IsElectrolytic || (measured != Measured.Capacitance && how.AwayFrom20 is null))
        {
            return [.. limits];
        }

        for (var at = 0; at < limits.Count; at++)
        {
            limits[at] = Adjusted(limits[at], measured, how);
        }

        return [.. limits];
    }

    private static Limit Adjusted(Limit limit, Measured measured, ReadingConditions how)
    {
        var isCold = how.AwayFrom20 is { } read && read.Value < LowTemperatureImpedance.ReferenceCelsius;
        return measured switch
        {
            Measured.Leakage when LeakageWarmth.Speaks(how) => limit,
            Measured.Capacitance => OfCapacitance(limit, how, isCold),
            Measured.Esr or Measured.LossFactor when !isCold && how.AwayFrom20 is { } warm => Warm(limit, warm),
            Measured.Esr or Measured.LossFactor when isCold && limit.Kind != LimitKind.Circuit => limit with
            {
                NothingAbove = Cold(how, "the ESR rises"),
                NothingAboveTo = null,
            },
            _ => Told(limit, how),
        };
    }

    private static Limit OfCapacitance(Limit limit, ReadingConditions how, bool isCold)
    {
        if (limit.Interval.Lower is not { } lower)
        {
            return Told(limit, how);
        }

        var least = lower with { Value = lower.Value * LeastShareOfCapacitance };
        if (how.Frequency is { } read && IsHigh(read))
        {
            return limit with
            {
                NothingBelow = new(() =>
                    $"it was read at {QuantityText.Format(read)}, where an electrolytic shows less than near 100 or 120 Hz, where its "
                    + "value holds (IEC 60384-4, 4.3, from memory)"
                ),
                NothingBelowTo = read.Value <= HighestBoundedHertz ? least : null,
            };
        }

        if (isCold)
        {
            return limit with { NothingBelow = Cold(how, "the capacitance falls"), NothingBelowTo = least };
        }

        // Where no frequency is written it was that of a meter for electrolytics, near 120 Hz or by charging it: common practice. A low
        // reading stands.
        return Told(limit, how);
    }

    // A warm part shows less than it has at 20 °C: it is inside only where it would be with all of that added.
    private static Limit Warm(Limit limit, Quantity warm) =>
        !EsrTemperature.LeastShareWarm(warm.Value).Is(out var share, out _)
            ? limit
            : limit.ProvedFromShare(
                share.Value,
                new(() =>
                    $"it was read at {QuantityText.Format(warm)}, where ESR is down to {share.Arithmetic} of that at 20 °C "
                    + $"({share.Source.Text}): let it cool and read again"
                )
            );

    private static Limit Told(Limit limit, ReadingConditions how) =>
        how.AwayFrom20 is not { } read
            ? limit
            : limit with
            {
                Remarks =
                [
                    .. limit.Remarks,
                    new LazyText(() => $"read at {QuantityText.Format(read)}; limits of an electrolytic hold at 20 °C, within 5 K"),
                ],
            };

    private static LazyText Cold(ReadingConditions how, string what) =>
        new(() =>
            $"it was read at {QuantityText.Format(how.AwayFrom20!.Value)}, where {what}; the limit holds at 20 °C: warm it and read "
            + $"again ({LowTemperatureImpedance.Source.Text})"
        );

    private static bool IsHigh(Quantity read) =>
        read.Value > MarkingHertz && MeasuringConditions.Match(read.Value, MarkingHertz) == FrequencyMatch.Different;
}
